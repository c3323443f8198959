package bagclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.heat.BoardQuestion.Fate;
import bagclock.core.heat.BoardQuestion.Location;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.core.standard.BodyKind;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Who has a say in what a board's answer holds: the project's own reading of J-STD-033D's rework clauses (S9, S45). */
class BoardFinePrintTest {
    private static final PartUnderTest LEVEL_1 = PartUnderTest.level("1");
    private static final PartUnderTest LEVEL_3 = PartUnderTest.level("3");
    private static final PartUnderTest LEVEL_5A = PartUnderTest.level("5a");

    private static Story insensitive() {
        return Story.of(LEVEL_1).toFloor(0).mounted(1);
    }

    private static Story expired() {
        return Story.of(LEVEL_3).opened(0).mounted(1);
    }

    private static Story freshSince(double hour) {
        return Story.of(LEVEL_3).opened(hour).mounted(hour);
    }

    private static Location at(String name, PartUnderTest part, Story story, boolean offFirst) {
        return new Location(name, part.get(), story.events(), Optional.empty(), Fate.STAYS, offFirst, 0);
    }

    /** Where no part has a bake the board type's own is offered as it is, if the board bears it. */
    @ParameterizedTest
    @CsvSource({"125, true", "105, true", "104, false"})
    void anOwnBakeNeedsNoSensitivePart(double limit, boolean allowed) {
        BoardAnswer answer = new BoardUnderTest()
                .bears(limit)
                .ownBake(105, 24)
                .with("U1", LEVEL_1, insensitive())
                .wholeBoard(300);

        assertThat(Told.bakeHours(answer.whole(), 105)).contains(24.0);
        assertThat(Told.allows(answer.whole(), 105)).isEqualTo(allowed);
    }

    /** An own bake above 125 C is none for a part that has only the table's. */
    @Test
    void anOwnBakeTooHotForAPartIsNotOffered() {
        BoardAnswer answer = new BoardUnderTest()
                .bears(150)
                .ownBake(130, 10)
                .with("U1", LEVEL_3, expired())
                .wholeBoard(300);

        assertThat(answer.whole().bakes()).isEmpty();
    }

    /** Table 4-1 asks for 5 %RH at 90 C: one part that needs that makes the whole bake need it. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void theHumidityThatOnePartAsksForIsAskedOfTheBake(boolean makersFirst) {
        PartUnderTest maker = PartUnderTest.level("3").makersBake(90, 60);
        Location ruled = at("U1", maker, Story.of(maker).opened(0).mounted(1), false);
        Location tabled = at("U2", LEVEL_3, expired(), false);
        BoardAnswer answer = new BoardUnderTest()
                .with(makersFirst ? ruled : tabled)
                .with(makersFirst ? tabled : ruled)
                .wholeBoard(300);

        assertThat(Told.offer(answer.whole(), 90).orElseThrow().maxHumidity()).contains(new RelativeHumidity(5));
    }

    /** Hours above 90 C are a part's own: two parts that have seen them bar the board's bake, and are named once. */
    @Test
    void whatBarsAPartsBakeBarsTheBoards() {
        Story baked = Story.of(LEVEL_3).unknown(0).bake(0, 90, 125, 90).mounted(91);
        BoardAnswer answer = new BoardUnderTest()
                .with("U1", LEVEL_3, baked)
                .with("U2", LEVEL_3, baked)
                .wholeBoard(300);

        assertThat(Told.offer(answer.whole(), 125).orElseThrow().bars())
                .extracting(BakeOffer.Bar::code)
                .containsExactly(BakeOffer.BarCode.HOURS_ABOVE_90);
        assertThat(Told.allows(answer.whole(), 90)).isTrue();
    }

    /** A part of a kind whose limit nobody knows binds, also where its own bake is asked for, unless it is taken off. */
    @ParameterizedTest
    @CsvSource({"false, false", "true, true"})
    void anUnknownLimitBindsUnlessThePartIsTakenOffFirst(boolean offFirst, boolean allowed) {
        PartUnderTest module = PartUnderTest.level("1").kind(BodyKind.MODULE);
        BoardAnswer beside = new BoardUnderTest()
                .with("U1", LEVEL_3, expired())
                .with(at("M1", module, Story.of(module).toFloor(0).mounted(1), offFirst))
                .wholeBoard(300);
        assertThat(Told.allows(beside.whole(), 125)).isEqualTo(allowed);

        PartUnderTest weak = PartUnderTest.level("3").maxBakeC(60);
        BoardAnswer itself = new BoardUnderTest()
                .with(at("U1", weak, Story.of(weak).opened(0).mounted(1), offFirst))
                .wholeBoard(300);
        assertThat(Told.allows(itself.whole(), 125)).isEqualTo(allowed);
    }

    /** With no part in need the bakes are those of the parts that have some, not of what is thrown away. */
    @Test
    void withoutNeedTheBakesAreOfThePartsThatStay() {
        BoardAnswer answer = new BoardUnderTest()
                .with("U1", LEVEL_1, insensitive())
                .with("U2", LEVEL_3, freshSince(290))
                .with("U3", LEVEL_5A, Story.of(LEVEL_5A).opened(299).mounted(299), Fate.REMOVED_SCRAP, Optional.empty())
                .wholeBoard(300);

        assertThat(Told.bakeHours(answer.whole(), 125)).contains(7.0);
    }

    /** A part that is yet to be placed is baked by itself: it makes no need of the board. */
    @Test
    void aPartToBePlacedIsNoNeedOfTheBoard() {
        BoardAnswer answer = new BoardUnderTest()
                .coated(Optional.of(true))
                .with("U1", LEVEL_3, freshSince(290))
                .with("U2", LEVEL_3, Story.of(LEVEL_3).opened(0), Fate.PLACED, Optional.of(245.0))
                .wholeBoard(300);

        assertThat(answer.whole().verdict()).isEqualTo(Verdict.BAKE);
        assertThat(answer.whole().has(FindingCode.BOARD_COATED)).isFalse();
    }

    /** The end of a bake of a part that is not on the board yet starts no time of the board. */
    @Test
    void onlyABakeThatDriedAMountedPartStartsTheBoardsTime() {
        BoardUnderTest board = new BoardUnderTest()
                .useWithin(12)
                .bake(300, 310, 125, 9)
                .with("U1", LEVEL_1, insensitive())
                .with(
                        "U2",
                        LEVEL_3,
                        Story.of(LEVEL_3).unknown(0).bake(300, 310, 125, 9),
                        Fate.PLACED,
                        Optional.of(245.0));

        assertThat(board.wholeBoard(330).whole().has(FindingCode.BOARD_USE_WITHIN_PASSED))
                .isFalse();
    }

    /** Every part that counts gives its reasons, the strictest first. */
    @Test
    void theReasonsOfAllPartsThatCountAreTold() {
        BoardAnswer answer = new BoardUnderTest()
                .with("U1", LEVEL_3, expired())
                .with("U2", LEVEL_3, Story.of(LEVEL_3).unknown(0).mounted(1))
                .wholeBoard(300);

        assertThat(answer.whole().has(FindingCode.FLOOR_LIFE_USED)).isTrue();
        assertThat(answer.whole().has(FindingCode.EXPOSURE_UNKNOWN)).isTrue();
    }

    /** Until when to wait is told by those that wait: a level 4 part rests until 88 h, the other is clear until 300 h. */
    @Test
    void theTimeOfAWaitIsThatOfThoseThatWait() {
        PartUnderTest four = PartUnderTest.level("4");
        BoardAnswer answer = new BoardUnderTest()
                .with("U1", four, Story.of(four).opened(0).mounted(0).stored(8, 5))
                .with("U2", LEVEL_3, freshSince(79))
                .wholeBoard(80);

        assertThat(answer.whole().verdict()).isEqualTo(Verdict.WAIT);
        assertThat(Told.until(answer.whole())).contains(88.0);
    }

    /** Without a mounting a part takes the board's bakes from its first event on, in the order of time. */
    @Test
    void theBoardsBakesStandInOrderWithWhatHappenedToThePart() {
        Story late = Story.of(LEVEL_3).opened(305);
        assertThat(new BoardUnderTest()
                        .bake(300, 310, 125, 9)
                        .with("U1", LEVEL_3, late)
                        .wholeBoard(475)
                        .whole()
                        .verdict())
                .isEqualTo(Verdict.BAKE);

        Story heated = expired().heated(320, 245);
        assertThat(new BoardUnderTest()
                        .bake(300, 310, 125, 9)
                        .with("U1", LEVEL_3, heated)
                        .wholeBoard(330)
                        .whole()
                        .verdict())
                .isEqualTo(Verdict.CLEAR);
    }

    /** In a heat of the whole board every part counts, whatever was measured in another one. */
    @Test
    void inAHeatOfTheWholeBoardEveryPartCounts() {
        BoardUnderTest board =
                new BoardUnderTest().with("U1", LEVEL_3, freshSince(290), Fate.STAYS, Optional.of(150.0));

        assertThat(board.wholeBoard(300).parts()).allMatch(BoardAnswer.At::counts);
        assertThat(AssessBoard.of(Story.STANDARD, board.question(300, Optional.empty()))
                        .parts())
                .allMatch(BoardAnswer.At::counts);
        assertThat(board.local(300).parts()).noneMatch(BoardAnswer.At::counts);
    }
}
