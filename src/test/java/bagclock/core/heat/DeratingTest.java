package bagclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.standard.BodyKind;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Floor life by climate: J-STD-033D, table 7-1 (S4, S5, S10; cells from memory are marked in the table's file). */
class DeratingTest {
    private static final Offset<Double> EXACT = Offset.offset(1e-6);

    /** The next warmer column and the next wetter row, never between; at or below 30/60 the level's own life. */
    @ParameterizedTest
    @CsvSource({
        "leadless, 1.2, 30, 60, 168",
        "leadless, 1.2, 20, 40, 168",
        "leadless, 1.2, 30, 60.1, 24",
        "leadless, 1.2, 30, 70, 24",
        "leadless, 1.2, 30.1, 60, 120",
        "leadless, 1.2, 25, 70, 48",
        "leadless, 1.2, 20.1, 61, 48",
        "leadless, 1.2, 5, 65, 48",
        "leadless, 1.2, 35, 90, 12",
        "leadless, 2.09, 30, 70, 24",
        "leadless, 2.1, 30, 70, 72",
        "leadless, 3.09, 30, 70, 72",
        "leadless, 3.1, 30, 70, 120",
        "array, 0.99, 30, 70, 24",
        "array, 1.0, 30, 70, 120",
        "array, 4.0, 30, 70, 120",
        "land-array, 1.2, 30, 70, 24",
        "leaded, 1.2, 30, 70, 24",
        "other, 2.5, 30, 70, 72"
    })
    void level3TimeCountsAtTheCellOfTheNextWarmerColumnAndTheNextWetterRow(
            String body, String mm, double celsius, double percent, double lifeHours) {
        Answer answer = Story.of(
                        PartUnderTest.level("3").body(BodyKind.parse(body).orElseThrow(), mm))
                .opened(0)
                .air(celsius, percent)
                .answer(6);

        assertThat(Told.used(answer)).isCloseTo(6 * 168 / lifeHours, EXACT);
        assertThat(Told.endsAt(answer).orElseThrow()).isEqualTo(lifeHours);
    }

    /** Lead-frame families are named in the thickest class whatever their thickness: the shorter cell counts. */
    @ParameterizedTest
    @CsvSource({"leadless, 2.5, 72", "leaded, 2.5, 48", "land-array, 2.5, 48", "module, 2.5, 48"})
    void allButBallArraysAndLeadlessBodiesTakeTheShorterOfTheirClassAndTheThickest(
            String body, String mm, double lifeHours) {
        Answer answer = Story.of(
                        PartUnderTest.level("4").body(BodyKind.parse(body).orElseThrow(), mm))
                .opened(0)
                .air(35, 40)
                .answer(1);

        assertThat(Told.used(answer)).isCloseTo(72 / lifeHours, EXACT);
    }

    /** Rates add up (inference): used = sum of dt / life. */
    @Test
    void timeInDifferentClimatesAddsUp() {
        Answer answer = Story.of(PartUnderTest.level("3"))
                .toZone(0, "dry")
                .toZone(10, "damp")
                .logged("dry", 0, 20, 25, 50)
                .air(30, 70)
                .answer(20);

        assertThat(Told.used(answer)).isCloseTo(10 + 10 * 7, EXACT);
        assertThat(answer.trail()).hasSize(2);
    }

    /** Table 7-1 ends at 35 C and 90 %RH (inference: beyond it the life is over at once, later time adds on). */
    @ParameterizedTest
    @CsvSource({"35.1, 40", "25, 90.1"})
    void outsideTheTableTheLifeIsOverAtOnce(double celsius, double percent) {
        Story story = Story.of(PartUnderTest.level("3"))
                .toZone(0, "hot")
                .toZone(0.5, "bench")
                .read("hot", 0, celsius, percent)
                .read("hot", 1, celsius, percent)
                .logged("bench", 0, 50, 25, 50);

        Answer answer = story.answer(0.75);
        assertThat(answer.verdict()).isEqualTo(Verdict.BAKE);
        assertThat(Told.because(answer)).isEqualTo(FindingCode.OUTSIDE_TABLE);
        assertThat(answer.bakeColumn()).contains(Answer.Column.OVER_72H);
        assertThat(Told.used(answer)).isCloseTo(168.25, EXACT);
        assertThat(Told.endsAt(answer)).contains(0.0);
        assertThat(Told.used(story.answer(0.25))).isCloseTo(168, EXACT);
    }

    /** Level 2 has no rows: its year scaled by the 2a cell over the 2a cell at 30/60, at most a year (inference). */
    @ParameterizedTest
    @CsvSource({"30, 70, 10, 28", "35, 60, 16, 28", "35, 20, 28, 28"})
    void level2IsScaledFrom2a(double celsius, double percent, double cellDays, double daysAt3060) {
        Answer answer = Story.of(PartUnderTest.level("2").thick("3.2"))
                .opened(0)
                .air(celsius, percent)
                .answer(10);

        assertThat(Told.used(answer)).isCloseTo(10 * daysAt3060 / cellDays, EXACT);
    }

    /** A maker's own life is capped by the cell too; level 2's cell is scaled from the year, not from the maker's life. */
    @ParameterizedTest
    @CsvSource({"3, 300, 12, 150", "3, 10, 5, 5", "2, 1000, 10, 10"})
    void aMakersLifeIsCappedByTheCell(String level, double life, double hour, double used) {
        Answer answer = Story.of(PartUnderTest.level(level)
                        .thick(level.equals("2") ? "3.2" : "1.2")
                        .makersLife(life))
                .opened(0)
                .air(30, 70)
                .answer(hour);

        assertThat(Told.total(answer)).contains(life);
        assertThat(Told.used(answer)).isCloseTo(used, EXACT);
    }

    /** Above 30 C with an unlimited cell: the own life, and yet above 30 C for the bake column. */
    @Test
    void anUnlimitedCellAbove30CDoesNotLengthen() {
        Answer answer = Story.of(PartUnderTest.level("3")).opened(0).air(32, 40).answer(10);

        assertThat(Told.used(answer)).isCloseTo(10, EXACT);
        assertThat(answer.bakeColumn()).contains(Answer.Column.OVER_72H);
    }

    /** A maker's table: of the cells as warm and as wet or more so the shortest; beyond it, outside. */
    @ParameterizedTest
    @CsvSource({"25, 40, 50", "25, 60, 50", "30, 60, 60", "25, 70, 50", "30, 80, 60"})
    void aMakersTableReplacesTableAndLife(double celsius, double percent, double lifeHours) {
        Answer answer = Story.of(PartUnderTest.level("3").makersTable(25, 80, 50, 30, 60, 100, 30, 80, 60))
                .opened(0)
                .air(celsius, percent)
                .answer(1);

        assertThat(Told.total(answer)).contains(60.0);
        assertThat(Told.used(answer)).isCloseTo(60 / lifeHours, EXACT);
    }

    @Test
    void beyondAMakersTableTheLifeIsOver() {
        Answer answer = Story.of(PartUnderTest.level("3").makersTable(30, 40, 300))
                .opened(0)
                .air(25, 50)
                .answer(1);

        assertThat(Told.because(answer)).isEqualTo(FindingCode.OUTSIDE_TABLE);
        assertThat(Told.total(answer)).contains(168.0);
    }

    /** A maker's table lengthens by its declared worst case too, while all exposure stays in cells as long as its own. */
    @Test
    void aMakersTableLengthensWithoutReadings() {
        Answer answer = Story.of(PartUnderTest.level("3").makersTable(30, 40, 300))
                .opened(0)
                .air(25, 40)
                .answer(200);

        assertThat(answer.verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(Told.used(answer)).isCloseTo(200 * 168 / 300.0, EXACT);
    }

    @Test
    void ofAMakersTableAndAMakersLifeTheSmallerCounts() {
        Answer answer = Story.of(
                        PartUnderTest.level("3").makersTable(30, 60, 100).makersLife(80))
                .opened(0)
                .answer(10);

        assertThat(Told.total(answer)).contains(80.0);
        assertThat(Told.used(answer)).isCloseTo(10, EXACT);
    }
}
