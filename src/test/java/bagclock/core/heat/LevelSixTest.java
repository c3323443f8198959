package bagclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.exposure.ClockState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Level 6: J-STD-020, mandatory bake before use, time on the label (S1). */
class LevelSixTest {
    private static PartUnderTest ruled() {
        return PartUnderTest.level("6").makersBake(70, 48).useWithin(6);
    }

    @Test
    void level6MustBeBakedBeforeEachUse() {
        Answer answer = Story.of(ruled()).opened(0).answer(1);

        assertThat(answer.verdict()).isEqualTo(Verdict.BAKE);
        assertThat(Told.because(answer)).isEqualTo(FindingCode.LEVEL_6_BAKE_FIRST);
        assertThat(answer.clock()).isEqualTo(ClockState.NONE);
        assertThat(Told.total(answer)).isEmpty();
        assertThat(Told.bakeHours(answer, 70)).contains(48.0);
    }

    @Test
    void withoutTheMakersRuleItIsAHold() {
        Answer answer =
                Story.of(PartUnderTest.level("6").useWithin(6)).opened(0).answer(1);

        assertThat(answer.verdict()).isEqualTo(Verdict.HOLD);
        assertThat(answer.next()).contains(StepCode.ENTER_MAKERS_BAKE);
        assertThat(answer.bakes()).isEmpty();
    }

    @Test
    void withoutALabelTimeItIsAHold() {
        Answer answer = Story.of(PartUnderTest.level("6").makersBake(70, 48))
                .opened(0)
                .bake(1, 49, 70, 48)
                .answer(50);

        assertThat(answer.verdict()).isEqualTo(Verdict.HOLD);
        assertThat(answer.next()).contains(StepCode.ENTER_LABEL_TIME);
    }

    /** The label's hours run from the end of the bake; neither bag nor cabinet stops them. */
    @ParameterizedTest
    @CsvSource({"55, CLEAR", "55.001, BAKE"})
    void theLabelTimeRunsFromTheEndOfTheBakeAndNothingStopsIt(double hour, Verdict expected) {
        Answer answer = Story.of(ruled())
                .opened(0)
                .bake(1, 49, 70, 48)
                .stored(49, 1)
                .toFloor(54)
                .answer(hour);

        assertThat(answer.verdict()).isEqualTo(expected);
        assertThat(Told.total(answer)).contains(6.0);
        assertThat(answer.clock()).isEqualTo(ClockState.RUNNING);
        assertThat(Told.endsAt(answer)).contains(55.0);
    }

    @Test
    void aShorterBakeIsNone() {
        assertThat(Story.of(ruled()).opened(0).bake(1, 49, 70, 47.9).answer(49).verdict())
                .isEqualTo(Verdict.BAKE);
    }

    @Test
    void theWholeHeatMustLieInsideTheLabelTime() {
        Story story = Story.of(ruled()).opened(0).bake(1, 49, 70, 48);

        assertThat(story.place(54, 60).verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(Told.until(story.place(54, 60))).contains(55.0);
        assertThat(story.place(54, 61).verdict()).isEqualTo(Verdict.BAKE);
    }

    /** Inference: above 30/60 after the bake, or unknown exposure, or a wetting: bake again. */
    @Test
    void afterDampAirOrUnknownExposureItIsBakedAgain() {
        Story damp = Story.of(ruled()).opened(0).bake(1, 49, 70, 48).air(25, 61);
        assertThat(damp.answer(49).verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(Told.because(damp.answer(50))).isEqualTo(FindingCode.LEVEL_6_ABOVE_30_60);

        Story unknown = Story.of(ruled()).opened(0).bake(1, 49, 70, 48).unknown(50);
        assertThat(unknown.answer(51).verdict()).isEqualTo(Verdict.BAKE);
        assertThat(Told.total(unknown.answer(51))).isEmpty();
        Story wet = Story.of(ruled()).opened(0).bake(1, 49, 70, 48).wetted(50);
        assertThat(Told.because(wet.answer(51))).isEqualTo(FindingCode.PART_WETTED);
        assertThat(wet.bake(52, 100, 70, 48).answer(101).verdict()).isEqualTo(Verdict.CLEAR);
    }

    /** Inference: where the air will be above 30/60, the time ends before that. */
    @Test
    void dampAirToComeEndsTheLabelTimeEarlier() {
        Story story = Story.of(ruled()).opened(0).bake(1, 49, 70, 48).air(25, 61);
        assertThat(Told.until(story.place(49, 0))).contains(49.0);
        assertThat(story.place(49, 1).verdict()).isEqualTo(Verdict.BAKE);
        assertThat(Told.endsAt(story.answer(51))).contains(49.0);

        Story logged = Story.of(ruled())
                .opened(0)
                .bake(1, 49, 70, 48)
                .nothingDeclared()
                .logged("bench", 49, 50, 25, 50);
        assertThat(Told.until(logged.answer(50))).contains(52.0);
    }

    /** Each heat above 200 C uses the bake up, at 200 C or below not. */
    @ParameterizedTest
    @CsvSource({"200, CLEAR", "200.1, BAKE"})
    void aHeatAbove200UsesTheBakeUp(double peak, Verdict expected) {
        Answer answer =
                Story.of(ruled()).opened(0).bake(1, 49, 70, 48).heated(50, peak).answer(51);

        assertThat(answer.verdict()).isEqualTo(expected);
    }

    @Test
    void inTheOvenLevel6Waits() {
        Answer answer = Story.of(ruled()).opened(0).inOven(1, 70).answer(5);

        assertThat(answer.verdict()).isEqualTo(Verdict.WAIT);
        assertThat(Told.until(answer)).contains(49.0);
    }

    /** The label's time that is over says when it was, the damp air before it too. */
    @Test
    void itsEndIsTheFirstOfLabelTimeAndDampAir() {
        Story over = Story.of(ruled()).opened(0).bake(1, 49, 70, 48);
        assertThat(Told.endsAt(over.answer(60))).contains(55.0);

        Story damp = Story.of(ruled())
                .read("shed", 50, 25, 70)
                .opened(0)
                .bake(1, 49, 70, 48)
                .toZone(51, "shed");
        assertThat(Told.endsAt(damp.answer(60))).contains(51.0);
        Story later = Story.of(ruled())
                .read("shed", 50, 25, 70)
                .opened(0)
                .bake(1, 49, 70, 48)
                .toZone(57, "shed");
        assertThat(Told.endsAt(later.answer(60))).contains(55.0);
    }
}
