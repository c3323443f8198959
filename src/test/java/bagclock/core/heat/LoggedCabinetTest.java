package bagclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.exposure.ClockState;
import bagclock.core.exposure.Zone;
import bagclock.core.standard.BodyKind;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Cabinets with a logger: J-STD-033D allows a recovery within one hour (memory); how its length is measured is the
 * project's own reading (inference).
 */
class LoggedCabinetTest {
    private static final Offset<Double> EXACT = Offset.offset(1e-6);

    /** Readings each quarter hour from hour 0 to 100, one excursion from its first reading to the next inside. */
    private static Story logged(PartUnderTest part, double percent, double from, double to, double excursionPercent) {
        Story story = Story.of(part);
        for (int i = 0; i <= 400; i++) {
            double hour = i * 0.25;
            story.read("cabinet", hour, 25, hour >= from && hour < to ? excursionPercent : percent);
        }
        return story;
    }

    /** At most one hour, from the first reading above the class to the next inside it, is the recovery. */
    @ParameterizedTest
    @CsvSource({"21, 2", "21.25, 3.25"})
    void anExcursionOfOneHourIsTheRecoveryAndALongerOneFloorTimeFromItsBeginning(double end, double used) {
        Story story = logged(PartUnderTest.level("3"), 4, 20, end, 45).opened(0).storedLogged(2, 5);

        assertThat(Told.used(story.answer(10))).isCloseTo(2, EXACT);
        assertThat(Told.used(story.answer(11.99))).isCloseTo(2, EXACT);
        assertThat(Told.used(story.answer(12))).isZero();
        Story late = logged(PartUnderTest.level("3"), 4, 20, end, 45).opened(0).storedLogged(18.0 - 5, 5);
        assertThat(Told.used(late.answer(30))).isCloseTo(used - 2 + 13, EXACT);
    }

    /** Floor time at what was read, temperature too. */
    @Test
    void aLongExcursionCountsAtWhatWasRead() {
        Answer answer = logged(PartUnderTest.level("3"), 4, 20, 22, 65)
                .opened(0)
                .storedLogged(15, 5)
                .answer(30);

        assertThat(Told.used(answer)).isCloseTo(15 + 2 * 3.5, EXACT);
        assertThat(answer.bakeColumn()).contains(Answer.Column.OVER_72H);
        assertThat(answer.trail().get(answer.trail().size() - 1).zone()).contains(new Zone("cabinet"));
    }

    /** A cabinet of up to 5 read between 5 and 10 for longer is a 5-to-10 stay: levels 2 to 3 rest on, levels 4 to 5a do not. */
    @Test
    void aSpellAt5To10IsAStayOfTheWetterClass() {
        Story three = logged(PartUnderTest.level("3"), 4, 20, 22, 8).opened(0).storedLogged(12, 5);
        assertThat(Told.used(three.answer(72))).isZero();

        Story four = logged(PartUnderTest.level("4"), 4, 20, 22, 8).opened(0).storedLogged(7, 5);
        assertThat(Told.used(four.answer(80))).isCloseTo(80, EXACT);
        assertThat(Told.used(four.answer(92))).isZero();
    }

    /** What was read above 10 in a longer excursion of a cabinet of up to 5 is floor time whatever its own length. */
    @Test
    void aboveTenInALongerExcursionIsFloorTime() {
        Story story = Story.of(PartUnderTest.level("3")).opened(0).storedLogged(13, 5);
        for (int i = 0; i <= 200; i++) {
            double hour = i * 0.25;
            story.read("cabinet", hour, 25, hour == 21 ? 30 : hour >= 20 && hour < 22 ? 8 : 4);
        }

        assertThat(Told.used(story.answer(30))).isCloseTo(13.5, EXACT);
    }

    /** Within an hour of any excursion, granted or not, no other is granted. */
    @ParameterizedTest
    @CsvSource({"21.5, 0.25", "21.75, 0"})
    void theRecoveryIsGrantedAgainOnlyAfterAnHourInside(double second, double floor) {
        Story story = Story.of(PartUnderTest.level("3")).opened(0).storedLogged(13, 5);
        for (int i = 0; i <= 200; i++) {
            double hour = i * 0.25;
            boolean out = (hour >= 20 && hour < 20.75) || hour == second;
            story.read("cabinet", hour, 25, out ? 40 : 4);
        }

        assertThat(Told.used(story.answer(30))).isCloseTo(13 + floor, EXACT);
    }

    /** A longer excursion breaks a rest; the rest of the stay is still dry storage. */
    @Test
    void aLongExcursionBreaksARest() {
        Story story = logged(PartUnderTest.level("3"), 4, 20, 22, 45).opened(0).storedLogged(4, 5);

        assertThat(Told.used(story.answer(19.99))).isCloseTo(4, EXACT);
        assertThat(Told.used(story.answer(30))).isCloseTo(6, EXACT);
        Story longer = logged(PartUnderTest.level("3"), 4, 20, 22, 45).opened(0).storedLogged(10, 5);
        assertThat(Told.used(longer.answer(81.9))).isCloseTo(12, EXACT);
        assertThat(Told.used(longer.answer(82))).isZero();
    }

    /** A gap counts at the room's climate from the moment the last reading ceases to hold, and breaks a rest. */
    @Test
    void aGapCountsAtTheRoomsClimateAndBreaksARest() {
        Story story = Story.of(PartUnderTest.level("3"))
                .opened(0)
                .storedLogged(10, 5)
                .air(30, 70)
                .logged("bench", 0, 10, 25, 50)
                .logged("cabinet", 9, 20, 25, 4)
                .logged("cabinet", 22.01, 90, 25, 4);

        assertThat(Told.used(story.answer(21.9))).isCloseTo(10, EXACT);
        assertThat(Told.used(story.answer(80))).isCloseTo(10 + 0.01 * 7, EXACT);
    }

    /** Before the first reading the room's climate counts too. */
    @Test
    void beforeTheFirstReadingTheRoomsClimateCounts() {
        Answer answer = Story.of(PartUnderTest.level("3"))
                .opened(0)
                .storedLogged(13, 5)
                .logged("cabinet", 15, 20, 25, 4)
                .answer(20);

        assertThat(Told.used(answer)).isCloseTo(15, EXACT);
        assertThat(answer.has(FindingCode.NOT_LOGGED)).isFalse();
    }

    /** The class limit judges excursions, not the declared figure. */
    @Test
    void theClassAndNotTheDeclaredFigureJudges() {
        Answer answer = logged(PartUnderTest.level("3"), 9, 20, 30, 9.9)
                .opened(0)
                .storedLogged(13, 6)
                .answer(90);

        assertThat(Told.used(answer)).isCloseTo(13, EXACT);
    }

    /** The future goes on as the last reading where that still holds, else at the room's climate. */
    @Test
    void theFutureGoesOnAsTheLastReadingWhileThatHolds() {
        Story story =
                Story.of(PartUnderTest.level("3")).opened(0).storedLogged(13, 5).logged("cabinet", 12, 20, 25, 4);

        assertThat(Told.endsAt(story.answer(21))).isEmpty();
        assertThat(story.answer(21).clock()).isEqualTo(ClockState.PAUSED);
        assertThat(Told.endsAt(story.answer(23))).contains(22 + 155.0);
    }

    /** An excursion under way goes on, and counts from its beginning once it passes the hour. */
    @Test
    void anExcursionUnderWayCountsFromItsBeginningOnceItPassesTheHour() {
        Story story = Story.of(PartUnderTest.level("3").makersLife(14))
                .opened(0)
                .storedLogged(13.5, 5)
                .logged("cabinet", 12, 19.5, 25, 4)
                .logged("cabinet", 20, 20.5, 25, 40);

        Answer within = story.answer(20.6);
        assertThat(within.verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(Told.used(within)).isCloseTo(13.5, EXACT);
        assertThat(Told.endsAt(within)).contains(21.0);
        assertThat(Told.used(story.answer(21.1))).isCloseTo(13.5 + 1.1, EXACT);
        assertThat(story.answer(21.1).verdict()).isEqualTo(Verdict.BAKE);
    }

    /** Never exposed level 4 at 5 to 10 %RH, read every quarter hour: the stay as a whole counts at the 10 % cell. */
    @Test
    void aLoggedStayAt10PercentCountsAsAWholeAtTheCell() {
        Story story = logged(PartUnderTest.level("4").body(BodyKind.ARRAY, "1.2"), 8, 200, 200, 8)
                .toFloor(0)
                .storedLogged(0, 10);

        assertThat(Told.used(story.answer(60))).isCloseTo(60 * 72 / 144.0, EXACT);
        assertThat(Told.used(story.stored(60, 5).answer(70))).isCloseTo(30 + 10, EXACT);
    }

    /** An excursion already under way when the part comes in is measured from its own first reading. */
    @ParameterizedTest
    @CsvSource({"20.5, 15", "19.75, 14.25"})
    void anExcursionUnderWayWhenThePartComesInIsMeasuredWhole(double comesIn, double usedBefore) {
        Story story = logged(PartUnderTest.level("3"), 4, 19.5, 20.75, 40)
                .toFloor(comesIn - usedBefore)
                .storedLogged(comesIn, 5);

        assertThat(Told.used(story.answer(30))).isCloseTo(usedBefore + 20.75 - comesIn, EXACT);
    }

    /** An excursion that ends after the part left is measured to the next reading inside. */
    @ParameterizedTest
    @CsvSource({"21, 13.5", "21.25, 14"})
    void anExcursionIsMeasuredToTheNextReadingInsideAlsoAfterThePartLeft(double end, double used) {
        Story story = logged(PartUnderTest.level("3"), 4, 20, end, 40)
                .opened(0)
                .storedLogged(13, 5)
                .toFloor(20.5);

        assertThat(Told.used(story.answer(21))).isCloseTo(13.5, EXACT);
        assertThat(Told.used(story.answer(22)) - 1.5 + 0.5).isCloseTo(used, EXACT);
    }

    /** While a longer excursion lasts the clock runs, and rests or pauses before and after it. */
    @Test
    void theClockTellsWhatTheCabinetDoes() {
        Story story = logged(PartUnderTest.level("3"), 4, 20, 22, 40).opened(0).storedLogged(13, 5);

        assertThat(story.answer(13).clock()).isEqualTo(ClockState.PAUSED);
        assertThat(story.answer(15).clock()).isEqualTo(ClockState.PAUSED);
        assertThat(story.answer(21.5).clock()).isEqualTo(ClockState.RUNNING);
        assertThat(story.answer(23).clock()).isEqualTo(ClockState.PAUSED);
    }

    /** Where all counted time was read nothing rests on a declared worst case. */
    @Test
    void whatWasReadRestsOnNothingDeclared() {
        Answer read = Story.of(PartUnderTest.level("3"))
                .opened(0)
                .logged("bench", 0, 10, 25, 50)
                .answer(10);

        assertThat(read.has(FindingCode.AIR_DECLARED)).isFalse();
        assertThat(read.has(FindingCode.AIR_UNKNOWN)).isFalse();
    }
}
