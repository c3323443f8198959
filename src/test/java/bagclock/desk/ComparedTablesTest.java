package bagclock.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import bagclock.core.heat.Answer;
import bagclock.core.standard.CellKey;
import bagclock.core.standard.Level;
import bagclock.core.standard.Status;
import bagclock.core.standard.Table;
import bagclock.platform.ChangedMeanwhile;
import bagclock.platform.OnBothDatabases;
import bagclock.register.Change;
import bagclock.register.ComparedCell;
import bagclock.register.Register;
import bagclock.register.Versioned;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Cells that the site has compared count in every answer from then on. S1, table 5-1: level 3 has 168 h. */
class ComparedTablesTest extends OnBothDatabases {
    private static final CellKey LIFE = new CellKey(Table.FLOOR_LIFE, "level 3", "");

    private TestShop shop;

    @BeforeEach
    void openShop() {
        shop = new TestShop(database);
        shop.opened(0, "R-1", Level.L3);
    }

    private void compare(int basedOn, double hours, Optional<String> value) {
        ComparedCell cell = new ComparedCell(key(), value, "Someone", LocalDate.parse("2026-03-01"), "2018");
        Instant at = TestShop.at(hours);
        shop.desk.keep(List.of(cell), new Change(at, at, "engineer", basedOn));
    }

    /** Whatever the column of the table of lives is called. */
    private static CellKey key() {
        return TestShop.STANDARD.cells().stream()
                .map(cell -> cell.key())
                .filter(key -> key.table() == LIFE.table() && key.row().equals(LIFE.row()))
                .findFirst()
                .orElseThrow();
    }

    private BigDecimal total(double hours) {
        Answer answer = shop.desk.mayHeat("R-1", Optional.empty(), TestShop.at(hours));
        return answer.floorLife().totalHours().orElseThrow();
    }

    @Test
    void aCorrectedCellCountsFromThenOnAndUntilItIsTakenBack() {
        assertThat(total(1)).isEqualByComparingTo("168");
        compare(0, 2, Optional.of("100"));
        assertThat(total(1)).as("before the comparison").isEqualByComparingTo("168");
        assertThat(total(3)).isEqualByComparingTo("100");
        compare(1, 4, Optional.empty());
        assertThat(total(5)).isEqualByComparingTo("168");
    }

    @Test
    void listsFollowACorrectedCellWithoutReplay() {
        compare(0, 2, Optional.of("100"));
        assertThat(shop.desk.items(ItemQuery.OPEN, TestShop.at(3)).rows().get(0).totalHours())
                .hasValueSatisfying(total -> assertThat(total).isEqualByComparingTo("100"));
    }

    @Test
    void aConfirmedCellIsNoLongerFromMemory() {
        compare(0, 2, Optional.of("168"));
        assertThat(shop.desk.standard(TestShop.at(3)).cells())
                .filteredOn(cell -> cell.key().equals(key()))
                .allMatch(cell -> cell.citation().status() == Status.SITE);
    }

    @Test
    void everyComparisonIsKeptAndTheSecondOfTwoAtOnceIsRefused() {
        compare(0, 2, Optional.of("100"));
        assertThatExceptionOfType(ChangedMeanwhile.class).isThrownBy(() -> compare(0, 3, Optional.of("90")));
        compare(1, 4, Optional.of("168"));
        List<Versioned<ComparedCell>> all = database.read(tx -> new Register().comparisonsOf(tx, key()));
        assertThat(all).extracting(version -> version.fact().value().orElse("")).containsExactly("168", "100");
        List<Versioned<ComparedCell>> now = database.read(tx -> new Register().comparedCells(tx, TestShop.at(5)));
        assertThat(now).hasSize(1);
    }
}
