package bagclock.tables;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.standard.Cell;
import bagclock.core.standard.Edition;
import bagclock.core.standard.Standard;
import bagclock.core.standard.Table;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Tables as a reader sees them in print: levels down, conditions across. */
class LayoutTest {
    private static final List<Cell> CELLS = Standard.load(Edition.J_STD_033D).cells();

    @ParameterizedTest
    @EnumSource(Table.class)
    void everyCellHasOnePlaceAndEveryRowIsFull(Table table) {
        Layout layout = Layout.of(table, CELLS);
        List<Integer> numbers = layout.grids().stream()
                .flatMap(grid -> grid.rows().stream())
                .flatMap(row -> row.cells().stream())
                .map(Layout.Placed::number)
                .toList();
        long own = CELLS.stream().filter(cell -> cell.table() == table).count();
        assertThat(numbers).hasSize((int) own).doesNotHaveDuplicates();
        assertThat(layout.grids())
                .allSatisfy(grid -> assertThat(grid.rows())
                        .allSatisfy(row -> assertThat(row.cells()).hasSameSizeAs(grid.columns())));
    }

    @Test
    void everyCellStandsUnderItsOwnHead() {
        Layout.Grid thick = Layout.of(Table.DERATED_FLOOR_LIFE, CELLS).grids().get(0);
        assertThat(thick.columns()).startsWith("5 %RH").hasSize(10);
        Layout.Row row = thick.rows().stream()
                .filter(one -> one.name().equals("level 3, 30 C"))
                .findFirst()
                .orElseThrow();
        Cell cell = row.cells().get(thick.columns().indexOf("60 %RH")).cell();
        assertThat(cell.citation().column()).isEqualTo("30 C, 60 %RH");
        assertThat(cell.citation().row()).isEqualTo(">=3.1 mm, level 3");
        assertThat(cell.value())
                .as("S1, table 7-1: the floor life itself, 7 days")
                .isEqualTo("7");
    }
}
