package bagclock.desk;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.Refusal;
import bagclock.core.heat.HeatPlan;
import bagclock.core.quantity.Celsius;
import bagclock.core.standard.Body;
import bagclock.core.standard.BodyKind;
import bagclock.core.standard.CarrierLimit;
import bagclock.core.standard.CellKey;
import bagclock.core.standard.Level;
import bagclock.core.standard.Part;
import bagclock.core.standard.Table;
import bagclock.ledger.BoardEntry;
import bagclock.ledger.BoardNotes;
import bagclock.platform.OnBothDatabases;
import bagclock.register.Change;
import bagclock.register.ComparedCell;
import bagclock.register.PartType;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * Which cells from memory have decided heats and bakes. Table 4-1 of J-STD-033D: the rows above 2.0 mm are from memory in
 * the shipped file, those to 1.4 mm were seen (S1, S2).
 */
class DecidedTest extends OnBothDatabases {
    private static final CellKey AT_125 = new CellKey(Table.USER_BAKE, ">2.0 to 4.5 mm, level 3", "125 C, >72 h");
    private static final CellKey AT_90 = new CellKey(Table.USER_BAKE, ">2.0 to 4.5 mm, level 3", "90 C, >72 h");
    private static final double EXPIRED = 400;

    private TestShop shop;

    @BeforeEach
    void openShop() {
        shop = new TestShop(database);
        Part thick = Part.of(Level.L3, Body.of(BodyKind.LEADLESS, "2.2")).in(new CarrierLimit.Of(new Celsius(125)));
        shop.desk.keep(new PartType("PN-THICK", "", "thick", new PartType.Source("", ""), thick), TestShop.change(0));
    }

    private void opened(String tag, String partNumber) {
        Origin pack = new Origin.DryPack(TestShop.START.minus(Duration.ofDays(30)), OptionalInt.empty());
        shop.tell(new Command.Receive(shop.header(0), tag, partNumber, 10, Optional.empty(), pack));
        shop.tell(shop.open(0.1, tag));
    }

    private void bake(String tag, double setPointC) {
        shop.tell(new Command.StartBake(
                shop.header(EXPIRED), tag, TestShop.OVEN, new Celsius(setPointC), Optional.empty()));
    }

    private Receipt heat(String tag) {
        HeatPlan plan = new HeatPlan(
                TestShop.at(EXPIRED), Duration.ofMinutes(5), Optional.empty(), Optional.empty(), Optional.empty());
        return shop.tell(new Command.Heat(shop.header(EXPIRED), tag, plan, Optional.empty()));
    }

    private Decided lately() {
        Instant end = TestShop.at(EXPIRED + 1);
        return shop.desk.decided(end.minus(Decided.LATELY), end);
    }

    @Test
    void aBakeThatWasBegunIsDecidedByTheCellThatItCountsBy() {
        opened("R-1", "PN-THICK");
        bake("R-1", 105);

        assertThat(lately().answers()).isEqualTo(1);
        assertThat(lately().cells()).contains(AT_90).doesNotContain(AT_125);
    }

    /** Heated all the same: the answer asked for one of its allowed bakes. */
    @Test
    void aHeatBeforeWhichABakeWasAskedForIsDecidedByItsBakes() {
        opened("R-1", "PN-THICK");
        heat("R-1");

        assertThat(lately().cells()).contains(AT_90, AT_125);
    }

    private void boardBake(String tag) {
        shop.board("B-1", "PN-THICK");
        Command.Header header = shop.header(EXPIRED);
        List<Command> onItems = tag.isEmpty()
                ? List.of()
                : List.of(new Command.StartBake(
                        new Command.Header(header.who(), header.happenedAt(), BoardEntry.itemKey("B-1", 1, 1)),
                        tag,
                        TestShop.OVEN,
                        new Celsius(105),
                        Optional.empty()));
        BoardNote note = new BoardNote(
                header,
                "B-1",
                0,
                BoardEntry.Kind.BAKE_STARTED,
                Map.of(BoardNotes.OVEN, TestShop.OVEN, BoardNotes.SET_POINT, "105"),
                Optional.empty(),
                onItems);
        List<Refusal> refused =
                shop.desk.boards().record(note, TestShop.at(EXPIRED)).fold(entry -> List.of(), refusals -> refusals);
        assertThat(refused).isEmpty();
    }

    /** Nobody gave these parts a tag: the board's entry says by which cell its bake counts for them. */
    @Test
    void aBakeOfABoardIsDecidedByTheCellsOfItsPartsWithoutAnItem() {
        boardBake("");

        assertThat(lately().answers()).isEqualTo(1);
        assertThat(lately().cells()).contains(AT_90).doesNotContain(AT_125);
    }

    /** The item's own entry and the board's are one bake. */
    @Test
    void aBakeOfABoardWithAnItemIsOneBake() {
        opened("R-1", "PN-THICK");
        shop.tell(new Command.Split(shop.header(1), "R-1", 1, "P-1"));
        shop.tell(new Command.Mount(shop.header(1), "P-1", "B-1", "U1", Optional.empty()));
        boardBake("P-1");

        assertThat(lately().answers()).isEqualTo(1);
        assertThat(lately().cells()).contains(AT_90);
    }

    @Test
    void whatWasTakenBackDecidedNothing() {
        opened("R-1", "PN-THICK");
        Receipt heated = heat("R-1");
        assertThat(lately().answers()).isEqualTo(1);

        shop.tell(new Command.TakeBack(shop.header(EXPIRED + 0.1), "R-1", heated.seq()));
        assertThat(lately().answers()).isZero();
        bake("R-1", 105);
        assertThat(lately().cells()).contains(AT_90).doesNotContain(AT_125);
    }

    @Test
    void aBakeOfABoardThatWasTakenBackDecidedNothing() {
        opened("R-1", "PN-THICK");
        shop.tell(new Command.Split(shop.header(1), "R-1", 1, "P-1"));
        shop.tell(new Command.Mount(shop.header(1), "P-1", "B-1", "U1", Optional.empty()));
        boardBake("P-1");
        assertThat(lately().answers()).isEqualTo(1);

        Instant at = TestShop.at(EXPIRED + 0.1);
        shop.desk.boards().takeBack(shop.header(EXPIRED + 0.1), "B-1", 1, at);

        assertThat(lately().answers()).isZero();
    }

    @Test
    void cellsThatWereSeenDoNotCount() {
        opened("R-1", TestShop.number(Level.L3));
        bake("R-1", 125);

        assertThat(lately().cells()).noneMatch(key -> key.table() == Table.USER_BAKE);
    }

    @Test
    void aComparedCellCountsNoLonger() {
        opened("R-1", "PN-THICK");
        bake("R-1", 125);
        assertThat(lately().cells()).contains(AT_125);

        Instant at = TestShop.at(EXPIRED + 0.5);
        ComparedCell cell =
                new ComparedCell(AT_125, Optional.of("48 h"), "Someone", LocalDate.parse("2026-03-18"), "2018");
        shop.desk.keep(List.of(cell), new Change(at, at, "engineer", 0));

        assertThat(lately().cells()).doesNotContain(AT_125);
    }

    /** The same scan twice within seconds is one bake, as before. */
    @Test
    void theCellKeepsARepeatedScanTheSame() {
        opened("R-1", "PN-THICK");
        bake("R-1", 125);

        Receipt again = shop.tell(new Command.StartBake(
                shop.header(EXPIRED + 0.0005), "R-1", TestShop.OVEN, new Celsius(125), Optional.empty()));

        assertThat(again.repeated()).isTrue();
    }
}
