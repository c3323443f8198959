package bagclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.exposure.ClockState;
import bagclock.core.standard.BodyKind;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a bake does: J-STD-033D, table 4-1 and 4-3 (S1, S2, S14); runs off the table by inference. */
class WhatABakeDoesTest {
    private static final Offset<Double> EXACT = Offset.offset(1e-6);

    private static Story unknown(PartUnderTest part) {
        return Story.of(part).unknown(0);
    }

    /** Enough hours at temperature restore the whole life; from the end the part is in open air. */
    @Test
    void enoughHoursAtTemperatureRestoreTheWholeLife() {
        Answer answer = Story.of(PartUnderTest.level("3"))
                .opened(0)
                .bake(200, 208, 125, 7)
                .answer(218);

        assertThat(answer.verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(Told.used(answer)).isCloseTo(10, EXACT);
        assertThat(answer.bakeColumn()).contains(Answer.Column.WITHIN_72H);
    }

    /** The run counts by the highest row at or below it, with that row's humidity. */
    @ParameterizedTest
    @CsvSource({
        "125, -, 9, CLEAR",
        "125, -, 8.999, BAKE",
        "124, 5, 9, BAKE",
        "124, 5, 33, CLEAR",
        "90, 5, 33, CLEAR",
        "90, 5, 32.9, BAKE",
        "90, 5.1, 33, BAKE",
        "90, -, 33, BAKE",
        "110, 5, 33, CLEAR",
        "89, 5, 33, BAKE",
        "89, 5, 312, CLEAR",
        "60, 5, 312, CLEAR",
        "40, 5, 312, CLEAR",
        "40, 5, 311, BAKE",
        "39.9, 5, 312, BAKE",
        "126, -, 96, BAKE"
    })
    void aRunCountsByTheHighestRowAtOrBelowIt(double celsius, String percent, double hours, Verdict expected) {
        Optional<Double> shown = percent.equals("-") ? Optional.empty() : Optional.of(Double.valueOf(percent));
        Answer answer = unknown(PartUnderTest.level("3"))
                .bake(1, 1 + hours, celsius, shown, Optional.of(hours))
                .answer(1 + hours);

        assertThat(answer.verdict()).isEqualTo(expected);
    }

    /** Hours at temperature not known: none for drying. */
    @Test
    void withoutHoursAtTemperatureNothingIsRestored() {
        Answer answer = unknown(PartUnderTest.level("3"))
                .bake(1, 90, 125, Optional.empty(), Optional.empty())
                .answer(91);

        assertThat(answer.verdict()).isEqualTo(Verdict.BAKE);
        assertThat(Told.allows(answer, 125)).isFalse();
    }

    /** Too few: nothing restored, the stay is floor time at the 30/60 rate, and the long column is not forced. */
    @Test
    void aBakeWithoutCreditCountsAsFloorTimeAtTheOwnLife() {
        Answer answer = Story.of(PartUnderTest.level("3"))
                .toFloor(0)
                .air(30, 50)
                .bake(10, 15, 125, 4)
                .answer(20);

        assertThat(Told.used(answer)).isCloseTo(20, EXACT);
        assertThat(answer.bakeColumn()).contains(Answer.Column.WITHIN_72H);
        assertThat(answer.trail()).extracting(entry -> entry.where().code()).containsExactly("floor", "oven", "floor");
    }

    /** Hours of two bakes never add. */
    @Test
    void hoursOfTwoBakesNeverAdd() {
        Answer answer = unknown(PartUnderTest.level("3"))
                .bake(1, 6, 125, 5)
                .bake(6, 11, 125, 5)
                .answer(11);

        assertThat(answer.verdict()).isEqualTo(Verdict.BAKE);
    }

    /** Column and hours needed are those at the start of the bake. */
    @Test
    void theColumnAtTheStartOfTheBakeCounts() {
        Story story = Story.of(PartUnderTest.level("3")).opened(0);

        assertThat(story.bake(239, 247, 125, 7).answer(247).verdict()).isEqualTo(Verdict.CLEAR);
        Story late = Story.of(PartUnderTest.level("3")).opened(0).bake(241, 249, 125, 8);
        assertThat(late.answer(249).verdict()).isEqualTo(Verdict.BAKE);
    }

    /** While in the oven: wait, until start + the hours needed. */
    @Test
    void inTheOvenThePartWaitsUntilItIsDone() {
        Story story = unknown(PartUnderTest.level("3")).inOven(1, 125);

        Answer answer = story.answer(5);
        assertThat(answer.verdict()).isEqualTo(Verdict.WAIT);
        assertThat(answer.clock()).isEqualTo(ClockState.BAKING);
        assertThat(Told.until(answer)).contains(10.0);
        assertThat(Told.because(answer)).isEqualTo(FindingCode.IN_OVEN);
        assertThat(answer.next()).containsExactly(StepCode.WAIT_FOR_OVEN);
        assertThat(Told.endsAt(answer)).isEmpty();
    }

    /** Past the needed time without its end recorded: still wait, until unchanged. */
    @Test
    void pastTheNeededTimeTheEndIsToBeRecorded() {
        Answer answer = unknown(PartUnderTest.level("3")).inOven(1, 125).answer(20);

        assertThat(answer.verdict()).isEqualTo(Verdict.WAIT);
        assertThat(Told.until(answer)).contains(10.0);
        assertThat(answer.next()).containsExactly(StepCode.RECORD_BAKE_END);
    }

    /** A bake that can't count does not mend: bake, with why. */
    @Test
    void aBakeThatCannotCountDoesNotMend() {
        Answer answer = unknown(PartUnderTest.level("3")).inOven(1, 39).answer(5);

        assertThat(answer.verdict()).isEqualTo(Verdict.BAKE);
        assertThat(answer.has(FindingCode.BAKE_CANNOT_COUNT)).isTrue();
    }

    /** A part that needed none waits all the same; until is null where the run can't count. */
    @ParameterizedTest
    @CsvSource({"125, 17", "39, -1"})
    void aPartThatNeededNoBakeWaitsAllTheSame(double celsius, double until) {
        Answer answer =
                Story.of(PartUnderTest.level("3")).opened(0).inOven(10, celsius).answer(12);

        assertThat(answer.verdict()).isEqualTo(Verdict.WAIT);
        assertThat(Told.until(answer)).isEqualTo(until < 0 ? Optional.empty() : Optional.of(until));
    }

    /** The stay in a run that can't count is floor time, so that the part may come to need a bake in the oven. */
    @Test
    void aRunThatCannotCountUsesTheLifeUp() {
        Story story = Story.of(PartUnderTest.level("3")).opened(0).inOven(160, 39);

        assertThat(story.answer(168).verdict()).isEqualTo(Verdict.WAIT);
        assertThat(story.answer(169).verdict()).isEqualTo(Verdict.BAKE);
        assertThat(Told.used(story.answer(169))).isCloseTo(169, EXACT);
        assertThat(Told.endsAt(story.answer(169))).contains(168.0);
    }

    /** Bakes and column in an oven are listed as if the running one ended now without credit. */
    @Test
    void theBakesListedInAnOvenAreThoseAfterARunWithoutCredit() {
        Story story = Story.of(PartUnderTest.level("3")).opened(0).inOven(238, 125);

        assertThat(story.answer(240).bakeColumn()).contains(Answer.Column.WITHIN_72H);
        assertThat(story.answer(241).bakeColumn()).contains(Answer.Column.OVER_72H);
        assertThat(Told.bakeHours(story.answer(241), 125)).contains(9.0);
        assertThat(Told.until(story.answer(241))).contains(245.0);
    }

    /** A bake under way turns 'no bake allowed' into wait; other holds stay. */
    @Test
    void aBakeUnderWayTurnsNoBakeAllowedIntoWaitButNotOtherHolds() {
        PartUnderTest carrier = PartUnderTest.level("3").inCarrierOf(39);
        assertThat(unknown(carrier).inOven(1, 125).answer(5).verdict()).isEqualTo(Verdict.WAIT);

        PartUnderTest passes = PartUnderTest.level("3").maxPasses(0);
        assertThat(unknown(passes).inOven(1, 125).answer(5).verdict()).isEqualTo(Verdict.HOLD);
    }

    /** Level unknown or moisture no bar: the oven bars all the same. */
    @Test
    void theOvenBarsWhateverTheMoisture() {
        Story story = Story.of(PartUnderTest.level("3")).opened(0).inOven(10, 125);
        assertThat(story.heat(12, HeatPlan.Purpose.REMOVAL_SCRAP, 5, 300).verdict())
                .isEqualTo(Verdict.WAIT);
        assertThat(story.heat(12, HeatPlan.Purpose.REMOVAL_REUSE, 5, 190).verdict())
                .isEqualTo(Verdict.WAIT);
        Story level1 = Story.of(PartUnderTest.level("1")).toFloor(0).inOven(1, 125);
        assertThat(level1.answer(2).verdict()).isEqualTo(Verdict.WAIT);
        assertThat(level1.answer(2).clock()).isEqualTo(ClockState.BAKING);
    }

    /** More than 10 C above the hottest bake that the part has: hold until an engineer says (table 4-1 tolerance). */
    @ParameterizedTest
    @CsvSource({"135, false", "135.1, true"})
    void aRunFarAboveTheTableIsAHold(double celsius, boolean hold) {
        Answer answer = Story.of(PartUnderTest.level("3"))
                .toFloor(0)
                .bake(1, 11, celsius, 10)
                .answer(12);

        assertThat(answer.has(FindingCode.BAKED_TOO_HOT)).isEqualTo(hold);
        assertThat(answer.verdict()).isEqualTo(hold ? Verdict.HOLD : Verdict.CLEAR);
    }

    @ParameterizedTest
    @CsvSource({
        "60, false, 70, false",
        "60, false, 70.1, true",
        "60, true, 135, false",
        "130, false, 140, false",
        "130, true, 140.1, true"
    })
    void theHottestBakeIsTheMakersOr125WhereTheTableCounts(double maker, boolean table, double run, boolean hold) {
        PartUnderTest part = PartUnderTest.level("3").makersBake(maker, 24);
        Answer answer = Story.of(table ? part.tableToo() : part)
                .toFloor(0)
                .bake(1, 2, run, 1)
                .answer(3);

        assertThat(answer.has(FindingCode.BAKED_TOO_HOT)).isEqualTo(hold);
    }

    /** A run above the part's own limit counts for drying and is a hold until an engineer says. */
    @Test
    void aRunAboveThePartsOwnLimitDriesAndHolds() {
        Answer answer = unknown(PartUnderTest.level("3").maxBakeC(100))
                .bake(1, 12, 125, 9)
                .answer(12);

        assertThat(answer.verdict()).isEqualTo(Verdict.HOLD);
        assertThat(Told.because(answer)).isEqualTo(FindingCode.PART_LIMIT_PASSED_IN_BAKE);
        assertThat(Told.used(answer)).isZero();
    }

    /** The run counts by the maker's highest entry at or below; the table is no fallback unless he allows it. */
    @ParameterizedTest
    @CsvSource({
        "60, 72, false, CLEAR",
        "60, 71, false, BAKE",
        "70, 72, false, CLEAR",
        "50, 400, false, BAKE",
        "50, 400, true, CLEAR",
        "125, 9, true, CLEAR",
        "124, 72, true, CLEAR",
        "90, 33, true, CLEAR",
        "90, 33, false, HOLD"
    })
    void aRunCountsByTheMakersEntryOrByTheTableWhereHeAllowsIt(
            double celsius, double hours, boolean table, Verdict expected) {
        PartUnderTest part = PartUnderTest.level("3").makersBake(60, 72);
        Answer answer = unknown(table ? part.tableToo() : part)
                .dryBake(1, 1 + hours, celsius, hours)
                .answer(1 + hours);

        assertThat(answer.verdict()).isEqualTo(expected);
    }

    /** The highest maker's entry at or below the run counts, with its own humidity. */
    @Test
    void amongTheMakersEntriesTheHighestAtOrBelowCounts() {
        PartUnderTest part = PartUnderTest.level("3")
                .makersBake(40, 720, Optional.of(5.0), Optional.empty())
                .makersBake(60, 72, Optional.of(5.0), Optional.empty())
                .makersBake(90, 48, Optional.of(5.0), Optional.empty());

        assertThat(unknown(part).dryBake(1, 49, 95, 48).answer(49).verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(unknown(part).bake(1, 49, 95, 48).answer(49).verdict()).isEqualTo(Verdict.BAKE);
        assertThat(unknown(part).dryBake(1, 49, 89, 48).answer(49).verdict()).isEqualTo(Verdict.BAKE);
    }

    /** Above 125 C only by the maker's word. */
    @Test
    void above125CountsOnlyByTheMakersWord() {
        assertThat(unknown(PartUnderTest.level("3").makersBake(130, 6))
                        .bake(1, 8, 130, 6)
                        .answer(8)
                        .verdict())
                .isEqualTo(Verdict.CLEAR);
        assertThat(unknown(PartUnderTest.level("3").makersBake(125, 6))
                        .bake(1, 8, 130, 6)
                        .answer(8)
                        .verdict())
                .isEqualTo(Verdict.BAKE);
    }

    /** Thickness unknown: a table bake counts for nothing; a run in the oven then mends nothing. */
    @Test
    void withoutAThicknessATableBakeCountsForNothing() {
        Answer answer = unknown(PartUnderTest.level("3").thicknessUnknown())
                .bake(1, 60, 125, 50)
                .answer(60);

        assertThat(answer.verdict()).isEqualTo(Verdict.HOLD);
        assertThat(Told.because(answer)).isEqualTo(FindingCode.BODY_NOT_MEASURED);
    }

    /** The use-within time runs from the end of a bake that counted; neither bag, cabinet nor rest stops it. */
    @ParameterizedTest
    @CsvSource({"48, 0, CLEAR", "47.9, 10, BAKE", "48.1, 0, BAKE"})
    void aMakersUseWithinTimeRunsBesideTheFloorLife(double hour, double minutes, Verdict expected) {
        PartUnderTest part = PartUnderTest.level("3").makersBake(120, 24).useWithin(24);
        Story story = unknown(part).bake(0, 24, 120, 24).stored(25, 5).toFloor(47);

        Answer answer = story.place(hour, minutes);
        assertThat(answer.verdict()).isEqualTo(expected);
        assertThat(answer.clock()).isEqualTo(ClockState.RUNNING);
        assertThat(answer.has(FindingCode.USE_WITHIN_PASSED)).isEqualTo(expected == Verdict.BAKE);
        if (expected == Verdict.CLEAR) {
            assertThat(Told.until(answer)).contains(48.0);
        }
    }

    /** Interruption, oven door, heat-up: only hours at temperature are given, and only they dry. */
    @Test
    void onlyTimeAtTemperatureDries() {
        Answer answer = unknown(PartUnderTest.level("3")).bake(0, 30, 125, 8.5).answer(30);

        assertThat(answer.verdict()).isEqualTo(Verdict.BAKE);
    }

    /** Stacked arrays: 96 h use up the whole budget, so that they can be baked hot but once (memory). */
    @Test
    void aLargeArrayCanBeBakedHotOnlyOnce() {
        PartUnderTest part = PartUnderTest.level("3")
                .body(BodyKind.ARRAY, "1.2")
                .edges("20", "20")
                .blocking(Optional.of(true));
        Answer answer = unknown(part).bake(1, 98, 125, 96).unknown(99).answer(100);

        assertThat(Told.allows(answer, 125)).isFalse();
        assertThat(Told.allows(answer, 90)).isTrue();
    }
}
