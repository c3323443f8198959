package bagclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.exposure.ClockState;
import bagclock.core.standard.BodyKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Levels and ratings: J-STD-020, level table (S10, S12, S13) and the label's level at each peak. */
class RatingsTest {
    /** J-STD-020, table 5-1 (S10, S12, S13): the life itself is still inside, a millisecond more is not. */
    @ParameterizedTest
    @CsvSource({"2, 8760", "2a, 672", "3, 168", "4, 72", "5, 48", "5a, 24"})
    void eachLevelLastsItsFloorLifeAndNotAMillisecondLonger(String level, double life) {
        Story story = Story.of(PartUnderTest.level(level)).opened(0);

        Answer exactly = story.answer(life);
        assertThat(exactly.verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(Told.total(exactly)).contains(life);
        assertThat(Told.left(exactly)).contains(0.0);
        assertThat(story.answer(life + 1 / 3_600_000.0).verdict()).isEqualTo(Verdict.BAKE);
    }

    /** J-STD-020, level 1: unlimited at or below 30 C / 85 %RH. */
    @Test
    void level1HasNoClock() {
        Answer answer = Story.of(PartUnderTest.level("1")).opened(0).answer(100_000);

        assertThat(answer.verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(Told.total(answer)).isEmpty();
        assertThat(Told.used(answer)).isZero();
        assertThat(answer.clock()).isEqualTo(ClockState.NONE);
        assertThat(answer.bakes()).isEmpty();
    }

    /** Inference from the limit of level 1: a notice above 30 C / 85 %RH, no more. */
    @ParameterizedTest
    @CsvSource({"30, 85, false", "31, 50, true", "25, 86, true"})
    void level1AboveItsAirIsNoticed(double celsius, double percent, boolean noticed) {
        Answer answer = Story.of(PartUnderTest.level("1"))
                .toFloor(0)
                .air(celsius, percent)
                .answer(5);

        assertThat(answer.verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(answer.has(FindingCode.LEVEL_1_ABOVE_30_85)).isEqualTo(noticed);
    }

    /** Inference: 24 h above 85 %RH in all hold a level 1 part, exactly 24 h do not; two visits add up. */
    @ParameterizedTest
    @CsvSource({"12, 12, CLEAR", "12, 12.001, HOLD"})
    void level1IsHeldAfterMoreThan24DampHoursInAll(double first, double second, Verdict expected) {
        Answer answer = Story.of(PartUnderTest.level("1"))
                .toZone(0, "damp")
                .toZone(first, "dry")
                .toZone(100, "damp")
                .toZone(100 + second, "dry")
                .logged("dry", 0, 200, 22, 40)
                .air(25, 90)
                .answer(200);

        assertThat(answer.verdict()).isEqualTo(expected);
    }

    /** Inference: no table row for level 1, so a wetted part waits for a person or for its maker's bake. */
    @Test
    void level1IsHeldAfterAWettingUntilItsMakersBake() {
        Story wet = Story.of(PartUnderTest.level("1").makersBake(100, 10))
                .toFloor(0)
                .wetted(1);
        assertThat(wet.answer(2).verdict()).isEqualTo(Verdict.HOLD);
        assertThat(Told.because(wet.answer(2))).isEqualTo(FindingCode.LEVEL_1_WETTED);

        Answer short1 = wet.bake(3, 12, 100, 9).answer(12);
        assertThat(short1.verdict()).isEqualTo(Verdict.HOLD);
        assertThat(wet.bake(13, 24, 100, 10).answer(24).verdict()).isEqualTo(Verdict.CLEAR);
    }

    /** The label's two lines: the lowest peak that still reaches the planned one counts; a peak equal to it reaches it. */
    @ParameterizedTest
    @CsvSource({"200, 8760", "240, 8760", "240.1, 168", "260, 168"})
    void theLowestRatingThatReachesThePlannedPeakCounts(double peak, double total) {
        Answer answer = Story.of(PartUnderTest.rated("2", 240).andRated("3", 260))
                .opened(0)
                .heat(1, HeatPlan.Purpose.PLACEMENT, 5, peak);

        assertThat(answer.verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(Told.total(answer)).contains(total);
    }

    @Test
    void withoutAHeatTheStrictestLevelCounts() {
        Answer answer = Story.of(PartUnderTest.rated("2", 240).andRated("3", 260))
                .opened(0)
                .answer(1);

        assertThat(Told.total(answer)).contains(168.0);
    }

    /** J-STD-020, classification temperature: never exceeded, whatever the moisture. */
    @Test
    void aPeakAboveEveryRatingIsAHoldWithTheNumbersOfTheStrictest() {
        Answer answer = Story.of(PartUnderTest.rated("2", 240).andRated("3", 260))
                .opened(0)
                .heat(1, HeatPlan.Purpose.PLACEMENT, 5, 260.5);

        assertThat(answer.verdict()).isEqualTo(Verdict.HOLD);
        assertThat(Told.because(answer)).isEqualTo(FindingCode.PEAK_ABOVE_RATING);
        assertThat(Told.total(answer)).contains(168.0);
        assertThat(answer.next()).contains(StepCode.LOWER_THE_PEAK);
    }

    /** The project's own order: highest level, among equals the lowest peak. */
    @Test
    void amongEqualLevelsTheLowestPeakIsTheStrictest() {
        Story story = Story.of(PartUnderTest.rated("3", 260).andRated("3", 240).maxPasses(0))
                .opened(0);

        assertThat(story.answer(1).reasons().get(0).code()).isEqualTo(FindingCode.PASSES_USED_UP);
        assertThat(Told.total(story.answer(1))).contains(168.0);
    }

    /** J-STD-033D, table 4-3: level 3 pauses in the cabinet, level 4 does not; one history, two clocks. */
    @Test
    void theHistoryIsFoldedForEachRatingByItself() {
        Story story = Story.of(PartUnderTest.rated("3", 240).andRated("4", 260))
                .opened(0)
                .stored(20, 5);

        Answer mild = story.heat(100, HeatPlan.Purpose.PLACEMENT, 0, 240);
        assertThat(mild.verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(Told.used(mild)).isEqualTo(20.0);
        Answer hot = story.heat(100, HeatPlan.Purpose.PLACEMENT, 0, 250);
        assertThat(hot.verdict()).isEqualTo(Verdict.BAKE);
        assertThat(Told.used(hot)).isEqualTo(100.0);
    }

    /** J-STD-033D, table 4-1 (S1, S2): 9 h at 125 C dry level 3 and level 4 wants 11 h. */
    @Test
    void aBakeMayDoForOneRatingAndBeTooShortForTheOther() {
        Story story = Story.of(PartUnderTest.rated("3", 240).andRated("4", 260))
                .unknown(0)
                .bake(1, 11, 125, 9);

        assertThat(story.heat(12, HeatPlan.Purpose.PLACEMENT, 0, 240).verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(story.heat(12, HeatPlan.Purpose.PLACEMENT, 0, 250).verdict()).isEqualTo(Verdict.BAKE);
    }

    /** J-STD-020, table 4-2, edition D.1 (P4): thickness and volume; exactly 2.5 mm takes the lower row. */
    @ParameterizedTest
    @CsvSource({
        "1.5, 10, 10, true, 260, 260.1",
        "1.6, 10, 10, true, 260, 260.1",
        "1.6, 20, 20, true, 250, 250.1",
        "1.6, 40, 40, true, 245, 245.1",
        "2.5, 10, 10, true, 250, 250.1",
        "2.8, 30, 30, true, 245, 245.1",
        "1.2, 10, 10, false, 235, 235.1",
        "2.5, 10, 10, false, 220, 220.1"
    })
    void withoutAPeakOnTheLabelTheBodyClassifies(
            String thickness, String length, String width, boolean leadFree, double allowed, double refused) {
        Story story = Story.of(PartUnderTest.withoutRatedPeak("3")
                        .body(BodyKind.LEADED, thickness)
                        .edges(length, width)
                        .leadFree(java.util.Optional.of(leadFree)))
                .opened(0);

        assertThat(story.heat(1, HeatPlan.Purpose.PLACEMENT, 5, allowed).verdict())
                .isEqualTo(Verdict.CLEAR);
        assertThat(story.heat(1, HeatPlan.Purpose.PLACEMENT, 5, refused).verdict())
                .isEqualTo(Verdict.HOLD);
    }
}
