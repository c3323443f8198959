package bagclock.core.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class SiteValuesTest {
    private static final Standard STANDARD = Standard.load(Edition.J_STD_033D);
    private static final CellKey MEMORY_CELL =
            new CellKey(Table.DERATED_FLOOR_LIFE, "<2.1 mm, level 3", "30 C, 50 %RH");

    private static SiteValue value(CellKey key, String value) {
        return new SiteValue(key, value, "A. Engineer", LocalDate.of(2026, 3, 1));
    }

    private static Standard with(CellKey key, String value) {
        return STANDARD.with(SiteValues.of(List.of(value(key, value))));
    }

    private static Cited<Life> thinLevel3(Standard standard) {
        return standard.derated(DeratingClass.THIN, Level.L3, new Celsius(30), new RelativeHumidity(50))
                .orElseThrow();
    }

    @Test
    void aCorrectedCellCountsAndNamesTheEngineer() {
        Cited<Life> cell = thinLevel3(with(MEMORY_CELL, "9"));
        assertThat(cell.value()).isEqualTo(Life.of(Duration.ofDays(9)));
        assertThat(cell.citation())
                .isEqualTo(new Citation(
                        "J-STD-033D (2018)",
                        "table 7-1",
                        "<2.1 mm, level 3",
                        "30 C, 50 %RH",
                        Status.SITE,
                        "A. Engineer, 2026-03-01"));
    }

    @Test
    void aConfirmedCellKeepsItsValueAndIsNoLongerFromMemory() {
        Standard confirmed = with(MEMORY_CELL, "11");
        assertThat(thinLevel3(confirmed).value()).isEqualTo(thinLevel3(STANDARD).value());
        assertThat(confirmed.memoryCells()).isEqualTo(STANDARD.memoryCells() - 1);
        assertThat(confirmed.edition()).isEqualTo(STANDARD.edition());
    }

    @Test
    void theStandardItselfStaysAsItIsAndForgetsEarlierSiteValues() {
        Standard corrected = with(MEMORY_CELL, "9");
        assertThat(thinLevel3(STANDARD).citation().status()).isEqualTo(Status.MEMORY);
        assertThat(corrected.with(SiteValues.NONE).cells()).isEqualTo(STANDARD.cells());
    }

    @Test
    void aCorrectedYearOrCellChangesLevel2() {
        CellKey at3070 = new CellKey(Table.DERATED_FLOOR_LIFE, ">=3.1 mm, level 2a", "30 C, 70 %RH");
        Standard corrected = STANDARD.with(SiteValues.of(
                List.of(value(at3070, "14"), value(new CellKey(Table.FLOOR_LIFE, "level 2", ""), "8000"))));
        Cited<Life> cell = corrected
                .derated(DeratingClass.THICK, Level.L2, new Celsius(30), new RelativeHumidity(70))
                .orElseThrow();
        assertThat(cell.value()).isEqualTo(Life.of(Duration.ofHours(4000)));
        assertThat(cell.citation().status()).isEqualTo(Status.INFERENCE);
    }

    @Test
    void aCellThatIsNotThereIsRefused() {
        assertThatExceptionOfType(IllegalArgumentException.class)
                .isThrownBy(() -> with(new CellKey(Table.USER_BAKE, "<=1.4 mm, level 3", "150 C, >72 h"), "4 h"))
                .withMessageContaining("150 C");
    }

    @Test
    void aTextThatTheTableCannotHoldIsRefused() {
        assertThatExceptionOfType(IllegalArgumentException.class)
                .isThrownBy(() -> with(MEMORY_CELL, "8 d"))
                .withMessageContaining("site value: ")
                .withMessageContaining("'8 d'");
        assertThatExceptionOfType(IllegalArgumentException.class)
                .isThrownBy(() -> with(new CellKey(Table.DRY_REST, "levels 4 5 5a", "rest at most %RH"), "101"))
                .withMessageContaining("101");
        assertThatExceptionOfType(IllegalArgumentException.class)
                .isThrownBy(() ->
                        with(new CellKey(Table.DERATED_FLOOR_LIFE, ">=3.1 mm, level 2a", "30 C, 60 %RH"), "unlimited"))
                .withMessageContaining("must not be unlimited");
    }

    @Test
    void oneCellHasOneValueAndEachHasAName() {
        assertThatExceptionOfType(IllegalArgumentException.class)
                .isThrownBy(() -> SiteValues.of(List.of(value(MEMORY_CELL, "9"), value(MEMORY_CELL, "10"))))
                .withMessageContaining("two site values");
        assertThatExceptionOfType(IllegalArgumentException.class)
                .isThrownBy(() -> new SiteValue(MEMORY_CELL, "9", " ", LocalDate.of(2026, 3, 1)));
    }
}
