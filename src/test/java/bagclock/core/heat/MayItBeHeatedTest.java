package bagclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.heat.HeatPlan.Purpose;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** May it be heated? J-STD-033D, rework at or below 200 C; J-STD-020, peaks and passes (S9, S45). */
class MayItBeHeatedTest {
    private static Story fresh(PartUnderTest part) {
        return Story.of(part).opened(0);
    }

    private static Story expired() {
        return Story.of(PartUnderTest.level("3")).opened(0);
    }

    private static Answer heat(Story story, double hour, Purpose purpose, Boolean local, double peak) {
        return story.heat(hour, Optional.of(purpose), Optional.ofNullable(local), 10, Optional.of(peak));
    }

    /** The heat must lie inside the floor life with its end; exactly at its end is inside. */
    @ParameterizedTest
    @CsvSource({"60, CLEAR", "60.001, BAKE"})
    void theHeatMustEndInsideTheFloorLife(double minutes, Verdict expected) {
        Answer answer = fresh(PartUnderTest.level("3")).place(167, minutes);

        assertThat(answer.verdict()).isEqualTo(expected);
        assertThat(Told.used(answer)).isEqualTo(167.0);
        assertThat(answer.has(FindingCode.HEAT_ENDS_TOO_LATE)).isEqualTo(expected == Verdict.BAKE);
    }

    /** Floor life, clock, column, bakes and trail are those at the start of the heat. */
    @Test
    void theNumbersAreThoseAtTheStartOfTheHeat() {
        Answer answer = fresh(PartUnderTest.level("3")).place(160, 600);

        assertThat(answer.verdict()).isEqualTo(Verdict.BAKE);
        assertThat(Told.left(answer)).contains(8.0);
        assertThat(answer.bakeColumn()).contains(Answer.Column.WITHIN_72H);
        assertThat(answer.trail().get(0).to()).isEqualTo(Story.at(160));
    }

    /** The minutes of the heat are floor time in the part's zone; out of a bag or cabinet at the rate of 30/60. */
    @Test
    void theMinutesOfTheHeatAreFloorTime() {
        Story damp = fresh(PartUnderTest.level("3")).air(30, 70).logged("bench", 0, 160, 25, 50);
        assertThat(damp.place(160, 68).verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(damp.place(160, 69).verdict()).isEqualTo(Verdict.BAKE);

        Story cabinet = fresh(PartUnderTest.level("3").makersLife(20))
                .logged("bench", 0, 10, 25, 50)
                .air(30, 70)
                .stored(10, 10);
        assertThat(cabinet.place(40, 600).verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(cabinet.place(40, 601).verdict()).isEqualTo(Verdict.BAKE);
    }

    /** S9, S45: local heat that keeps the body at or below 200 C: moisture is no bar; above it is. */
    @ParameterizedTest
    @CsvSource({
        "REMOVAL_REUSE, , 200, CLEAR",
        "REMOVAL_REUSE, , 200.1, BAKE",
        "REMOVAL_REUSE, false, 200, CLEAR",
        "PLACEMENT, true, 200, CLEAR",
        "PLACEMENT, true, 200.1, BAKE",
        "PLACEMENT, false, 200, BAKE",
        "PLACEMENT, , 200, BAKE",
        "WHOLE_BOARD, true, 200, BAKE",
        "REMOVAL_SCRAP, , 300, CLEAR"
    })
    void localHeatUpTo200IsNoBarForAnExpiredPart(Purpose purpose, Boolean local, double peak, Verdict expected) {
        Answer answer = heat(expired(), 500, purpose, local, peak);

        assertThat(answer.verdict()).isEqualTo(expected);
        if (expected == Verdict.CLEAR) {
            assertThat(answer.until()).isEmpty();
        }
    }

    /** It is said, with a note to measure; and for scrap, that the neighbours are not part of the answer. */
    @Test
    void theReasonIsSaid() {
        assertThat(Told.because(heat(expired(), 500, Purpose.REMOVAL_REUSE, null, 190)))
                .isEqualTo(FindingCode.BODY_STAYS_AT_200);
        assertThat(Told.because(heat(expired(), 500, Purpose.REMOVAL_SCRAP, null, 250)))
                .isEqualTo(FindingCode.PART_IS_SCRAPPED);
        assertThat(Told.because(heat(expired(), 1, Purpose.PLACEMENT, null, 245)))
                .isEqualTo(FindingCode.INSIDE_FLOOR_LIFE);
    }

    /** Removal to scrap: level, rating and passes of the old part do not count; a closed bag and an oven do. */
    @Test
    void aScrappedPartsOwnLimitsDoNotCount() {
        PartUnderTest part = PartUnderTest.levelUnknown().maxPasses(0);
        assertThat(heat(Story.of(part).unknown(0), 1, Purpose.REMOVAL_SCRAP, null, 400)
                        .verdict())
                .isEqualTo(Verdict.CLEAR);
        assertThat(heat(Story.of(part).sealed(0), 1, Purpose.REMOVAL_SCRAP, null, 400)
                        .verdict())
                .isEqualTo(Verdict.HOLD);
    }

    /** Local heat at or below 200 C: an unknown level, a peak above the rating still bar; passes do not. */
    @Test
    void localHeatUpTo200StillNeedsLevelAndRating() {
        assertThat(heat(Story.of(PartUnderTest.levelUnknown()).opened(0), 1, Purpose.REMOVAL_REUSE, null, 190)
                        .verdict())
                .isEqualTo(Verdict.HOLD);
        assertThat(heat(fresh(PartUnderTest.rated("3", 180)), 1, Purpose.REMOVAL_REUSE, null, 190)
                        .verdict())
                .isEqualTo(Verdict.HOLD);
        assertThat(heat(fresh(PartUnderTest.level("3").maxPasses(0)), 1, Purpose.REMOVAL_REUSE, null, 190)
                        .verdict())
                .isEqualTo(Verdict.CLEAR);
    }

    /** J-STD-020: three passes unless the maker says otherwise; a heat is allowed while fewer have been. */
    @ParameterizedTest
    @CsvSource({"0, 3, CLEAR", "2, 3, CLEAR", "3, 3, HOLD", "0, 0, HOLD", "4, 5, CLEAR"})
    void aHeatIsAllowedWhilePassesAreLeft(int before, int limit, Verdict expected) {
        PartUnderTest part = PartUnderTest.level("3").before(0, 0, before).maxPasses(limit);

        assertThat(fresh(part).place(1, 5).verdict()).isEqualTo(expected);
        assertThat(fresh(part).answer(1).verdict()).isEqualTo(expected);
    }

    /** Each heat above 200 C body temperature is a pass, exactly 200 C is none, an unknown peak is one. */
    @ParameterizedTest
    @CsvSource({"200, CLEAR", "200.1, HOLD"})
    void everyHeatAbove200IsAPass(double peak, Verdict expected) {
        Story story = fresh(PartUnderTest.level("3").maxPasses(1)).heated(1, peak);

        assertThat(story.place(2, 5).verdict()).isEqualTo(expected);
    }

    @Test
    void aPastHeatOfUnknownPeakIsAPass() {
        Story story = fresh(PartUnderTest.level("3").maxPasses(1))
                .event(new bagclock.core.exposure.Event.Heated(Story.at(1), Optional.empty()));

        assertThat(story.place(2, 5).verdict()).isEqualTo(Verdict.HOLD);
    }

    /** A heat of 200 C or less needs no pass, local or not. */
    @Test
    void aHeatOf200OrLessNeedsNoPass() {
        Story story = fresh(PartUnderTest.level("3").maxPasses(0));

        assertThat(heat(story, 1, Purpose.WHOLE_BOARD, null, 200).verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(heat(story, 1, Purpose.WHOLE_BOARD, null, 201).verdict()).isEqualTo(Verdict.HOLD);
    }

    /** S29: heat never resets a clock; it follows the part onto the board and off again. */
    @Test
    void theClockFollowsThePartOntoTheBoardAndOff() {
        Story story = fresh(PartUnderTest.level("3"))
                .mounted(10)
                .heated(11, 245)
                .removed(50)
                .into(50, 125);

        assertThat(Told.used(story.answer(60))).isEqualTo(60.0);
    }

    /** Unknown purpose: the part counts; unknown peak: above 200 C and the rated peak; local unknown: not local. */
    @Test
    void whatIsUnknownOfThePlanCountsAgainstIt() {
        Story story = expired();

        assertThat(story.heat(500, Optional.empty(), Optional.of(true), 5, Optional.of(190.0))
                        .verdict())
                .isEqualTo(Verdict.BAKE);
        assertThat(story.heat(500, Optional.of(Purpose.REMOVAL_REUSE), Optional.empty(), 5, Optional.empty())
                        .verdict())
                .isEqualTo(Verdict.BAKE);
        Answer passes = fresh(PartUnderTest.level("3").maxPasses(0))
                .heat(1, Optional.of(Purpose.PLACEMENT), Optional.of(true), 5, Optional.empty());
        assertThat(passes.verdict()).isEqualTo(Verdict.HOLD);
    }

    /** A purpose other than scrap: the part counts. */
    @ParameterizedTest
    @EnumSource(value = Purpose.class, names = "REMOVAL_SCRAP", mode = EnumSource.Mode.EXCLUDE)
    void forEveryOtherPurposeThePartCounts(Purpose purpose) {
        assertThat(heat(expired(), 500, purpose, null, 245).verdict()).isEqualTo(Verdict.BAKE);
    }

    /** Without a heat the answer is for one pass of no length to the rating's peak, now. */
    @Test
    void withoutAHeatItIsOnePassOfNoLengthNow() {
        Answer exactly = fresh(PartUnderTest.level("3")).answer(168);

        assertThat(exactly.verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(Told.until(exactly)).contains(168.0);
    }

    /** Past its life: remaining 0, endsAt the past moment at which it ran out, used beyond the total. */
    @Test
    void pastItsLifeThePastEndIsSaid() {
        Answer answer = expired().answer(500);

        assertThat(Told.left(answer)).contains(0.0);
        assertThat(Told.endsAt(answer)).contains(168.0);
        assertThat(Told.used(answer)).isEqualTo(500.0);
        assertThat(answer.until()).isEmpty();
    }

    /** endsAt rounds down to the second. */
    @Test
    void endsAtRoundsDownToTheSecond() {
        Answer answer = Story.of(PartUnderTest.level("3")).toFloor(0.9 / 3600).answer(1);

        assertThat(answer.floorLife().endsAt()).contains(Story.at(168));
    }
}
