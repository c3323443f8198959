package bagclock.desk;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.Outcome;
import bagclock.core.Reason;
import bagclock.core.Refusal;
import bagclock.core.exposure.PartHistory;
import bagclock.core.exposure.Tally;
import bagclock.core.heat.Answer;
import bagclock.core.heat.BakeOffer;
import bagclock.core.heat.BoardLocations;
import bagclock.core.heat.HeatPlan;
import bagclock.core.heat.HeatPlan.Purpose;
import bagclock.core.heat.Verdict;
import bagclock.core.quantity.Celsius;
import bagclock.core.standard.Level;
import bagclock.ledger.BoardEntry;
import bagclock.ledger.BoardEntry.Kind;
import bagclock.ledger.BoardNotes;
import bagclock.platform.Database;
import bagclock.platform.Engine;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Bakes in ovens that the shop does not know. J-STD-033D as read for rules 7 and 8: only time at temperature that is
 * shown dries, the hours above 90 C count up to 96 h whether they dried or not.
 */
class BakedElsewhereTest {
    private static final String BOARD = "B-1";

    private Database database;
    private TestShop shop;

    @BeforeEach
    void open() {
        database = Engine.H2.fresh();
        shop = new TestShop(database);
    }

    @AfterEach
    void close() {
        database.close();
    }

    private Command.BakedElsewhere baked(double end, String tag, double celsius, double hours) {
        Duration time = Duration.ofMinutes((long) (hours * 60));
        return new Command.BakedElsewhere(shop.header(end), tag, "The foundry's", new Celsius(celsius), time);
    }

    private Answer answer(String tag, double hours) {
        return shop.desk.mayHeat(tag, Optional.empty(), TestShop.at(hours));
    }

    private Tally tally(String tag, double hours) {
        PartHistory history = shop.desk.evidence(tag, TestShop.at(hours)).history();
        return Tally.of(history.part(), history.timeline(), TestShop.at(hours));
    }

    @Test
    void itDriesNothingAndAllItsHoursCount() {
        shop.opened(0, "R-1", Level.L3);
        shop.tell(baked(300, "R-1", 125, 48));

        assertThat(answer("R-1", 301).verdict()).isEqualTo(Verdict.BAKE);
        assertThat(tally("R-1", 301).bakedAbove90()).isEqualTo(Duration.ofHours(48));
        assertThat(tally("R-1", 301).bakes()).isEqualTo(1);
        shop.tell(baked(400, "R-1", 125, 48));
        assertThat(answer("R-1", 401).bakes().stream().filter(BakeOffer::isAllowed))
                .extracting(offer -> offer.temperature().degrees())
                .doesNotContain(125.0)
                .contains(90.0);
    }

    @Test
    void theHistoryIsUnknownUpToItsEnd() {
        shop.opened(0, "R-1", Level.L3);
        assertThat(answer("R-1", 20).verdict()).isEqualTo(Verdict.CLEAR);

        shop.tell(baked(20, "R-1", 80, 4));

        assertThat(answer("R-1", 20).verdict()).isEqualTo(Verdict.BAKE);
        assertThat(answer("R-1", 20).bakeColumn()).contains(Answer.Column.OVER_72H);
    }

    @ParameterizedTest
    @CsvSource({
        "L2, 125, 48",
        "L2A, 90, 100",
        "L3, 125, 48",
        "L3, 60, 10",
        "L4, 125, 1",
        "L5, 125, 24",
        "L5A, 40, 900",
        "L6, 125, 96",
        "L1, 125, 9"
    })
    void itNeverMakesAnAnswerMilder(Level level, double celsius, double hours) {
        for (double end : new double[] {hours + 1, hours + 30, hours + 2000}) {
            String tag = "R-" + end;
            shop.opened(0, tag, level);
            Verdict before = answer(tag, end).verdict();

            shop.tell(baked(end, tag, celsius, hours));

            assertThat(answer(tag, end).verdict()).as(tag).isGreaterThanOrEqualTo(before);
        }
    }

    @Test
    void itIsOneEntryAndIsTakenBackAsOne() {
        shop.opened(0, "R-1", Level.L3);
        Receipt receipt = shop.tell(baked(20, "R-1", 125, 9));
        shop.tell(new Command.TakeBack(shop.header(21), "R-1", receipt.seq()));

        assertThat(answer("R-1", 21).verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(tally("R-1", 21).bakes()).isZero();
    }

    @Test
    void nothingElseHappensWhileItLasts() {
        shop.opened(0, "R-1", Level.L3);
        shop.tell(shop.move(15, "R-1", TestShop.BENCH));

        assertThat(shop.refused(baked(20, "R-1", 125, 9), TestShop.at(20))).contains(Reason.TIME_GOES_BACK);
        shop.tell(baked(20, "R-1", 125, 4));
    }

    private Outcome<BoardEntry> note(Kind kind, double at, int basedOn, Map<String, String> told) {
        BoardNote note = new BoardNote(shop.header(at), BOARD, basedOn, kind, told, Optional.empty(), List.of());
        return shop.desk.boards().record(note, TestShop.at(at));
    }

    private Outcome<BoardEntry> boardBaked(double at, int basedOn, int hours) {
        return note(
                Kind.BAKED_ELSEWHERE,
                at,
                basedOn,
                Map.of(
                        BoardNotes.OVEN,
                        "The foundry's",
                        BoardNotes.SET_POINT,
                        "125",
                        BoardNotes.AT_TEMPERATURE,
                        Duration.ofHours(hours).toString()));
    }

    private static List<Reason> reasons(Outcome<BoardEntry> outcome) {
        return outcome.fold(
                entry -> List.of(),
                refusals -> refusals.stream().map(Refusal::reason).toList());
    }

    private BoardReply whole(double at) {
        HeatPlan plan = new HeatPlan(
                TestShop.at(at), Duration.ZERO, Optional.empty(), Optional.of(Purpose.WHOLE_BOARD), Optional.of(false));
        return shop.desk.boards().mayHeat(BoardAsk.everywhere(BOARD, plan));
    }

    private static Duration hoursOf(BoardReply reply, String location) {
        var at = reply.question().locations().stream()
                .filter(one -> one.name().equals(location))
                .findFirst()
                .orElseThrow();
        return BoardLocations.timeline(reply.question().board(), at)
                .fold(timeline -> Tally.of(at.part(), timeline, reply.question().at()), refusals -> {
                    throw new AssertionError(refusals.toString());
                })
                .bakedAbove90();
    }

    /** Also where the board was told of only after the bake had begun; no time for use runs from it. */
    @Test
    void onABoardItCountsForPartsWithoutAnItemToo() {
        shop.board(BOARD, TestShop.number(Level.L3));
        assertThat(reasons(boardBaked(500, 0, 40))).isEmpty();

        BoardReply reply = whole(500);

        assertThat(reply.answer().whole().verdict()).isEqualTo(Verdict.BAKE);
        assertThat(hoursOf(reply, "U1")).isEqualTo(Duration.ofHours(40));
        assertThat(hoursOf(reply, "U2")).isEqualTo(Duration.ofHours(40));
        assertThat(whole(520).answer().whole().reasons())
                .noneMatch(finding -> finding.code().name().equals("BOARD_USE_WITHIN_PASSED"));
    }

    @Test
    void onABoardItDoesNotLieOverWhatElseHappenedToItsParts() {
        shop.board(BOARD, TestShop.number(Level.L3));
        note(Kind.CAME_BACK, 100, 0, Map.of());

        assertThat(reasons(boardBaked(110, 1, 40))).containsExactly(Reason.BAKE_OVERLAPS);
        assertThat(reasons(boardBaked(110, 1, 9))).isEmpty();
    }
}
