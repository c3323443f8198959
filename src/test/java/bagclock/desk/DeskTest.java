package bagclock.desk;

import static bagclock.desk.TestShop.BENCH;
import static bagclock.desk.TestShop.DRY;
import static bagclock.desk.TestShop.OVEN;
import static bagclock.desk.TestShop.STORE;
import static bagclock.desk.TestShop.at;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bagclock.core.Reason;
import bagclock.core.exposure.ClockState;
import bagclock.core.heat.Answer;
import bagclock.core.heat.HeatPlan;
import bagclock.core.heat.Verdict;
import bagclock.core.quantity.Celsius;
import bagclock.core.standard.Level;
import bagclock.ledger.Act;
import bagclock.ledger.Item;
import bagclock.ledger.Notes;
import bagclock.platform.ChangedMeanwhile;
import bagclock.platform.OnBothDatabases;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class DeskTest extends OnBothDatabases {
    private TestShop shop;
    private Desk desk;

    @BeforeEach
    void openShop() {
        shop = new TestShop(database);
        desk = shop.desk;
    }

    private Answer answer(String tag, double hours) {
        return desk.mayHeat(tag, Optional.empty(), at(hours));
    }

    private int entries(String tag) {
        return desk.item(tag, at(500)).orElseThrow().lines().size();
    }

    @Test
    void anOpenedBagRunsOutAndABakeRestoresIt() {
        String tag = shop.opened(0, "R-1", Level.L3);
        assertThat(answer(tag, 100).verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(answer(tag, 170).verdict()).isEqualTo(Verdict.BAKE);

        shop.tell(new Command.StartBake(shop.header(170), tag, OVEN, new Celsius(125), Optional.empty()));
        assertThat(answer(tag, 171).verdict()).isEqualTo(Verdict.WAIT);
        shop.tell(new Command.EndBake(shop.header(180), tag, Optional.empty()));

        assertThat(answer(tag, 180).verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(desk.item(tag, at(180)).orElseThrow().item().where()).isEqualTo(Item.Where.FLOOR);
    }

    @Test
    void theDeclaredHeatUpIsTakenOffDoorToDoor() {
        String tag = shop.opened(0, "R-1", Level.L3);
        shop.tell(new Command.StartBake(shop.header(170), tag, OVEN, new Celsius(125), Optional.empty()));
        Receipt receipt = shop.tell(new Command.EndBake(shop.header(180), tag, Optional.empty()));

        Act.Happened act = (Act.Happened) desk.item(tag, at(180))
                .orElseThrow()
                .lines()
                .get(receipt.seq() - 1)
                .entry()
                .act();
        assertThat(act.event())
                .isEqualTo(new bagclock.core.exposure.Event.BakeEnded(at(180), Optional.of(Duration.ofMinutes(570))));
    }

    @Test
    void theSameKeyAgainChangesNothingAndGivesTheSameReceipt() {
        Command receive = shop.receive(0, "", Level.L3);
        Receipt first = shop.tell(receive);
        Receipt second = shop.tell(receive, at(5));

        assertThat(second).isEqualTo(new Receipt(first.tag(), 1, Optional.empty(), first.recordedAt(), true));
        assertThat(desk.items(ItemQuery.OPEN, at(5)).total()).isEqualTo(1);
    }

    @Test
    void aKeyOfAnotherCommandIsRefused() {
        String tag = shop.opened(0, "R-1", Level.L3);
        Command.Move move = shop.move(1, tag, STORE);
        shop.tell(move);

        assertThat(shop.refused(
                        new Command.Wet(
                                new Command.Header(
                                        "someone", at(1), move.header().key()),
                                tag),
                        at(2)))
                .containsExactly(Reason.KEY_USED_OTHERWISE);
    }

    @Test
    void twoEqualScansWithinThreeSecondsAreOne() {
        String tag = shop.opened(0, "R-1", Level.L3);
        Receipt first = shop.tell(shop.move(1, tag, DRY));
        Receipt second = shop.tell(shop.move(1 + 3.0 / 3600, tag, DRY));
        Receipt third = shop.tell(shop.move(1 + 3.5 / 3600 + 3.0 / 3600, tag, DRY));

        assertThat(second.repeated()).isTrue();
        assertThat(second.seq()).isEqualTo(first.seq());
        assertThat(third.repeated()).isFalse();
    }

    @Test
    void aForgottenScanChangesTheAnswer() {
        String tag = shop.opened(0, "R-1", Level.L3);
        shop.tell(shop.move(160, tag, STORE));
        assertThat(answer(tag, 200).verdict()).isEqualTo(Verdict.BAKE);

        shop.tell(shop.move(10, tag, DRY), at(200));

        assertThat(answer(tag, 200).verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(desk.item(tag, at(200)).orElseThrow().lines().get(3).late()).isTrue();
    }

    /** Common practice: bags stand on shelves and trolleys; the rules' refusal is about parts out of a closed bag. */
    @Test
    void aClosedBagIsPutSomewhereWithoutAnEventOfItsParts() {
        shop.tell(shop.receive(0, "R-1", Level.L3));
        shop.tell(shop.move(1, "R-1", STORE));
        shop.tell(shop.move(2, "R-1", DRY));
        assertThat(desk.item("R-1", at(3)).orElseThrow().item().placeCode()).contains(DRY);
        assertThat(desk.item("R-1", at(3)).orElseThrow().timeline().events()).hasSize(1);
        assertThat(answer("R-1", 3).verdict()).isEqualTo(Verdict.HOLD);
        assertThat(desk.items(ItemQuery.OPEN.at(DRY), at(3)).rows()).hasSize(1);

        assertThat(shop.refused(shop.open(1.5, "R-1"), at(4))).containsExactly(Reason.BAG_WAS_OPEN);
        shop.tell(shop.open(5, "R-1"));
        assertThat(desk.item("R-1", at(6)).orElseThrow().item().placeCode()).contains(BENCH);
        shop.tell(new Command.Reseal(shop.header(6), "R-1", true, true));
        assertThat(desk.item("R-1", at(6)).orElseThrow().item().placeCode()).contains(BENCH);
    }

    @Test
    void whatContradictsTheRecordIsRefused() {
        shop.tell(shop.receive(0, "R-1", Level.L3));
        assertThat(shop.refused(new Command.Split(shop.header(1), "R-1", 10, ""), at(1)))
                .containsExactly(Reason.BAG_IS_CLOSED);
        assertThat(shop.refused(shop.open(3, "R-1"), at(2))).containsExactly(Reason.HAPPENED_IN_FUTURE);
        assertThat(shop.refused(shop.open(-1, "R-1"), at(2))).containsExactly(Reason.BEFORE_RECEIPT);
        assertThat(shop.refused(shop.open(1, "R-9"), at(2))).containsExactly(Reason.ITEM_UNKNOWN);
        assertThat(shop.refused(shop.receive(1, "R-1", Level.L3), at(2))).containsExactly(Reason.TAG_TAKEN);
        shop.tell(shop.open(1, "R-1"));
        shop.tell(new Command.StartBake(shop.header(5), "R-1", OVEN, new Celsius(125), Optional.empty()));
        assertThat(shop.refused(shop.move(6, "R-1", STORE), at(6))).containsExactly(Reason.PART_IS_IN_OVEN);
        assertThat(shop.refused(shop.move(7, "R-1", OVEN), at(7))).contains(Reason.OVEN_NEEDS_A_BAKE);
        assertThat(entries("R-1")).isEqualTo(3);
    }

    @Test
    void everyReasonComesAtOnce() {
        Command.Receive bad = new Command.Receive(
                shop.header(0),
                "no tag!",
                "PN-?",
                0,
                Optional.of("sack"),
                new Origin.LeftDryPack(at(-5), "nowhere", ""));

        assertThat(shop.refused(bad, at(0)))
                .containsExactlyInAnyOrder(
                        Reason.TAG_MALFORMED,
                        Reason.PART_TYPE_UNKNOWN,
                        Reason.QUANTITY_NOT_POSITIVE,
                        Reason.CARRIER_UNKNOWN,
                        Reason.TEXT_MISSING,
                        Reason.PLACE_UNKNOWN);
    }

    @Test
    void correctingAndUnCorrectingGivesTheSameAnswer() {
        String tag = shop.opened(0, "R-1", Level.L3);
        shop.tell(shop.move(10, tag, DRY));
        Answer before = answer(tag, 190);

        Receipt correction =
                shop.tell(new Command.Correct(shop.header(190), tag, 3, shop.move(150, tag, DRY)), at(190));
        assertThat(answer(tag, 190)).isNotEqualTo(before);
        shop.tell(new Command.TakeBack(shop.header(190), tag, correction.seq()));

        assertThat(answer(tag, 190)).isEqualTo(before);
        assertThat(entries(tag)).isEqualTo(5);
    }

    @Test
    void theLastScanOfAPersonIsTakenBackOneByOne() {
        String tag = shop.opened(0, "R-1", Level.L3);
        shop.tell(shop.move(1, tag, STORE));
        shop.tell(shop.move(2, tag, DRY));

        shop.tell(new Command.TakeBackLast(shop.header(3)));
        assertThat(desk.item(tag, at(3)).orElseThrow().item().placeCode()).contains(STORE);
        shop.tell(new Command.TakeBackLast(shop.header(4)));
        assertThat(desk.item(tag, at(4)).orElseThrow().item().placeCode()).contains(BENCH);
        shop.tell(new Command.TakeBackLast(shop.header(5)));
        assertThat(answer(tag, 5).clock()).isEqualTo(ClockState.SEALED);
        shop.tell(new Command.TakeBackLast(shop.header(6)));
        assertThat(desk.item(tag, at(6)).orElseThrow().item().ended()).isTrue();
        assertThat(shop.refused(new Command.TakeBackLast(shop.header(7)), at(7)))
                .containsExactly(Reason.NOTHING_TO_TAKE_BACK);
    }

    @Test
    void splitThenAssessEqualsAssess() {
        String tag = shop.opened(0, "R-1", Level.L3);
        shop.tell(shop.move(20, tag, DRY));
        shop.tell(shop.move(30, tag, STORE));
        Receipt split = shop.tell(new Command.Split(shop.header(40), tag, 200, ""));
        String child = split.child().orElseThrow();

        assertThat(answer(child, 60)).isEqualTo(answer(tag, 60));
        assertThat(desk.item(tag, at(60)).orElseThrow().item().quantity()).isEqualTo(800);
        assertThat(desk.item(child, at(60)).orElseThrow().item().quantity()).isEqualTo(200);
    }

    @Test
    void aLaterCorrectionOfTheSharedPastReachesBoth() {
        String tag = shop.opened(0, "R-1", Level.L3);
        String child = shop.tell(new Command.Split(shop.header(40), tag, 200, ""))
                .child()
                .orElseThrow();
        shop.tell(shop.move(20, tag, DRY), at(50));

        assertThat(answer(child, 60)).isEqualTo(answer(tag, 60));
        assertThat(answer(child, 60).clock()).isEqualTo(ClockState.PAUSED);
        assertThat(desk.items(ItemQuery.OPEN, at(60)).rows())
                .extracting(ItemRow::clock)
                .containsExactly(ClockState.PAUSED, ClockState.PAUSED);
    }

    @Test
    void aSplitIsTakenBackInBothLedgersUnlessTheChildWentItsOwnWay() {
        String tag = shop.opened(0, "R-1", Level.L3);
        Receipt split = shop.tell(new Command.Split(shop.header(40), tag, 200, ""));
        String child = split.child().orElseThrow();
        shop.tell(shop.move(41, child, STORE));

        assertThat(shop.refused(new Command.TakeBack(shop.header(42), tag, split.seq()), at(42)))
                .containsExactly(Reason.OTHERS_REST_ON_IT);
        shop.tell(new Command.TakeBack(shop.header(43), child, 2));
        shop.tell(new Command.TakeBack(shop.header(44), tag, split.seq()));

        assertThat(desk.item(tag, at(60)).orElseThrow().item().quantity()).isEqualTo(1000);
        assertThat(desk.item(child, at(60)).orElseThrow().item().ended()).isTrue();
    }

    @Test
    void aJoinTakesTheWorseOfBoth() {
        String one = shop.opened(0, "R-1", Level.L3);
        String other = shop.opened(100, "R-2", Level.L3);
        shop.tell(new Command.Join(shop.header(120), other, List.of(one)));

        assertThat(answer(other, 130).floorLife().usedHours())
                .isEqualByComparingTo(answer(one, 130).floorLife().usedHours());
        assertThat(desk.item(other, at(130)).orElseThrow().item().quantity()).isEqualTo(2000);
        assertThat(desk.item(one, at(130)).orElseThrow().item().keeper()).contains(other);
        assertThat(shop.refused(shop.move(121, one, STORE), at(122))).containsExactly(Reason.ITEM_ENDED);
        shop.tell(shop.move(50, one, DRY), at(130));
        assertThat(answer(other, 130).floorLife().usedHours().doubleValue())
                .isCloseTo(answer(one, 130).floorLife().usedHours().doubleValue() + 10, within(1e-6));
    }

    private static org.assertj.core.data.Offset<Double> within(double margin) {
        return org.assertj.core.data.Offset.offset(margin);
    }

    @Test
    void aHeatKeepsTheAnswerThatItWasDoneOn() {
        String tag = shop.opened(0, "R-1", Level.L3);
        HeatPlan plan = new HeatPlan(
                at(10),
                Duration.ofMinutes(10),
                Optional.of(new Celsius(215)),
                Optional.of(HeatPlan.Purpose.PLACEMENT),
                Optional.of(true));
        shop.tell(new Command.Heat(shop.header(10), tag, plan, Optional.of(new Celsius(213))));

        Act.Happened act = (Act.Happened)
                desk.item(tag, at(11)).orElseThrow().lines().get(2).entry().act();
        assertThat(act.notes().get(Notes.ANSWER))
                .contains("\"verdict\":\"clear\"")
                .contains("INSIDE_FLOOR_LIFE");
        assertThat(act.notes().get(Notes.INPUTS)).hasSize(64);
        assertThat(act.notes().get(Notes.VERSIONS)).contains("part type PN-3=1");
    }

    @Test
    void usedUpPartsAreGone() {
        String tag = shop.opened(0, "R-1", Level.L3);
        shop.tell(new Command.UseUp(shop.header(5), tag, 400, "WO-7", List.of("B-1", "B-2")));
        assertThat(shop.refused(new Command.UseUp(shop.header(6), tag, 700, "WO-8", List.of()), at(6)))
                .containsExactly(Reason.QUANTITY_TOO_LARGE);
        shop.tell(new Command.UseUp(shop.header(7), tag, 600, "WO-8", List.of()));

        assertThat(desk.item(tag, at(8)).orElseThrow().item().where()).isEqualTo(Item.Where.GONE);
        assertThat(shop.refused(shop.move(9, tag, STORE), at(9))).containsExactly(Reason.ITEM_ENDED);
    }

    @Test
    void aPartIsFollowedOntoABoardAndOff() {
        String tag = shop.opened(0, "R-1", Level.L3);
        assertThat(shop.refused(new Command.Mount(shop.header(1), tag, "B-1", "U7", Optional.empty()), at(1)))
                .containsExactly(Reason.MOUNT_ONE_PART);
        String one =
                shop.tell(new Command.Split(shop.header(1), tag, 1, "")).child().orElseThrow();
        shop.tell(new Command.Mount(shop.header(2), one, "B-1", "U7", Optional.empty()));

        assertThat(desk.onBoard("B-1")).extracting(Item::tag).containsExactly(one);
        assertThat(desk.onBoard("B-1").get(0).location()).contains("U7");
        shop.tell(new Command.Remove(shop.header(3), one, Optional.empty()));
        assertThat(desk.onBoard("B-1")).isEmpty();
        assertThat(shop.refused(new Command.Remove(shop.header(4), one, Optional.empty()), at(4)))
                .containsExactly(Reason.NOT_MOUNTED);
    }

    @Test
    void aCorrectedLevelChangesTheAnswerAndTheList() {
        String tag = shop.opened(0, "R-1", Level.L3);
        assertThat(answer(tag, 100).verdict()).isEqualTo(Verdict.CLEAR);
        var stricter = TestShop.type(Level.L4);
        desk.keep(
                new bagclock.register.PartType(
                        TestShop.number(Level.L3), "", "corrected", stricter.source(), stricter.part()),
                TestShop.change(1));

        assertThat(answer(tag, 100).verdict()).isEqualTo(Verdict.BAKE);
        assertThat(desk.items(ItemQuery.expiringWithin(Duration.ZERO), at(100)).rows())
                .extracting(row -> row.item().tag())
                .containsExactly(tag);
        assertThatThrownBy(() -> desk.keep(stricter, TestShop.change(5))).isInstanceOf(ChangedMeanwhile.class);
    }

    @Test
    void listsFilterSortAndCutIntoPages() {
        for (int i = 1; i <= 12; i++) {
            shop.opened(i, "R-" + i, Level.L3);
        }
        shop.tell(shop.receive(0, "S-1", Level.L5));

        assertThat(desk.items(ItemQuery.OPEN.page(1, 5), at(20)).rows())
                .extracting(row -> row.item().tag())
                .containsExactly("R-6", "R-7", "R-8", "R-9", "R-10");
        assertThat(desk.items(ItemQuery.OPEN.in(Item.Where.BAG), at(20)).rows())
                .extracting(row -> row.item().tag())
                .containsExactly("S-1");
        assertThat(desk.items(ItemQuery.OPEN.with("r-1").by(ItemQuery.Sort.ENDS_AT, true), at(20))
                        .rows())
                .extracting(row -> row.item().tag())
                .containsExactly("R-12", "R-11", "R-10", "R-1");
        assertThat(desk.items(ItemQuery.expiringWithin(Duration.ofHours(150)), at(20))
                        .total())
                .isEqualTo(1);
    }

    @Test
    void aPartWithoutADryPackIsUnknownUnlessTheClerkSaysHowHeKnows() {
        shop.tell(new Command.Receive(
                shop.header(0), "R-1", "PN-3", 5, Optional.of("tray 125"), new Origin.Unknown(Optional.of(BENCH))));
        shop.tell(new Command.Receive(
                shop.header(0),
                "R-2",
                "PN-3",
                5,
                Optional.empty(),
                new Origin.LeftDryPack(at(-4), BENCH, "supplier's slip")));

        assertThat(answer("R-1", 1).verdict()).isEqualTo(Verdict.BAKE);
        assertThat(answer("R-2", 1).verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(answer("R-2", 1).floorLife().usedHours()).isEqualByComparingTo("5");
    }

    @Test
    void everySealedPackKeepsItsShelfLife() {
        Command.Receive receive = new Command.Receive(
                shop.header(0), "R-1", "PN-3", 5, Optional.empty(), new Origin.DryPack(at(-24), OptionalInt.of(24)));
        shop.tell(receive);

        assertThat(desk.item("R-1", at(1)).orElseThrow().timeline().events())
                .containsExactly(new bagclock.core.exposure.Event.Sealed(at(-24), OptionalInt.of(24)));
    }
}
