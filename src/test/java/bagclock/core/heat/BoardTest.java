package bagclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.heat.BoardQuestion.Fate;
import bagclock.core.heat.BoardQuestion.Location;
import bagclock.core.quantity.Celsius;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which part decides for a board: J-STD-033D, rework clauses (S9, S45, S47), and common practice where named so. */
class BoardTest {
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

    /** S16: a board's answer is its worst part's. */
    @Test
    void theBoardsAnswerIsItsWorstParts() {
        BoardAnswer answer = new BoardUnderTest()
                .with("U1", LEVEL_3, freshSince(290))
                .with("U2", LEVEL_3, expired())
                .wholeBoard(300);

        assertThat(answer.whole().verdict()).isEqualTo(Verdict.BAKE);
        assertThat(answer.parts()).extracting(at -> at.answer().verdict()).containsExactly(Verdict.CLEAR, Verdict.BAKE);
        assertThat(answer.parts()).extracting(BoardAnswer.At::location).containsExactly("U1", "U2");
        assertThat(Told.used(answer.whole())).isEqualTo(300.0);
        assertThat(answer.whole().has(FindingCode.FLOOR_LIFE_USED)).isTrue();
    }

    /** S45: over those that will pass 200 C: a measured peak, one not known, all in a whole-board heat. */
    @ParameterizedTest
    @CsvSource({"190, true, CLEAR", "200, true, CLEAR", "201, true, BAKE", ", true, BAKE", "190, false, BAKE"})
    void onlyPartsThatWillPass200CountInALocalHeat(Double peak, boolean local, Verdict expected) {
        BoardUnderTest board = new BoardUnderTest()
                .with("U1", LEVEL_3, freshSince(290), Fate.PLACED, Optional.of(245.0))
                .with("U2", LEVEL_3, expired(), Fate.STAYS, Optional.ofNullable(peak));
        BoardAnswer answer = local ? board.local(300) : board.wholeBoard(300);

        assertThat(answer.whole().verdict()).isEqualTo(expected);
        assertThat(answer.parts().get(1).answer().verdict()).isEqualTo(expected);
    }

    /** A part that goes to the bin does not count, its neighbours do. */
    @Test
    void aPartForTheBinDoesNotCountItsNeighboursDo() {
        BoardUnderTest board =
                new BoardUnderTest().with("U1", LEVEL_3, expired(), Fate.REMOVED_SCRAP, Optional.of(245.0));
        assertThat(board.local(300).whole().verdict()).isEqualTo(Verdict.CLEAR);

        assertThat(board.with("U2", LEVEL_3, expired(), Fate.STAYS, Optional.of(210.0))
                        .local(300)
                        .whole()
                        .verdict())
                .isEqualTo(Verdict.BAKE);
        assertThat(new BoardUnderTest()
                        .with("U1", LEVEL_3, expired(), Fate.REMOVED_REUSE, Optional.of(245.0))
                        .local(300)
                        .whole()
                        .verdict())
                .isEqualTo(Verdict.BAKE);
    }

    /** Common practice: warn at the second replacement of a location, hold at the third. */
    @ParameterizedTest
    @CsvSource({"0, false, CLEAR", "1, true, CLEAR", "2, false, HOLD"})
    void theThirdReplacementIsAHold(int done, boolean warned, Verdict expected) {
        Location location = new Location(
                "U1",
                LEVEL_3.get(),
                Story.of(LEVEL_3).opened(299).events(),
                Optional.of(new Celsius(245)),
                Fate.PLACED,
                false,
                done);
        Answer answer = new BoardUnderTest().with(location).local(300).whole();

        assertThat(answer.verdict()).isEqualTo(expected);
        assertThat(answer.has(FindingCode.LOCATION_REPLACED)).isEqualTo(warned);
    }

    /** A site may choose its own limit. */
    @ParameterizedTest
    @CsvSource({"1, 0, true, CLEAR", "1, 1, false, HOLD", "3, 1, false, CLEAR", "3, 2, true, CLEAR", "3, 3, false, HOLD"
    })
    void theSitesLimitOfReplacementsCounts(int most, int done, boolean warned, Verdict expected) {
        Location location = new Location(
                "U1",
                LEVEL_3.get(),
                Story.of(LEVEL_3).opened(299).events(),
                Optional.of(new Celsius(245)),
                Fate.PLACED,
                false,
                done);
        Answer answer = new BoardUnderTest()
                .mostReplacements(most)
                .with(location)
                .local(300)
                .whole();

        assertThat(answer.verdict()).isEqualTo(expected);
        assertThat(answer.has(FindingCode.LOCATION_REPLACED)).isEqualTo(warned);
    }

    @Test
    void replacementsCountOnlyWhereAPartIsPlaced() {
        Location location = at("U1", LEVEL_3, freshSince(290), false, 5);

        assertThat(new BoardUnderTest().with(location).wholeBoard(300).whole().verdict())
                .isEqualTo(Verdict.CLEAR);
    }

    /** Back from the field: unknown exposure, hold until the board's limit is given, then the long column. */
    @Test
    void aBoardBackFromTheFieldNeedsItsLimit() {
        Story field = Story.of(LEVEL_3).unknown(0).mounted(0);
        Answer unknown = new BoardUnderTest()
                .bears(Optional.empty())
                .with("U1", LEVEL_3, field)
                .wholeBoard(1)
                .whole();
        assertThat(unknown.verdict()).isEqualTo(Verdict.HOLD);
        assertThat(unknown.has(FindingCode.BOARD_LIMIT_UNKNOWN)).isTrue();

        BoardAnswer known =
                new BoardUnderTest().bears(100).with("U1", LEVEL_3, field).wholeBoard(1);
        assertThat(known.whole().verdict()).isEqualTo(Verdict.BAKE);
        assertThat(known.whole().bakeColumn()).contains(Answer.Column.OVER_72H);
        assertThat(hours(known, 90)).contains(33.0);
    }

    /** until: the earliest of clear, the latest of wait. */
    @Test
    void untilIsTheEarliestOfClearAndTheLatestOfWait() {
        BoardAnswer clear = new BoardUnderTest()
                .with("U1", LEVEL_3, freshSince(290))
                .with("U2", LEVEL_3, freshSince(280))
                .wholeBoard(300);
        assertThat(Told.until(clear.whole())).contains(280 + 168.0);

        PartUnderTest five = PartUnderTest.level("5a");
        BoardAnswer wait = new BoardUnderTest()
                .with("U1", five, Story.of(five).opened(0).mounted(0).stored(6, 5))
                .with("U2", five, Story.of(five).opened(0).mounted(0).stored(7, 5))
                .wholeBoard(50);
        assertThat(wait.whole().verdict()).isEqualTo(Verdict.WAIT);
        assertThat(Told.until(wait.whole())).contains(77.0);
    }

    @Test
    void aBoardWithoutPartsIsClear() {
        BoardAnswer answer = new BoardUnderTest().wholeBoard(1);

        assertThat(answer.whole().verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(answer.parts()).isEmpty();
        assertThat(answer.whole().bakes()).isEmpty();
    }

    /** What a part says of its own limit is not asked where no heat is planned: all parts count. */
    @Test
    void withoutAHeatAllPartsCount() {
        BoardQuestion question = new BoardUnderTest()
                .with("U1", LEVEL_3, expired(), Fate.STAYS, Optional.of(100.0))
                .question(300, Optional.empty());

        assertThat(AssessBoard.of(Story.STANDARD, question).whole().verdict()).isEqualTo(Verdict.BAKE);
    }

    /** Each location's own peak counts; the plan's is not used beside a board. */
    @Test
    void thePeakOfThePlanIsNotUsed() {
        HeatPlan plan = new HeatPlan(
                Story.at(300),
                Story.hours(0.1),
                Optional.of(new Celsius(400)),
                Optional.of(HeatPlan.Purpose.PLACEMENT),
                Optional.of(true));
        BoardQuestion question = new BoardUnderTest()
                .with("U1", LEVEL_3, freshSince(290), Fate.STAYS, Optional.of(245.0))
                .question(300, Optional.of(plan));

        assertThat(AssessBoard.of(Story.STANDARD, question).whole().verdict()).isEqualTo(Verdict.CLEAR);
    }

    /** A removal of a neighbour is a local heat; a placement that is not stated to be local heats all. */
    @ParameterizedTest
    @CsvSource({"REMOVAL_REUSE, false, CLEAR", "PLACEMENT, true, CLEAR", "PLACEMENT, false, BAKE"})
    void aLocalHeatSparesWhatStaysCool(HeatPlan.Purpose purpose, boolean local, Verdict expected) {
        BoardAnswer answer = new BoardUnderTest()
                .with("U1", LEVEL_3, freshSince(290), Fate.REMOVED_REUSE, Optional.of(245.0))
                .with("U2", LEVEL_3, expired(), Fate.STAYS, Optional.of(150.0))
                .answer(300, purpose, local, 5);

        assertThat(answer.parts().get(1).answer().verdict()).isEqualTo(expected);
        assertThat(answer.whole().verdict()).isEqualTo(expected);
    }

    @Test
    void whatIsAssumedOfEveryPartIsSaidOnce() {
        BoardAnswer answer = new BoardUnderTest()
                .coated(Optional.empty())
                .with("U1", LEVEL_3, freshSince(290))
                .with("U2", LEVEL_3, freshSince(290))
                .wholeBoard(300);

        assertThat(answer.whole().assumed())
                .extracting(Assumption::fact)
                .contains(Assumption.Fact.COATED, Assumption.Fact.BAKE_LIMIT)
                .doesNotHaveDuplicates();
    }

    @Test
    void aHistoryThatCannotBeIsRefused() {
        Story impossible = Story.of(LEVEL_3).sealed(0).mounted(1);
        BoardQuestion question =
                new BoardUnderTest().with("U1", LEVEL_3, impossible).question(300, Optional.empty());

        org.assertj.core.api.Assertions.assertThatIllegalArgumentException()
                .isThrownBy(() -> AssessBoard.of(Story.STANDARD, question));
        assertThat(List.of(Fate.values()))
                .allSatisfy(fate -> assertThat(Fate.parse(fate.code())).contains(fate));
    }
}
