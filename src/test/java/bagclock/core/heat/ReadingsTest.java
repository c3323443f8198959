package bagclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How readings and declared worst cases count (the project's own reading of 'at or below', inference). */
class ReadingsTest {
    private static final Offset<Double> EXACT = Offset.offset(1e-6);

    private static Story level3() {
        return Story.of(PartUnderTest.level("3")).opened(0);
    }

    /** Between two readings the warmer and the wetter of both ends count, each by itself. */
    @Test
    void betweenTwoReadingsTheWarmerAndTheWetterOfBothEndsCount() {
        Answer answer = level3().read("bench", 0, 28, 55)
                .read("bench", 1, 22, 70)
                .read("bench", 2, 22, 55)
                .answer(2);

        assertThat(Told.used(answer)).isCloseTo(168 / 24.0 + 168 / 48.0, EXACT);
    }

    /** A reading holds for the gap of the site, 2 h unless set; then and before the first the worst case counts. */
    @ParameterizedTest
    @CsvSource({"2, 1, 2", "4, 1, 4", "0.5, 1, 0.5", "2, 9, 1"})
    void aReadingHoldsForTheGapAndThenTheWorstCaseCounts(double gap, double firstReading, double hoursRead) {
        Answer answer = level3().air(30, 70)
                .read("bench", firstReading, 25, 50)
                .rules(false, gap, 0)
                .answer(10);

        assertThat(Told.used(answer)).isCloseTo(hoursRead + 7 * (10 - hoursRead), EXACT);
        assertThat(answer.has(FindingCode.AIR_DECLARED)).isTrue();
    }

    /** Both ends count also where the second reading comes after the gap. */
    @Test
    void theReadingAfterAGapCountsBackToTheOneBefore() {
        Answer answer = level3().read("bench", 0, 25, 50)
                .read("bench", 5, 25, 70)
                .read("bench", 5.5, 25, 50)
                .answer(5);

        assertThat(Told.used(answer)).isCloseTo(5 * 168 / 48.0, EXACT);
    }

    /** Neither reading nor worst case: outside the table. */
    @Test
    void whereNothingIsKnownTheLifeIsOver() {
        Answer answer = level3().nothingDeclared().answer(1);

        assertThat(Told.because(answer)).isEqualTo(FindingCode.OUTSIDE_TABLE);
        assertThat(answer.has(FindingCode.AIR_UNKNOWN)).isTrue();
    }

    /** A worst case milder than the log of 90 days is replaced by the log's highest values, each by itself. */
    @ParameterizedTest
    @CsvSource({"-89, 70, 30, 24", "-91, 70, 30, 168", "-89, 40, 33, 120"})
    void aWorstCaseMilderThanTheLogOf90DaysIsReplaced(int day, double percent, double celsius, double lifeHours) {
        Answer answer = level3().read("bench", day * 24 + 3, celsius, percent)
                .air(25, 60)
                .answer(3);

        assertThat(Told.used(answer)).isCloseTo(3 * 168 / lifeHours, EXACT);
    }

    /** A log does not stand in for a worst case that was never declared. */
    @Test
    void aLogIsNoWorstCase() {
        Answer answer = level3().nothingDeclared().read("bench", -10, 25, 50).answer(1);

        assertThat(answer.has(FindingCode.OUTSIDE_TABLE)).isTrue();
    }

    /** The future counts at the harsher of the last reading and the worst case, each value by itself. */
    @Test
    void theFutureCountsAtTheHarsherOfLastReadingAndWorstCase() {
        Answer answer = level3().air(20, 70).logged("bench", 0, 10, 28, 40).answer(10);

        assertThat(Told.used(answer)).isCloseTo(10, EXACT);
        assertThat(Told.endsAt(answer).orElseThrow()).isCloseTo(10 + 158 / 7.0, Offset.offset(0.001));
    }

    /** Without a worst case the last reading counts for the gap, then the life ends. */
    @Test
    void withoutAWorstCaseTheFutureLastsAsLongAsTheLastReadingHolds() {
        Answer answer =
                level3().nothingDeclared().logged("bench", 0, 10, 28, 40).answer(11);

        assertThat(answer.verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(Told.endsAt(answer)).contains(12.0);
    }

    /** What was read after the moment asked about does not count for what was. */
    @Test
    void readingsLaterThanTheMomentAreIgnored() {
        Answer answer = level3().logged("bench", 0, 5, 25, 50)
                .read("bench", 5.5, 30, 90)
                .answer(5);

        assertThat(Told.used(answer)).isCloseTo(5, EXACT);
        assertThat(Told.endsAt(answer)).contains(168.0);
    }

    /** A worst case of at most 30/60 counts as known, so the short column is possible without any logger. */
    @ParameterizedTest
    @CsvSource({"30, 60, WITHIN_72H", "30, 61, OVER_72H", "31, 60, OVER_72H"})
    void aDeclaredWorstCaseOfAtMost3060CountsAsKnown(double celsius, double percent, Answer.Column column) {
        Answer answer = level3().air(celsius, percent).answer(2);

        assertThat(answer.bakeColumn()).contains(column);
    }

    /** An event without a zone leaves the part where it last was on the floor. */
    @Test
    void withoutAZoneThePartStandsWhereItLastWasOnTheFloor() {
        Answer baked = level3().bake(10, 20, 125, 9)
                .air(30, 70)
                .logged("bench", 0, 30, 25, 50)
                .answer(30);

        assertThat(Told.used(baked)).isCloseTo(10, EXACT);
        assertThat(baked.trail().get(0).zone()).isEqualTo(Optional.of(Story.BENCH.orElseThrow()));
    }

    /** Never on a floor before: the site's worst case. */
    @Test
    void withoutAnyFloorBeforeTheWorstCaseCounts() {
        Answer answer = Story.of(PartUnderTest.level("3"))
                .sealed(0)
                .event(new bagclock.core.exposure.Event.Opened(
                        Story.at(1),
                        Optional.of(Story.DRY_CARD),
                        Optional.empty(),
                        Optional.of(true),
                        Optional.empty()))
                .air(30, 70)
                .logged("bench", 0, 5, 25, 50)
                .answer(3);

        assertThat(Told.used(answer)).isCloseTo(14, EXACT);
    }
}
