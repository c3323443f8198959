package bagclock.desk;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.Outcome;
import bagclock.core.Reason;
import bagclock.core.heat.HeatPlan.Purpose;
import bagclock.core.heat.Verdict;
import bagclock.core.quantity.Celsius;
import bagclock.core.standard.Level;
import bagclock.ledger.BoardEntry;
import bagclock.ledger.BoardEntry.Kind;
import bagclock.platform.Database;
import bagclock.platform.Engine;
import bagclock.register.BoardType;
import bagclock.register.BoardType.KeptOn;
import bagclock.register.BoardType.Spot;
import bagclock.register.HeatProfile;
import bagclock.register.KnownBoard;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class BoardDeskTest {
    private static final String BOARD = "B-1";
    private static final String TYPE = "T-1";

    private Database database;
    private TestShop shop;

    @BeforeEach
    void open() {
        database = Engine.H2.fresh();
        shop = new TestShop(database);
        shop.desk.boards().keep(type(Optional.of(new Celsius(125))), TestShop.change(0));
        shop.desk.boards().keep(new KnownBoard(BOARD, TYPE, false), TestShop.change(0));
    }

    @AfterEach
    void close() {
        database.close();
    }

    private static BoardType type(Optional<Celsius> kept) {
        return new BoardType(
                TYPE,
                "test board",
                Optional.of(new Celsius(125)),
                Optional.empty(),
                Optional.of(false),
                List.of(new KeptOn("battery", kept)),
                List.of(new Spot("U1", TestShop.number(Level.L3)), new Spot("U2", TestShop.number(Level.L3))));
    }

    private void profile(String id, double neighbour, int year) {
        HeatProfile profile = new HeatProfile(
                id,
                TYPE,
                "U1",
                HeatProfile.Kind.REMOVAL,
                "hot air",
                Optional.of(new Celsius(235)),
                Map.of("U2", new Celsius(neighbour)),
                Optional.of(new Celsius(100)),
                Duration.ofMinutes(5),
                LocalDate.of(year, 1, 1),
                "engineer");
        shop.desk.boards().keep(profile, TestShop.change(0));
    }

    private BoardReply scrap(String profile, double hours) {
        return shop.desk
                .boards()
                .mayHeat(new BoardAsk(
                        BOARD,
                        "U1",
                        Purpose.REMOVAL_SCRAP,
                        Optional.empty(),
                        Optional.of(profile),
                        Optional.empty(),
                        Duration.ofMinutes(5),
                        TestShop.at(hours)));
    }

    private static Verdict verdict(BoardReply reply) {
        return reply.answer().whole().verdict();
    }

    /** A neighbour of unknown history that stays at 200 C is no bar; above 200 C it is (rule 12). */
    @Test
    void aHotterNeighbourIsNeverMilder() {
        profile("P-cool", 200, 2026);
        profile("P-hot", 201, 2026);

        assertThat(verdict(scrap("P-cool", 1))).isEqualTo(Verdict.CLEAR);
        assertThat(verdict(scrap("P-hot", 1))).isEqualTo(Verdict.BAKE);
    }

    @Test
    void aMissingOrOldProfileCountsTheNeighboursAndSaysSo() {
        profile("P-old", 100, 2024);

        assertThat(scrap("none", 1).notices()).contains(BoardNotice.PROFILE_MISSING);
        assertThat(verdict(scrap("none", 1))).isEqualTo(Verdict.BAKE);
        assertThat(scrap("P-old", 1).notices()).contains(BoardNotice.PROFILE_OLD);
        assertThat(verdict(scrap("P-old", 1))).isEqualTo(Verdict.BAKE);
    }

    @Test
    void aPartMoreOnTheBoardIsNeverMilder() {
        profile("P-cool", 150, 2026);
        Verdict before = verdict(scrap("P-cool", 2));
        shop.tell(new Command.Receive(
                shop.header(0.5),
                "X-1",
                TestShop.number(Level.L5A),
                1,
                Optional.empty(),
                new Origin.Unknown(Optional.empty())));
        shop.tell(new Command.Mount(shop.header(1), "X-1", BOARD, "U9", Optional.empty()));

        assertThat(verdict(scrap("P-cool", 2))).isGreaterThanOrEqualTo(before);
        assertThat(verdict(scrap("none", 2))).isGreaterThanOrEqualTo(before);
    }

    /** What stays on and bears nobody knows how much makes the board's limit unknown. */
    @Test
    void anUnknownLimitOfWhatStaysOnIsTheBoards() {
        assertThat(type(Optional.empty()).bakeLimit()).isEmpty();
        assertThat(type(Optional.of(new Celsius(85))).bakeLimit()).contains(new Celsius(85));
    }

    @Test
    void aBoardThatNobodyEnteredIsNeverClear() {
        BoardAsk ask = new BoardAsk(
                "NOBODYS",
                "",
                Purpose.WHOLE_BOARD,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Duration.ZERO,
                TestShop.at(1));

        assertThat(verdict(shop.desk.boards().mayHeat(ask))).isEqualTo(Verdict.HOLD);
    }

    private Outcome<BoardEntry> note(int seen, double hours, List<Command> commands) {
        BoardNote note =
                new BoardNote(shop.header(hours), BOARD, seen, Kind.JOB_OPENED, Map.of(), Optional.empty(), commands);
        return shop.desk.boards().record(note, TestShop.at(hours));
    }

    private static List<Reason> reasons(Outcome<BoardEntry> outcome) {
        return outcome.fold(
                entry -> List.of(),
                refusals -> refusals.stream().map(one -> one.reason()).toList());
    }

    @Test
    void whoWritesSecondOnTheSamePageIsRefused() {
        assertThat(reasons(note(0, 1, List.of()))).isEmpty();
        assertThat(reasons(note(0, 2, List.of()))).containsExactly(Reason.BOARD_CHANGED_MEANWHILE);
        assertThat(reasons(note(1, 3, List.of()))).isEmpty();
    }

    /** Both saw the same page and press in the same moment: one step stands, the other person is told in words. */
    @Test
    void ofTwoWhoWriteInOneMomentOneIsRefusedInWords() {
        for (int round = 0; round < 10; round++) {
            int seen = round;
            List<BoardNote> notes = Stream.of("one", "two")
                    .map(who -> new BoardNote(
                            new Command.Header(who, TestShop.at(seen), "race-" + seen + who),
                            BOARD,
                            seen,
                            Kind.JOB_OPENED,
                            Map.of(),
                            Optional.empty(),
                            List.of()))
                    .toList();

            List<CompletableFuture<List<Reason>>> both = notes.stream()
                    .map(note -> CompletableFuture.supplyAsync(
                            () -> reasons(shop.desk.boards().record(note, TestShop.at(seen)))))
                    .toList();

            assertThat(both.stream().map(CompletableFuture::join).toList())
                    .containsExactlyInAnyOrder(List.of(), List.of(Reason.BOARD_CHANGED_MEANWHILE));
        }
    }

    @Test
    void whatAnItemRefusesIsWrittenNowhere() {
        shop.tell(shop.receive(0, "R-1", Level.L3));
        List<Command> commands = List.of(
                new Command.EnterUnknownExposure(shop.header(1), "R-1"),
                new Command.Mount(shop.header(1), "R-1", BOARD, "U1", Optional.empty()));
        int before = shop.desk.item("R-1", TestShop.at(2)).orElseThrow().lines().size();

        assertThat(reasons(note(0, 1, commands))).contains(Reason.MOUNT_ONE_PART);
        assertThat(shop.desk.item("R-1", TestShop.at(2)).orElseThrow().lines()).hasSize(before);
        assertThat(shop.desk.boards().board(BOARD, TestShop.at(2)).orElseThrow().entries())
                .isEmpty();
    }
}
