package bagclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.heat.BoardQuestion.Fate;
import bagclock.core.heat.BoardQuestion.Location;
import bagclock.core.standard.BodyKind;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The bakes of a board: J-STD-033D, table 4-1 and rework clauses (S9), and common practice where named so. */
class BoardBakesTest {
    private static final PartUnderTest LEVEL_3 = PartUnderTest.level("3");

    private static Story expired() {
        return Story.of(LEVEL_3).opened(0).mounted(1);
    }

    private static Story freshSince(double hour) {
        return Story.of(LEVEL_3).opened(hour).mounted(hour);
    }

    private static Location at(String name, PartUnderTest part, Story story, boolean offFirst, int replacements) {
        return new Location(name, part.get(), story.events(), Optional.empty(), Fate.STAYS, offFirst, replacements);
    }

    private static Optional<Double> hours(BoardAnswer answer, double celsius) {
        return Told.bakeHours(answer.whole(), celsius);
    }

    /** Each bake is for the longest time that any part in need of one asks for there. */
    @Test
    void theBakeIsForTheLongestTimeThatAPartNeeds() {
        BoardAnswer answer = new BoardUnderTest()
                .with("U1", LEVEL_3, expired())
                .with(
                        "U2",
                        PartUnderTest.level("5a"),
                        Story.of(PartUnderTest.level("5a")).unknown(0).mounted(0))
                .wholeBoard(220);

        assertThat(hours(answer, 125)).contains(16.0);
        assertThat(hours(answer, 90)).contains(54.0);
        assertThat(Told.allows(answer.whole(), 125)).isTrue();
        assertThat(answer.whole().next()).contains(StepCode.BAKE);
    }

    /** S9: offer what the board bears first. */
    @ParameterizedTest
    @CsvSource({"125, true, true", "105, false, true", "90, false, true", "89, false, false"})
    void theBoardsOwnLimitCounts(double limit, boolean at125, boolean at90) {
        BoardAnswer answer =
                new BoardUnderTest().bears(limit).with("U1", LEVEL_3, expired()).wholeBoard(300);

        assertThat(Told.allows(answer.whole(), 125)).isEqualTo(at125);
        assertThat(Told.allows(answer.whole(), 90)).isEqualTo(at90);
        assertThat(answer.whole().verdict()).isEqualTo(Verdict.BAKE);
    }

    @Test
    void aBoardThatBearsNoBakeIsHeld() {
        BoardAnswer answer =
                new BoardUnderTest().bears(39).with("U1", LEVEL_3, expired()).wholeBoard(300);

        assertThat(answer.whole().verdict()).isEqualTo(Verdict.HOLD);
        assertThat(answer.whole().has(FindingCode.NO_BAKE_ALLOWED)).isTrue();
    }

    /** The board's limit stands in place of the carrier's, but for a part that is yet to be placed. */
    @Test
    void theBoardIsTheCarrierOfAMountedPart() {
        PartUnderTest reel = PartUnderTest.level("3").inCarrierOf(40);
        BoardAnswer answer = new BoardUnderTest()
                .with("U1", reel, Story.of(reel).opened(0).mounted(1))
                .with("U2", reel, Story.of(reel).opened(0), Fate.PLACED, Optional.empty())
                .wholeBoard(300);

        assertThat(Told.allows(answer.parts().get(0).answer(), 125)).isTrue();
        assertThat(Told.allows(answer.parts().get(1).answer(), 125)).isFalse();
    }

    /** A part's own limit below the board's binds unless the part is taken off first. */
    @ParameterizedTest
    @CsvSource({"false, false", "true, true"})
    void aWeakPartBindsUnlessItIsTakenOffFirst(boolean offFirst, boolean allowed) {
        PartUnderTest weak = PartUnderTest.level("1").kind(BodyKind.PASSIVE).maxBakeC(105);
        BoardAnswer answer = new BoardUnderTest()
                .with("U1", LEVEL_3, expired())
                .with(at("C1", weak, Story.of(weak).toFloor(0).mounted(1), offFirst, 0))
                .wholeBoard(300);

        assertThat(Told.allows(answer.whole(), 125)).isEqualTo(allowed);
        assertThat(Told.allows(answer.whole(), 90)).isTrue();
    }

    /** A temperature at which one part has no bake is not offered. */
    @Test
    void aTemperatureAtWhichOnePartHasNoBakeIsNotOffered() {
        PartUnderTest maker = PartUnderTest.level("3").makersBake(90, 60);
        BoardAnswer answer = new BoardUnderTest()
                .with("U1", LEVEL_3, expired())
                .with("U2", maker, Story.of(maker).opened(0).mounted(1))
                .wholeBoard(300);

        assertThat(hours(answer, 40)).isEmpty();
        assertThat(hours(answer, 90)).contains(60.0);
    }

    /** Coated, or not said: no table time, hold until an engineer enters one. */
    @ParameterizedTest
    @CsvSource({"true, HOLD", ", HOLD", "false, BAKE"})
    void aCoatedBoardHasNoTableTime(Boolean coated, Verdict expected) {
        BoardAnswer answer = new BoardUnderTest()
                .coated(Optional.ofNullable(coated))
                .with("U1", LEVEL_3, expired())
                .wholeBoard(300);

        assertThat(answer.whole().verdict()).isEqualTo(expected);
        assertThat(answer.whole().bakes().isEmpty()).isEqualTo(expected == Verdict.HOLD);
        assertThat(answer.whole().has(FindingCode.BOARD_COATED)).isEqualTo(expected == Verdict.HOLD);
    }

    @Test
    void aCoatedBoardWithoutNeedIsClear() {
        assertThat(new BoardUnderTest()
                        .coated(Optional.of(true))
                        .with("U1", LEVEL_3, freshSince(290))
                        .wholeBoard(300)
                        .whole()
                        .verdict())
                .isEqualTo(Verdict.CLEAR);
    }

    /** The board type's own bake alone is offered, for the longer of its hours and the parts' needs (a module's 24 h). */
    @ParameterizedTest
    @CsvSource({"125, 24, 1.2, 24", "125, 24, 2.1, 48", "125, 4, 1.2, 9", "105, 24, 1.2, 33"})
    void aBoardsOwnBakeIsForTheLongerOfBoth(double celsius, double own, String thickness, double hours) {
        PartUnderTest part = PartUnderTest.level("3").thick(thickness);
        BoardAnswer answer = new BoardUnderTest()
                .ownBake(celsius, own)
                .coated(Optional.of(true))
                .with("U1", part, Story.of(part).opened(0).mounted(1))
                .wholeBoard(300);

        assertThat(answer.whole().bakes()).hasSize(1);
        assertThat(hours(answer, celsius)).contains(hours);
        assertThat(answer.whole().verdict()).isEqualTo(Verdict.BAKE);
    }

    /** The board's bakes belong to each mounted part's history, from its mounting on. */
    @Test
    void theBoardsBakesBelongToItsParts() {
        BoardUnderTest board = new BoardUnderTest()
                .bake(300, 310, 125, 9)
                .with("U1", LEVEL_3, expired())
                .with("U2", LEVEL_3, Story.of(LEVEL_3).opened(0).mounted(305 + 10));

        BoardAnswer answer = board.wholeBoard(320);
        assertThat(answer.parts().get(0).answer().verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(answer.parts().get(1).answer().verdict()).isEqualTo(Verdict.BAKE);
    }

    /** Common practice: heat within 12 h or less of the last board bake that counted. */
    @ParameterizedTest
    @CsvSource({"9, 321, 60, CLEAR, 322", "9, 321, 61, BAKE, -1", "4, 321, 600, CLEAR, -1"})
    void aBoardIsHeatedWithinItsTimeAfterABake(
            double bakedFor, double hour, double minutes, Verdict expected, double until) {
        BoardAnswer answer = new BoardUnderTest()
                .useWithin(12)
                .bake(300, 310, 125, bakedFor)
                .with("U1", LEVEL_3, bakedFor < 9 ? freshSince(250) : expired())
                .answer(hour, HeatPlan.Purpose.WHOLE_BOARD, false, minutes);

        assertThat(answer.whole().verdict()).isEqualTo(expected);
        assertThat(answer.whole().has(FindingCode.BOARD_USE_WITHIN_PASSED)).isEqualTo(expected == Verdict.BAKE);
        if (until > 0) {
            assertThat(Told.until(answer.whole())).contains(until);
        }
    }

    /** A bake shorter or cooler than the board type's own does not start the board's time. */
    @ParameterizedTest
    @CsvSource({"125, 24, true", "125, 23, false", "120, 24, false"})
    void theBoardsOwnBakeMustBeMet(double celsius, double hours, boolean timed) {
        BoardAnswer answer = new BoardUnderTest()
                .ownBake(125, 24)
                .useWithin(12)
                .bake(300, 330, celsius, hours)
                .with("U1", LEVEL_3, expired())
                .wholeBoard(350);

        assertThat(answer.whole().has(FindingCode.BOARD_USE_WITHIN_PASSED)).isEqualTo(timed);
    }

    /** What stays at or below 200 C has no say in the board's bakes and numbers. */
    @Test
    void aCoolNeighbourHasNoSay() {
        PartUnderTest strict = PartUnderTest.level("5a");
        BoardAnswer answer = new BoardUnderTest()
                .with("U1", LEVEL_3, freshSince(290), Fate.STAYS, Optional.of(245.0))
                .with("U2", strict, Story.of(strict).opened(290).mounted(290), Fate.STAYS, Optional.of(150.0))
                .local(300);

        assertThat(hours(answer, 125)).contains(7.0);
        assertThat(Told.total(answer.whole())).contains(168.0);
        assertThat(Told.until(answer.whole())).contains(290 + 168.0);
        assertThat(answer.parts()).extracting(BoardAnswer.At::counts).containsExactly(true, false);
    }

    /** A location without any history takes all of the board's bakes. */
    @Test
    void aLocationWithoutHistoryTakesAllOfTheBoardsBakes() {
        BoardUnderTest board = new BoardUnderTest().bake(300, 310, 125, 9).with("U1", LEVEL_3, Story.of(LEVEL_3));

        assertThat(board.wholeBoard(320).whole().verdict()).isEqualTo(Verdict.CLEAR);
    }

    /** Above 125 C only where a part's maker goes there. */
    @Test
    void anOwnBakeAbove125NeedsTheMakersWord() {
        BoardUnderTest board = new BoardUnderTest().bears(150).ownBake(130, 10).with("U1", LEVEL_3, expired());
        assertThat(board.wholeBoard(300).whole().verdict()).isEqualTo(Verdict.HOLD);

        PartUnderTest hot = PartUnderTest.level("3").makersBake(130, 12);
        BoardAnswer ruled = new BoardUnderTest()
                .bears(150)
                .ownBake(130, 10)
                .with("U1", hot, Story.of(hot).opened(0).mounted(1))
                .wholeBoard(300);
        assertThat(hours(ruled, 130)).contains(12.0);
    }
}
