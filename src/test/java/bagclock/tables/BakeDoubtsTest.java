package bagclock.tables;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.standard.Cell;
import bagclock.core.standard.CellKey;
import bagclock.core.standard.Edition;
import bagclock.core.standard.SiteValue;
import bagclock.core.standard.SiteValues;
import bagclock.core.standard.Standard;
import bagclock.core.standard.Table;
import bagclock.tables.BakeDoubts.By;
import bagclock.tables.BakeDoubts.Doubt;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BakeDoubtsTest {
    private static final Standard SHIPPED = Standard.load(Edition.J_STD_033D);
    private static final CellKey MIDDLE = new CellKey(Table.USER_BAKE, ">1.4 to 2.0 mm, level 3", "90 C, <=72 h");
    private static final CellKey DRY_PACK = new CellKey(Table.SUPPLIER_BAKE, ">1.4 to 2.0 mm, level 3", "125 C");

    private static List<Doubt> doubts(CellKey key, String value) {
        SiteValue site = new SiteValue(key, value, "an engineer", LocalDate.of(2026, 3, 1));
        List<Cell> cells = SHIPPED.with(SiteValues.of(List.of(site))).cells();
        Cell cell =
                cells.stream().filter(one -> one.key().equals(key)).findFirst().orElseThrow();
        return BakeDoubts.of(cell, cells);
    }

    /** J-STD-033D, tables 4-1 and 4-2 (S1, S2, S3): harder to dry is never baked shorter. */
    @Test
    void theShippedBakesContradictNoNeighbour() {
        List<Cell> cells = SHIPPED.cells();

        assertThat(cells.stream().flatMap(cell -> BakeDoubts.of(cell, cells).stream()))
                .isEmpty();
    }

    /** Table 4-1 there: 2 d; thinner 23 h, level 2a 2 d, 125 C 17 h, more than 72 h 4 d, thicker 5 d, level 4 3 d. */
    @ParameterizedTest
    @CsvSource({
        "22 h, THINNER LESS_SENSITIVE, true",
        "16 h, THINNER LESS_SENSITIVE HOTTER, true",
        "4 d, LESS_SENSITIVE, false",
        "97 h, LESS_SENSITIVE SOONER, false",
        "2 d, '', true"
    })
    void aWrongTimeContradictsItsNeighbours(String value, String by, boolean tooShort) {
        List<Doubt> doubts = doubts(MIDDLE, value);

        assertThat(doubts)
                .extracting(doubt -> doubt.by().name())
                .containsExactlyInAnyOrder(by.isEmpty() ? new String[0] : by.split(" "));
        assertThat(doubts)
                .allMatch(doubt ->
                        (tooShort ? doubt.shorter() : doubt.easier()).key().equals(MIDDLE));
    }

    /** Table 4-2 there: 43 h; thinner 16 h, level 2a 23 h (S3). */
    @Test
    void theBakeBeforeDryPackingIsDoubtedToo() {
        assertThat(doubts(DRY_PACK, "20 h")).extracting(Doubt::by).containsExactly(By.LESS_SENSITIVE);
        assertThat(doubts(DRY_PACK, "15 h")).extracting(Doubt::by).containsExactly(By.THINNER, By.LESS_SENSITIVE);
        assertThat(doubts(DRY_PACK, "43 h")).isEmpty();
    }

    @Test
    void otherTablesAreNotDoubted() {
        List<Cell> cells = SHIPPED.cells();

        assertThat(cells.stream()
                        .filter(cell -> cell.table() == Table.LARGE_ARRAY_BAKE || cell.table() == Table.FLOOR_LIFE)
                        .flatMap(cell -> BakeDoubts.of(cell, cells).stream()))
                .isEmpty();
    }
}
