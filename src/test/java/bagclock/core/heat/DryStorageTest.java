package bagclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.exposure.ClockState;
import bagclock.core.exposure.Event;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.core.standard.BodyKind;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bags and declared cabinets: J-STD-033D, table 4-3 (S29, S37 in part; the rest from memory). */
class DryStorageTest {
    private static final Offset<Double> EXACT = Offset.offset(1e-6);

    /** Levels 2, 2a, 3 pause in a cabinet at or below 10 %RH or in a dry pack (S29). */
    @ParameterizedTest
    @CsvSource({"2, 5", "2a, 10", "3, 10", "3, 5"})
    void levels2To3PauseInDryStorage(String level, double percent) {
        Answer answer = Story.of(PartUnderTest.level(level))
                .opened(0)
                .stored(20, percent)
                .answer(500);

        assertThat(Told.used(answer)).isCloseTo(20, EXACT);
        assertThat(answer.clock()).isEqualTo(ClockState.PAUSED);
        assertThat(Told.endsAt(answer)).isEmpty();
        assertThat(answer.until()).isEmpty();
        assertThat(answer.has(FindingCode.NOT_LOGGED)).isTrue();
    }

    @Test
    void levels2To3PauseInADryPackOfOurOwn() {
        Answer answer = Story.of(PartUnderTest.level("3"))
                .opened(0)
                .resealed(20)
                .opened(500)
                .answer(510);

        assertThat(Told.used(answer)).isCloseTo(30, EXACT);
    }

    /** A fresh bag is sealed only around contents that were dry or are reset; else it pauses, or runs for 4 to 5a. */
    @ParameterizedTest
    @CsvSource({"3, 20, 100, PAUSED", "4, 20, 60, RUNNING", "3, 2, 5, RESTING", "3, 2, 12, SEALED", "5a, 2, 22, SEALED"
    })
    void theClockInAFreshBagOfOurOwn(String level, double exposure, double hour, ClockState clock) {
        Answer answer = Story.of(PartUnderTest.level(level))
                .opened(0)
                .resealed(exposure)
                .answer(hour);

        assertThat(answer.clock()).isEqualTo(clock);
    }

    /** Above 10 %RH it is no dry storage; nor with a humidity not known; nor a bag without fresh desiccant and card. */
    @ParameterizedTest
    @CsvSource({"10.1, 40", "50, 40"})
    void above10PercentItIsFloorTime(double percent, double used) {
        Answer answer =
                Story.of(PartUnderTest.level("3")).opened(0).stored(20, percent).answer(40);

        assertThat(Told.used(answer)).isCloseTo(used, EXACT);
        assertThat(answer.clock()).isEqualTo(ClockState.RUNNING);
    }

    @Test
    void storageOfUnknownHumidityIsFloorTime() {
        Answer answer = Story.of(PartUnderTest.level("3"))
                .opened(0)
                .event(new Event.ToDryStorage(Story.at(20), Optional.empty(), Optional.empty()))
                .answer(40);

        assertThat(Told.used(answer)).isCloseTo(40, EXACT);
    }

    @ParameterizedTest
    @CsvSource({"true, false", "false, true", "false, false"})
    void aBagWithoutFreshDesiccantAndCardIsFloorTime(boolean desiccant, boolean card) {
        Answer answer = Story.of(PartUnderTest.level("3"))
                .opened(0)
                .event(new Event.Resealed(Story.at(20), desiccant, card))
                .answer(40);

        assertThat(Told.used(answer)).isCloseTo(40, EXACT);
        assertThat(answer.clock()).isEqualTo(ClockState.RUNNING);
        assertThat(answer.has(FindingCode.BAG_SEALED)).isTrue();
    }

    /** S37: up to 12 h at 30/60 are reset by 5 times as long at or below 10 %RH; not a millisecond earlier. */
    @ParameterizedTest
    @CsvSource({
        "3, 10, 10, 60, 0, PAUSED",
        "3, 10, 10, 59.999, 10, RESTING",
        "3, 12, 10, 72, 0, PAUSED",
        "3, 12.001, 10, 100, 12.001, PAUSED",
        "2a, 1, 10, 6, 0, PAUSED",
        "5a, 6, 5, 66, 0, PAUSED",
        "4, 8, 5, 88, 0, PAUSED",
        "4, 8, 5, 71, 71, RESTING",
        "4, 8.001, 5, 71, 71, RUNNING",
        "4, 8, 10, 71, 71, RUNNING"
    })
    void aShortExposureIsResetByALongEnoughRest(
            String level, double exposure, double percent, double hour, double used, ClockState clock) {
        Answer answer = Story.of(PartUnderTest.level(level))
                .opened(0)
                .stored(exposure, percent)
                .answer(hour);

        assertThat(Told.used(answer)).isCloseTo(used, EXACT);
        assertThat(answer.clock()).isEqualTo(clock);
    }

    /** A dry pack does for the rest too; the exposure is the sum over visits. */
    @Test
    void theExposureIsTheSumOverVisits() {
        Story story = Story.of(PartUnderTest.level("3"))
                .opened(0)
                .stored(2, 5)
                .toFloor(3)
                .stored(6, 5);

        assertThat(Told.used(story.answer(30.999))).isCloseTo(5, EXACT);
        assertThat(Told.used(story.answer(31))).isZero();
        Story bag = Story.of(PartUnderTest.level("3")).opened(0).resealed(2);
        assertThat(Told.used(bag.answer(12))).isZero();
        assertThat(bag.answer(12).clock()).isEqualTo(ClockState.SEALED);
    }

    /** Exposure above 30/60 is not reset. */
    @Test
    void anExposureAbove3060IsNotReset() {
        Answer answer = Story.of(PartUnderTest.level("3"))
                .opened(0)
                .air(25, 61)
                .stored(1, 5)
                .answer(100);

        assertThat(Told.used(answer)).isCloseTo(3.5, EXACT);
    }

    /** Unbroken: one place, no event in between. */
    @Test
    void anyEventBreaksARest() {
        Story story = Story.of(PartUnderTest.level("3")).opened(0).stored(2, 5).into(8, 125);

        assertThat(Told.used(story.answer(17.9))).isCloseTo(2, EXACT);
        assertThat(Told.used(story.answer(18))).isZero();
    }

    /** A rest resets only a part that was inside its life when the rest began. */
    @Test
    void aRestDoesNotRestoreALifeThatWasOut() {
        Answer answer = Story.of(PartUnderTest.level("3").makersLife(4))
                .opened(0)
                .stored(5, 5)
                .answer(500);

        assertThat(Told.used(answer)).isCloseTo(5, EXACT);
        assertThat(answer.verdict()).isEqualTo(Verdict.BAKE);
        assertThat(answer.clock()).isEqualTo(ClockState.PAUSED);
    }

    /** No pause row for levels 4, 5 and 5a: their clock runs on at the rate of 30/60 in bag and cabinet alike. */
    @ParameterizedTest
    @CsvSource({"4, 10, 60", "5, 9, 40", "5a, 9, 20"})
    void levels4To5aRunOnOnceExposed(String level, double exposure, double hour) {
        Answer stored = Story.of(PartUnderTest.level(level))
                .opened(0)
                .stored(exposure, 5)
                .answer(hour);
        Answer bagged = Story.of(PartUnderTest.level(level))
                .opened(0)
                .resealed(exposure)
                .answer(hour);

        assertThat(Told.used(stored)).isCloseTo(hour, EXACT);
        assertThat(Told.used(bagged)).isCloseTo(hour, EXACT);
        assertThat(stored.clock()).isEqualTo(ClockState.RUNNING);
    }

    /** At the rate of 30/60 = the own life, whatever the climate before; cabinet hours are no exposure. */
    @Test
    void runningOnIsAtTheOwnLifeAndIsNoExposure() {
        Answer answer = Story.of(PartUnderTest.level("4").makersLife(100))
                .opened(0)
                .stored(10, 5)
                .answer(500);

        assertThat(Told.used(answer)).isCloseTo(500, EXACT);
        assertThat(answer.verdict()).isEqualTo(Verdict.BAKE);
        assertThat(answer.bakeColumn()).contains(Answer.Column.WITHIN_72H);
    }

    /** Time that counts in a cabinet above 30 C is above 30 for the column, above 35 outside. */
    @ParameterizedTest
    @CsvSource({"30, 20, WITHIN_72H", "31, 20, OVER_72H", "36, 72, OVER_72H"})
    void countedTimeInAWarmCabinet(double celsius, double used, Answer.Column column) {
        Answer answer = Story.of(PartUnderTest.level("4"))
                .opened(0)
                .stored(10, 5)
                .logged("bench", 0, 10, 25, 50)
                .air(celsius, 20)
                .answer(20);

        assertThat(Told.used(answer)).isCloseTo(used, EXACT);
        assertThat(answer.bakeColumn()).contains(column);
    }

    /** While a rest that it needs is under way and the life has run out: wait, with its end and the bakes. */
    @Test
    void aPartInANeededRestWaits() {
        Story story = Story.of(PartUnderTest.level("5a")).opened(0).stored(6, 5);

        Answer resting = story.place(40, 10);
        assertThat(resting.verdict()).isEqualTo(Verdict.WAIT);
        assertThat(Told.because(resting)).isEqualTo(FindingCode.DRY_REST);
        assertThat(Told.until(resting)).contains(66.0);
        assertThat(Told.endsAt(resting)).contains(24.0);
        assertThat(Told.allows(resting, 125)).isTrue();
        assertThat(story.place(66, 10).verdict()).isEqualTo(Verdict.CLEAR);
    }

    /** A rest bars a heat only where the life is out at the heat's end. */
    @Test
    void insideItsLifeAPartMayLeaveItsRest() {
        Story story = Story.of(PartUnderTest.level("5a")).opened(0).stored(6, 5);

        assertThat(story.place(23, 60).verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(story.place(23, 61).verdict()).isEqualTo(Verdict.WAIT);
        assertThat(Told.endsAt(story.answer(10))).contains(24.0);
        assertThat(Told.endsAt(Story.of(PartUnderTest.level("4"))
                        .opened(0)
                        .stored(6, 5)
                        .answer(10)))
                .isEmpty();
    }

    /** Levels 2 to 3 never wait for a rest. */
    @Test
    void levels2To3NeverWaitForARest() {
        Story story = Story.of(PartUnderTest.level("3").makersLife(4)).opened(0).stored(3.9, 5);

        assertThat(story.place(5, 10).verdict()).isEqualTo(Verdict.BAKE);
    }

    /** Time in a rest broken off is no exposure, but the clock of levels 4 to 5a ran on. */
    @Test
    void aBrokenRestCountsForTheClockAlone() {
        Story story = Story.of(PartUnderTest.level("4"))
                .opened(0)
                .stored(6, 5)
                .toFloor(36)
                .stored(38, 5);

        assertThat(Told.used(story.answer(38))).isCloseTo(38, EXACT);
        assertThat(Told.used(story.answer(117.9))).isGreaterThan(100);
        assertThat(Told.used(story.answer(118))).isZero();
    }

    /** Never exposed levels 4 to 5a at 5 to 10 %RH: the 10 % cell, longer than the life or not; exposed from then on. */
    @Test
    void neverExposedLevel4At10PercentCountsAtTheCell() {
        PartUnderTest thick = PartUnderTest.level("4").body(BodyKind.ARRAY, "1.2");
        Story story = Story.of(thick).sealed(0).opened(10).stored(10, 10).air(30, 50);

        assertThat(Told.used(story.answer(70))).isCloseTo(60 * 72 / 120.0, EXACT);
        assertThat(Told.endsAt(story.answer(70))).contains(130.0);
        Answer after = story.stored(70, 5).answer(80);
        assertThat(Told.used(after)).isCloseTo(60 * 72 / 120.0 + 10, EXACT);
    }

    /** The temperature of such a stay not known: 35 C. */
    @Test
    void aStayOfUnknownTemperatureCountsAt35() {
        Answer answer = Story.of(PartUnderTest.level("4").body(BodyKind.ARRAY, "1.2"))
                .toFloor(0)
                .stored(0, 10)
                .nothingDeclared()
                .answer(36);

        assertThat(Told.used(answer)).isCloseTo(36, EXACT);
    }

    /** From its end on the part is exposed, also where nothing was used. */
    @Test
    void anUnlimitedStayStillExposes() {
        Story story = Story.of(PartUnderTest.level("4")).toFloor(0).stored(0, 10);
        assertThat(Told.used(story.answer(100))).isZero();

        Answer answer = story.stored(100, 5).answer(110);
        assertThat(Told.used(answer)).isCloseTo(10, EXACT);
    }

    /** A maker's table without such a cell: 7-1's, no longer than the maker's life. */
    @ParameterizedTest
    @CsvSource({"90, 90", "400, 120"})
    void withoutAMakersCellTheTablesCountsUpToTheMakersLife(double makerHours, double lifeHours) {
        Answer answer = Story.of(PartUnderTest.level("4")
                        .body(BodyKind.ARRAY, "1.2")
                        .makersTable(20, 60, 1000)
                        .makersLife(makerHours))
                .toFloor(0)
                .stored(0, 10)
                .air(30, 50)
                .answer(10);

        double total = Told.total(answer).orElseThrow();
        assertThat(Told.used(answer)).isCloseTo(10 * total / Math.min(lifeHours, total), EXACT);
    }

    /** Levels 2 to 3 at 5 to 10 %RH: no longer than the 10 % cell in all; then bake, long column. */
    @Test
    void aPauseAt10PercentLastsNoLongerThanItsCell() {
        Story story = Story.of(PartUnderTest.level("2")).opened(0).stored(20, 10);

        assertThat(story.answer(20 + 8760).verdict()).isEqualTo(Verdict.CLEAR);
        Answer late = story.answer(20 + 8760.01);
        assertThat(late.verdict()).isEqualTo(Verdict.BAKE);
        assertThat(Told.because(late)).isEqualTo(FindingCode.DRY_STORAGE_TOO_LONG);
        assertThat(late.bakeColumn()).contains(Answer.Column.OVER_72H);
        assertThat(Story.of(PartUnderTest.level("2"))
                        .opened(0)
                        .stored(20, 5)
                        .answer(30_000)
                        .verdict())
                .isEqualTo(Verdict.CLEAR);
        assertThat(Story.of(PartUnderTest.level("3"))
                        .opened(0)
                        .stored(20, 10)
                        .answer(30_000)
                        .verdict())
                .isEqualTo(Verdict.CLEAR);
    }

    /** At or below 5 %RH and in a dry pack a dry part stays dry. */
    @ParameterizedTest
    @CsvSource({"3", "5a"})
    void aDryPartStaysDry(String level) {
        Story story = Story.of(PartUnderTest.level(level)).toFloor(0).stored(0, 5);

        assertThat(Told.used(story.answer(2000))).isZero();
        assertThat(story.answer(2000).clock()).isEqualTo(ClockState.PAUSED);
    }

    /** Heat takes the part out of dry storage, and its minutes there count at the rate of 30/60. */
    @Test
    void aHeatTakesThePartOutOfDryStorage() {
        Story story =
                Story.of(PartUnderTest.level("3").makersLife(20)).opened(0).stored(19, 5);
        assertThat(story.place(100, 60).verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(story.place(100, 61).verdict()).isEqualTo(Verdict.BAKE);

        assertThat(Told.used(story.heated(100, 245).answer(100.5))).isCloseTo(19.5, EXACT);
    }

    /** What the clock does right after an event, before any time has passed. */
    @ParameterizedTest
    @CsvSource({"3, 20, 10, PAUSED", "3, 6, 10, RESTING", "5a, 6, 5, RESTING", "5a, 9, 5, RUNNING", "4, 6, 10, RUNNING"
    })
    void theClockAtTheMomentOfStoring(String level, double exposure, double percent, ClockState clock) {
        Story story = Story.of(PartUnderTest.level(level)).opened(0).stored(exposure, percent);

        assertThat(story.answer(exposure).clock()).isEqualTo(clock);
    }

    /** Never exposed at 5 to 10 %RH: paused where the cell is unlimited, running where it is not. */
    @ParameterizedTest
    @CsvSource({"leadless, PAUSED", "array, RUNNING"})
    void theClockOfANeverExposedPartAt10Percent(String body, ClockState clock) {
        Story story = Story.of(
                        PartUnderTest.level("4").kind(BodyKind.parse(body).orElseThrow()))
                .toFloor(0)
                .stored(0, 10);

        assertThat(story.answer(0).clock()).isEqualTo(clock);
        assertThat(story.answer(20).clock()).isEqualTo(clock);
    }

    @Test
    void theClassLimitsAre5And10() {
        assertThat(bagclock.core.exposure.Place.CabinetClass.of(new RelativeHumidity(5)))
                .contains(bagclock.core.exposure.Place.CabinetClass.UP_TO_5);
        assertThat(bagclock.core.exposure.Place.CabinetClass.of(new RelativeHumidity(5.01)))
                .contains(bagclock.core.exposure.Place.CabinetClass.UP_TO_10);
        assertThat(bagclock.core.exposure.Place.CabinetClass.of(new RelativeHumidity(10.01)))
                .isEmpty();
    }
}
