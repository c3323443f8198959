package bagclock.tables;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.standard.Cell;
import bagclock.core.standard.CellKey;
import bagclock.core.standard.Edition;
import bagclock.core.standard.SiteValue;
import bagclock.core.standard.SiteValues;
import bagclock.core.standard.Standard;
import bagclock.core.standard.Table;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LifeDoubtsTest {
    private static final Standard SHIPPED = Standard.load(Edition.J_STD_033D);
    private static final CellKey MIDDLE =
            new CellKey(Table.DERATED_FLOOR_LIFE, "2.1 to <3.1 mm, level 3", "25 C, 70 %RH");

    private static Cell cell(List<Cell> cells, CellKey key) {
        return cells.stream().filter(one -> one.key().equals(key)).findFirst().orElseThrow();
    }

    private static List<LifeDoubts.Doubt> doubts(String value) {
        SiteValue site = new SiteValue(MIDDLE, value, "an engineer", LocalDate.of(2026, 3, 1));
        List<Cell> cells = SHIPPED.with(SiteValues.of(List.of(site))).cells();
        return LifeDoubts.of(cell(cells, MIDDLE), cells);
    }

    /** J-STD-033D, table 7-1: each life is no longer than its drier, cooler, milder neighbour's. */
    @Test
    void theShippedLivesContradictNoNeighbour() {
        List<Cell> cells = SHIPPED.cells();

        assertThat(cells.stream().flatMap(cell -> LifeDoubts.of(cell, cells).stream()))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"unlimited, true", "100, true", "0.1, false"})
    void aLifeThatIsTooLongIsLongerThanDrierAndCoolerNeighbours(String value, boolean tooLong) {
        List<LifeDoubts.Doubt> doubts = doubts(value);

        assertThat(doubts).isNotEmpty();
        assertThat(doubts.stream().anyMatch(doubt -> doubt.longer().key().equals(MIDDLE)))
                .isEqualTo(tooLong);
        assertThat(doubts.stream().anyMatch(doubt -> doubt.milder().key().equals(MIDDLE)))
                .isEqualTo(!tooLong);
        assertThat(doubts).extracting(LifeDoubts.Doubt::by).contains(LifeDoubts.By.DRIER, LifeDoubts.By.COOLER);
    }

    @Test
    void otherTablesAreNotDoubted() {
        Cell bake = SHIPPED.cells().stream()
                .filter(cell -> cell.table() == Table.USER_BAKE)
                .findFirst()
                .orElseThrow();

        assertThat(LifeDoubts.of(bake, SHIPPED.cells())).isEmpty();
    }
}
