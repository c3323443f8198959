package bagclock.core.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.Millimetres;
import bagclock.core.quantity.RelativeHumidity;
import java.time.Duration;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Sources S… are listed in d2018/sources.csv and docs/reference/tables.md. */
class StandardTest {
    private static final Standard STANDARD = Standard.load(Edition.J_STD_033D);

    private static Optional<Cited<Life>> derated(
            DeratingClass thickness, String level, double celsius, double percent) {
        return STANDARD.derated(
                thickness, Level.parse(level).orElseThrow(), new Celsius(celsius), new RelativeHumidity(percent));
    }

    private static Life days(String days) {
        return days.equals("unlimited")
                ? Life.UNLIMITED
                : Life.of(Duration.ofHours(Math.round(Double.parseDouble(days) * 24)));
    }

    /** S13, S51: soak time of J-STD-020 less the 24 h that the maker may take. */
    @ParameterizedTest
    @CsvSource({"2a,696", "3,192", "4,96", "5,72", "5a,48"})
    void floorLifeIsTheSoakLess24Hours(String level, long soakHours) {
        assertThat(STANDARD.floorLife(Level.parse(level).orElseThrow()).value())
                .isEqualTo(Life.of(Duration.ofHours(soakHours - 24)));
    }

    @Test
    void level1IsUnlimitedAndLevel6HasNoLifeOfItsOwn() {
        assertThat(STANDARD.floorLife(Level.L1).value()).isEqualTo(Life.UNLIMITED);
        assertThat(STANDARD.floorLife(Level.L2).value()).isEqualTo(Life.of(Duration.ofDays(365)));
        assertThatExceptionOfType(IllegalArgumentException.class)
                .isThrownBy(() -> STANDARD.floorLife(Level.L6))
                .withMessageContaining("level 6");
    }

    /** S5: level 3, thin, 30 C: 7 days at 60 %RH, 1 day at 70 %RH. S4: level 4, thickest class, 25 C / 50 %RH: 5 days. */
    @ParameterizedTest
    @CsvSource({"THIN,3,30,60,7,T5-1+S5", "THIN,3,30,70,1,S5", "THICK,4,25,50,5,S4"})
    void derationAgreesWithTheSources(
            DeratingClass thickness, String level, double celsius, double percent, String days, String sources) {
        Cited<Life> cell = derated(thickness, level, celsius, percent).orElseThrow();
        assertThat(cell.value()).isEqualTo(days(days));
        assertThat(cell.citation().status()).isEqualTo(Status.SEEN);
        assertThat(cell.citation().sources()).isEqualTo(sources);
    }

    /** Next warmer, next wetter, never interpolated; S4 for the cells. */
    @ParameterizedTest
    @CsvSource({
        "-60,0,unlimited",
        "20,5,unlimited",
        "20,5.01,8",
        "20,10,8",
        "20,20,7",
        "19.9,60,6",
        "20,60.0001,5",
        "20.0001,60,4",
        "25,60,4",
        "25.0001,60,3",
        "30,60,3",
        "30.0001,60,2",
        "30,60.0001,3",
        "30,70.5,2",
        "35,90,1"
    })
    void derationTakesTheNextWarmerAndTheNextWetter(double celsius, double percent, String days) {
        assertThat(derated(DeratingClass.THICK, "4", celsius, percent)
                        .orElseThrow()
                        .value())
                .isEqualTo(days(days));
    }

    @ParameterizedTest
    @CsvSource({"35.0001,60", "30,90.0001", "35.0001,90.0001", "500,5", "-60,100"})
    void beyondTheLastColumnOrRowThereIsNoCell(double celsius, double percent) {
        for (DeratingClass thickness : DeratingClass.values()) {
            assertThat(derated(thickness, "2", celsius, percent)).isEmpty();
            assertThat(derated(thickness, "5a", celsius, percent)).isEmpty();
        }
    }

    @Test
    void aDeratedCellIsCitedAsPrinted() {
        assertThat(derated(DeratingClass.THICK, "3", 27, 55).orElseThrow().citation())
                .isEqualTo(new Citation(
                        "J-STD-033D (2018)", "table 7-1", ">=3.1 mm, level 3", "30 C, 60 %RH", Status.SEEN, "S4+T5-1"));
    }

    /** Level 2 = a year x the 2a cell over the 2a cell at 30/60 (28 days), at most a year; inference. */
    @ParameterizedTest
    @CsvSource({
        "THICK,30,60,28",
        "THICK,25,60,28",
        "THICK,30,70,10",
        "THICK,35,60,16",
        "MEDIUM,30,80,3",
        "THIN,35,80,0.5"
    })
    void level2IsScaledFrom2a(DeratingClass thickness, double celsius, double percent, double shareOf28Days) {
        Cited<Life> cell = derated(thickness, "2", celsius, percent).orElseThrow();
        assertThat(cell.value()).isEqualTo(new Life(Math.round(365 * 86_400_000L * shareOf28Days * 2), 28 * 2));
        assertThat(cell.citation().status()).isEqualTo(Status.INFERENCE);
        assertThat(cell.citation().row()).endsWith("level 2a scaled to level 2");
    }

    @Test
    void anUnlimited2aCellIsAYearForLevel2() {
        assertThat(derated(DeratingClass.THIN, "2", 20, 5).orElseThrow().value())
                .isEqualTo(days("365"));
    }

    @ParameterizedTest
    @EnumSource(names = {"L1", "L6"})
    void levelsWithoutRowsAreRefused(Level level) {
        Celsius warm = new Celsius(25);
        RelativeHumidity damp = new RelativeHumidity(50);
        assertThatExceptionOfType(IllegalArgumentException.class)
                .isThrownBy(() -> STANDARD.derated(DeratingClass.THIN, level, warm, damp));
        assertThatExceptionOfType(IllegalArgumentException.class)
                .isThrownBy(() -> STANDARD.shortestDerated(DeratingClass.THIN, level));
        assertThatExceptionOfType(IllegalArgumentException.class)
                .isThrownBy(() -> STANDARD.bake(BakeRow.UP_TO_1_4, level, 125, BakeColumn.OVER_72H));
        assertThatExceptionOfType(IllegalArgumentException.class).isThrownBy(() -> STANDARD.restRule(level));
        assertThat(STANDARD.supplierBake(Millimetres.of("1.0"), level)).isEmpty();
    }

    /** S1 and S2: level 3 up to 1.4 mm. S2: level 5 above 1.4 to 2.0 mm. */
    @ParameterizedTest
    @CsvSource({
        "UP_TO_1_4,3,125,PT9H,PT7H", "UP_TO_1_4,3,90,PT33H,PT23H", "UP_TO_1_4,3,40,P13D,P9D",
        "UP_TO_2_0,5,125,PT40H,PT25H", "UP_TO_2_0,5,90,P6D,P4D", "UP_TO_2_0,5,40,P57D,P35D"
    })
    void bakesAgreeWithTheSources(BakeRow row, String level, int celsius, Duration over, Duration within) {
        Level parsed = Level.parse(level).orElseThrow();
        assertThat(STANDARD.bake(row, parsed, celsius, BakeColumn.OVER_72H).value())
                .isEqualTo(over);
        assertThat(STANDARD.bake(row, parsed, celsius, BakeColumn.WITHIN_72H).value())
                .isEqualTo(within);
    }

    /** Edition A (2002) gave level 2a at up to 1.4 mm what later editions give to level 2: 5 and 3 h at 125 C (S2, S1). */
    @Test
    void theFiguresOfEditionAAreNotUsed() {
        assertThat(STANDARD.bake(BakeRow.UP_TO_1_4, Level.L2A, 125, BakeColumn.OVER_72H)
                        .value())
                .isEqualTo(Duration.ofHours(7));
        assertThat(STANDARD.cells())
                .allSatisfy(cell -> assertThat(cell.citation().document()).doesNotContain("2002"));
        assertThat(Edition.values()).containsExactly(Edition.J_STD_033D);
    }

    @Test
    void aBakeIsCitedAsPrinted() {
        assertThat(STANDARD.bake(BakeRow.UP_TO_1_4, Level.L3, 40, BakeColumn.WITHIN_72H)
                        .citation())
                .isEqualTo(new Citation(
                        "J-STD-033D (2018)", "table 4-1", "<=1.4 mm, level 3", "40 C, <=72 h", Status.SEEN, "S1+S2"));
        assertThat(STANDARD.largeArrayBake().value()).isEqualTo(Duration.ofDays(4));
        assertThat(STANDARD.largeArrayBake().citation().status()).isEqualTo(Status.MEMORY);
    }

    /** Memory for the tolerances; S1 and S2 for the humidity. */
    @ParameterizedTest
    @CsvSource({"125,,10", "90,5,8", "40,5,5"})
    void theOvenKeepsItsLimits(int celsius, Double percent, int degrees) {
        assertThat(STANDARD.bakeHumidity(celsius))
                .isEqualTo(Optional.ofNullable(percent).map(RelativeHumidity::new));
        assertThat(STANDARD.bakeToleranceC(celsius).value()).isEqualTo(degrees);
    }

    @Test
    void noOtherTemperatureHasAColumn() {
        assertThatExceptionOfType(IllegalArgumentException.class)
                .isThrownBy(() -> STANDARD.bake(BakeRow.UP_TO_1_4, Level.L3, 110, BakeColumn.OVER_72H))
                .withMessageContaining("110");
        assertThatExceptionOfType(IllegalArgumentException.class).isThrownBy(() -> STANDARD.bakeHumidity(150));
    }

    /** S3: level 3 up to 1.4 mm 16 h, level 4 at 1.4 to 2.0 mm 48 h; the 150 C column is never offered. */
    @Test
    void bakesBeforeDryPackingAreAt125Alone() {
        assertThat(STANDARD.supplierBake(Millimetres.of("1.4"), Level.L3)
                        .orElseThrow()
                        .value())
                .isEqualTo(Duration.ofHours(16));
        assertThat(STANDARD.supplierBake(Millimetres.of("1.41"), Level.L4)
                        .orElseThrow()
                        .value())
                .isEqualTo(Duration.ofDays(2));
        assertThat(STANDARD.supplierBake(Millimetres.of("4.6"), Level.L3)).isEmpty();
        assertThat(STANDARD.cells()).noneMatch(cell -> cell.citation().column().contains("150"));
    }

    /** S37 for 12 h and 5 times; the rest of table 4-3 is memory. */
    @ParameterizedTest
    @CsvSource({"L2,12,5,10,10", "L2A,12,5,10,10", "L3,12,5,10,10", "L4,8,10,5,", "L5,8,10,5,", "L5A,8,10,5,"})
    void aShortExposureIsResetByARest(Level level, int hours, int factor, double percent, Double pause) {
        RestRule rule = STANDARD.restRule(level);
        assertThat(rule.maxExposure()).isEqualTo(Duration.ofHours(hours));
        assertThat(rule.factor()).isEqualTo(factor);
        assertThat(rule.maxHumidity()).isEqualTo(new RelativeHumidity(percent));
        assertThat(rule.pauseHumidity()).isEqualTo(Optional.ofNullable(pause).map(RelativeHumidity::new));
        assertThat(rule.pauseHumidity().isPresent()).isEqualTo(level.isPausedByDryStorage());
        assertThat(rule.citation().status()).isEqualTo(Status.MEMORY);
    }

    @Test
    void cellsFromMemoryAreCounted() {
        Map<Table, Long> memory = new EnumMap<>(Table.class);
        for (Cell cell : STANDARD.cells()) {
            memory.merge(cell.table(), cell.citation().status() == Status.MEMORY ? 1L : 0L, Long::sum);
        }
        assertThat(memory)
                .containsEntry(Table.FLOOR_LIFE, 0L)
                .containsEntry(Table.DERATED_FLOOR_LIFE, 389L)
                .containsEntry(Table.USER_BAKE, 48L)
                .containsEntry(Table.LARGE_ARRAY_BAKE, 1L)
                .containsEntry(Table.BAKE_LIMITS, 3L)
                .containsEntry(Table.SUPPLIER_BAKE, 8L)
                .containsEntry(Table.DRY_REST, 8L)
                .containsEntry(Table.CLASSIFICATION_LEAD_FREE, 9L)
                .containsEntry(Table.CLASSIFICATION_TIN_LEAD, 4L);
        assertThat(STANDARD.memoryCells()).isEqualTo(470);
        assertThat(STANDARD.cells().stream()
                        .filter(cell -> cell.table() == Table.DERATED_FLOOR_LIFE)
                        .filter(cell -> cell.citation().status() == Status.SEEN))
                .hasSize(211);
    }
}
