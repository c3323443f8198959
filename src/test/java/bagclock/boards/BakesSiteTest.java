package bagclock.boards;

import static bagclock.boards.CaseShop.bakeAt;
import static bagclock.boards.CaseShop.sent;
import static bagclock.boards.CaseShop.verdict;
import static org.assertj.core.api.Assertions.assertThat;

import bagclock.Visitor;
import bagclock.core.exposure.PartHistory;
import bagclock.core.exposure.Tally;
import bagclock.desk.Command;
import bagclock.ledger.Item;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.Optional;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Bakes of a board outside a job, and the way back from the newest entry. Bake times: J-STD-033D, table 4-1, level 3 to
 * 1.4 mm, more than 72 h over: 9 h at 125 C, 33 h at 90 C and at most 5 %RH.
 */
class BakesSiteTest {
    private static CaseShop shop;

    @BeforeAll
    static void open() {
        shop = new CaseShop();
        shop.part("L3-12", "3", "1.2", 260);
    }

    @AfterAll
    static void close() {
        shop.close();
    }

    private static String expiredBoard(String serial, double bearsC) {
        shop.board(serial, bearsC, "L3-12");
        shop.mounted("P-" + serial, "L3-12", 1000, serial, "U1");
        return "/boards/" + serial;
    }

    private static HttpResponse<String> into(Visitor visitor, String board, String celsius, String... more) {
        String[] fields = new String[6 + more.length];
        System.arraycopy(
                new String[] {"oven", CaseShop.OVEN, "setPoint", celsius, "bakeAt", shop.now()}, 0, fields, 0, 6);
        System.arraycopy(more, 0, fields, 6, more.length);
        return visitor.submit(board + "/bake", board + "/bake", fields);
    }

    private static HttpResponse<String> out(Visitor visitor, String board, String hours) {
        return visitor.submit(board + "/bake", board + "/bake/end", "hours", hours, "at", shop.now());
    }

    private static void bake(String board, String celsius, int hours, String... more) {
        sent(into(shop.technician(), board, celsius, more));
        shop.clock.passes(Duration.ofHours(hours));
        sent(out(shop.technician(), board, Integer.toString(hours)));
    }

    private static String heatOfAll(String board) {
        return verdict(shop.technician().page(board + "/heat?profile=none"));
    }

    private static String oven() {
        Document page = shop.technician().page("/ovens");
        return page.select("article:contains(" + CaseShop.OVEN + ")").text();
    }

    /** No part of it has an item: its own ledger alone says that it takes a place. */
    @Test
    void aBoardWithoutItemsTakesAPlaceInTheOvenUntilItIsOut() {
        shop.board("B-bare", 125, "L3-12");
        String board = "/boards/B-bare";
        String free = oven().replaceAll(".*(Free: \\d+ of \\d+).*", "$1");

        sent(into(shop.technician(), board, "105"));
        assertThat(oven()).contains("Board B-bare is in it.", "At 105 °C since").doesNotContain(free);
        assertThat(shop.technician().page("/ovens/plan").text()).contains("B-bare");
        shop.clock.passes(Duration.ofHours(1));
        sent(out(shop.technician(), board, "1"));
        assertThat(oven()).doesNotContain("B-bare").contains(free);

        sent(shop.technician().submit(board, board + "/take-back"));
        assertThat(oven()).contains("Board B-bare is in it.");
        sent(out(shop.technician(), board, "1"));
    }

    /** The planner's list of runs that ended. */
    private static Document runs() {
        return shop.technician().page("/ovens/runs");
    }

    private static String baked(String board) {
        return shop.technician()
                .page(board)
                .select("td[data-label='Baked above 90 °C']")
                .text();
    }

    @Test
    void aBakeOutsideAJobIsAskedRecordedAndCountsForPartAndTimer() {
        String board = expiredBoard("BK-1", 110);
        Document asked = shop.technician().page(board + "/bake");
        assertThat(verdict(asked)).isEqualTo("Bake");
        assertThat(asked.select("section[aria-labelledby=borne-title]").text())
                .contains("The bare board bears", "110", "Parts that bear 125");
        assertThat(asked.select(".caution").text()).contains("batteries", "hot", "maker's label");

        sent(into(shop.technician(), board, "90"));
        assertThat(heatOfAll(board)).isEqualTo("Wait");
        assertThat(shop.desk
                        .item("P-BK-1", shop.clock.instant())
                        .orElseThrow()
                        .item()
                        .where())
                .isEqualTo(Item.Where.OVEN);
        shop.clock.passes(Duration.ofHours(33));
        sent(out(shop.technician(), board, "33"));

        assertThat(heatOfAll(board)).isEqualTo("Clear");
        assertThat(shop.technician().page(board).select("main").text())
                .contains("Into oven CASE-OVEN at 90 °C", "Out of the oven, 33 h at temperature", "Rework technician");
        assertThat(baked(board)).isEqualTo("0 h");
        assertThat(runs().select("tr:contains(Board BK-1)").text()).contains("90 °C", "33 h", "Without proof");
        shop.clock.passes(Duration.ofHours(13));
        assertThat(shop.technician().page(board + "/heat?profile=none").text())
                .contains("The time for use after the board bake ran out");
    }

    /** Exactly 90 C does not count against the 96 h; above it does. */
    @Test
    void hoursAbove90CountOnTheBoardAsOnItsItem() {
        String board = expiredBoard("BK-2", 125);
        bake(board, "125", 9);

        assertThat(heatOfAll(board)).isEqualTo("Clear");
        assertThat(baked(board)).isEqualTo("9 h");
        PartHistory item = shop.desk.evidence("P-BK-2", shop.clock.instant()).history();
        assertThat(Tally.of(item.part(), item.timeline(), shop.clock.instant()).bakedAbove90())
                .isEqualTo(Duration.ofHours(9));
    }

    @Test
    void whatWasMeasuredInTheOvenCountsInPlaceOfWhatItHolds() {
        String damp = expiredBoard("BK-3", 110);
        bake(damp, "90", 33, "humidity", "8");
        assertThat(heatOfAll(damp)).isEqualTo("Bake");

        String dry = expiredBoard("BK-4", 110);
        bake(dry, "90", 33, "humidity", "4,5");
        assertThat(heatOfAll(dry)).isEqualTo("Clear");
    }

    @Test
    void hotterThanIsKnownToBeBorneIsTakenOnlyWhenItIsSaidTwice() {
        String board = expiredBoard("BK-5", 105);
        HttpResponse<String> slip = into(shop.technician(), board, "125");
        Document page = Jsoup.parse(slip.body());

        assertThat(slip.statusCode()).isEqualTo(422);
        assertThat(page.select("#setPoint-error").text()).contains("not known to bear this");
        assertThat(page.select("input[name=anyway]")).hasSize(1);
        assertThat(shop.technician().page(board + "/bake").select("input[name=anyway]"))
                .isEmpty();
        sent(into(shop.technician(), board, "125", "anyway", "yes"));
        assertThat(shop.technician().page(board).select("main").text()).contains("125 °C");
    }

    @Test
    void moreHoursThanItWasInTheOvenAreRefused() {
        String board = expiredBoard("BK-6", 125);
        sent(into(shop.technician(), board, "125"));
        shop.clock.passes(Duration.ofHours(2));

        HttpResponse<String> refused = out(shop.technician(), board, "9");

        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(Jsoup.parse(refused.body()).select("#hours-error").text()).contains("2 h only");
    }

    @Test
    void whoIsSecondAtTheOvenIsToldWhoWasFirst() {
        String board = expiredBoard("BK-7", 125);
        Document seen = shop.engineer().page(board + "/bake");
        Visitor second = shop.engineer();
        String csrf =
                second.page(board + "/bake").select("input[name=csrf]").first().val();
        sent(into(shop.technician(), board, "125"));

        HttpResponse<String> late = second.post(
                board + "/bake",
                "csrf",
                csrf,
                "seen",
                seen.select("input[name=seen]").val(),
                "key",
                "a-key-of-the-second-person",
                "oven",
                CaseShop.OVEN,
                "setPoint",
                "125",
                "bakeAt",
                shop.now());

        assertThat(late.statusCode()).isEqualTo(422);
        assertThat(Jsoup.parse(late.body()).select("[role=alert]").text()).contains("in an oven already");
        assertThat(shop.technician().page(board).select(".trail li")).hasSize(1);
    }

    private static HttpResponse<String> elsewhere(String page, String action, String hours) {
        return shop.technician()
                .submit(
                        page,
                        action + "/elsewhere",
                        "elsewhereOven",
                        "The coating shop's",
                        "elsewhereC",
                        "125",
                        "elsewhereHours",
                        hours,
                        "elsewhereAt",
                        shop.now());
    }

    /** On the page of the bake and in a job: it dries nothing, its hours count, and the page says so. */
    @Test
    void aBakeInAnOvenThatIsNotEnteredCountsTowardsTheLimitsOnly() {
        String board = expiredBoard("EW-1", 125);
        assertThat(sent(elsewhere(board + "/bake", board + "/bake", "40"))).endsWith("done=baked");

        assertThat(heatOfAll(board)).isEqualTo("Bake");
        assertThat(baked(board)).isEqualTo("40 h");
        assertThat(shop.technician().page(board).select(".trail").text())
                .contains("The coating shop's: 40 h at 125 °C as told; dries nothing", "Rework technician");
        shop.clock.passes(Duration.ofHours(60));
        String job = shop.job(shop.technician(), "EW-1", "U1", OldPart.REUSE);
        assertThat(sent(elsewhere(job, job, "50"))).startsWith(job);
        Document spent = shop.technician().page(job + "?profile=none");
        assertThat(bakeAt(spent, 125)).doesNotContain("Allowed");
        assertThat(bakeAt(spent, 90)).endsWith("Allowed");
        sent(takeBack(job, board));
        assertThat(bakeAt(shop.technician().page(job + "?profile=none"), 125)).endsWith("Allowed");
        assertThat(elsewhere(job, job, "70").statusCode()).isEqualTo(422);
    }

    @Test
    void anItemTellsOfSuchABakeOnItsOwnPage() {
        String tag = shop.item("EW-P", "L3-12", 20);
        String form = "/items/" + tag + "/acts/elsewhere";
        Document asked = shop.technician().page(form);
        assertThat(asked.select("main").text()).contains("dries nothing", "an engineer enters the oven here first");

        sent(shop.technician()
                .submit(form, form, "oven", "The coating shop's", "degrees", "80", "hours", "4", "at", shop.now()));

        Document item = shop.technician().page("/items/" + tag);
        assertThat(item.select("main").text())
                .contains("The coating shop's: 4 h at 80 °C as told", "Rework technician")
                .doesNotContain("demo-technician");
        assertThat(verdict(shop.technician().page("/bench?purpose=placement&minutes=5&code=" + tag)))
                .isEqualTo("Bake");
    }

    private static HttpResponse<String> takeBack(String page, String board) {
        return shop.technician().submit(page, board + "/take-back");
    }

    /** Nine hours were told as ninety minutes: taken back on board and item, and told anew for the same moment. */
    @Test
    void aWrongTimeAtTemperatureIsTakenBackAndToldAnew() {
        String board = expiredBoard("TB-1", 125);
        sent(into(shop.technician(), board, "125"));
        shop.clock.passes(Duration.ofHours(9));
        String end = shop.now();
        sent(out(shop.technician(), board, "1,5"));
        assertThat(heatOfAll(board)).isEqualTo("Bake");
        shop.clock.passes(Duration.ofMinutes(30));

        sent(takeBack(board + "/bake", board));

        assertThat(heatOfAll(board)).isEqualTo("Wait");
        assertThat(runs().text()).doesNotContain("Board TB-1");
        Document page = shop.technician().page(board);
        assertThat(page.select(".trail").text())
                .contains("1.5 h at temperature. Taken back, does not count.", "Taken back: Out of the oven, 1.5 h");
        sent(shop.technician().submit(board + "/bake", board + "/bake/end", "hours", "9", "at", end));
        assertThat(heatOfAll(board)).isEqualTo("Clear");
        assertThat(baked(board)).isEqualTo("9 h");
    }

    /** A removal wrote on the part and gave it a tag; all of it is undone, and the job stands before the heat again. */
    @Test
    void aHeatOfAJobIsTakenBackWithAllThatItWroteOnItems() {
        String board = expiredBoard("TB-2", 125);
        bake(board, "125", 9);
        Visitor technician = shop.technician();
        String job = shop.job(technician, "TB-2", "U1", OldPart.REUSE);
        shop.step(technician, job);
        String record = technician
                .page(shop.heat(technician, job, "?profile=none"))
                .select("a[href~=/heats/]")
                .attr("href");
        assertThat(shop.desk
                        .item("P-TB-2", shop.clock.instant())
                        .orElseThrow()
                        .item()
                        .board())
                .isEmpty();

        assertThat(sent(takeBack(job, board))).startsWith(job);

        Document page = technician.page(job);
        assertThat(page.select(".steps [aria-current=step]").text()).contains("Remove");
        assertThat(shop.desk
                        .item("P-TB-2", shop.clock.instant())
                        .orElseThrow()
                        .item()
                        .board())
                .contains("TB-2");
        assertThat(technician
                        .page(board)
                        .select("td[data-label='Heats above 200 °C']")
                        .text())
                .startsWith("0 of");
        assertThat(technician.page(record).select("main").text()).contains("Taken back by Rework technician");
    }

    /** A part was split off a reel and placed: it goes back to the reel. */
    @Test
    void aPlacementIsTakenBackAndThePartIsBackOnItsReel() {
        shop.board("TB-3", 125, "L3-12");
        shop.item("R-TB-3", "L3-12", 2);
        Visitor technician = shop.technician();
        String job = shop.job(technician, "TB-3", "U1", OldPart.NONE);
        shop.step(technician, job);
        shop.step(technician, job);
        shop.heat(technician, job, "?profile=none&part=R-TB-3");
        assertThat(shop.desk.onBoard("TB-3")).hasSize(1);

        sent(takeBack(job, "/boards/TB-3"));

        assertThat(shop.desk.onBoard("TB-3")).isEmpty();
        assertThat(shop.desk
                        .item("R-TB-3", shop.clock.instant())
                        .orElseThrow()
                        .item()
                        .where())
                .isEqualTo(Item.Where.FLOOR);
    }

    @Test
    void aJobThatWasOpenedBySlipIsTakenBack() {
        shop.board("TB-4", 125, "L3-12");
        Visitor technician = shop.technician();
        String job = sent(technician.submit(
                "/boards/TB-4", "/boards/TB-4/jobs", "location", "U1", "why", "Another one.", "fate", "scrap"));

        assertThat(sent(takeBack(job, "/boards/TB-4"))).startsWith("/boards/TB-4?");

        assertThat(technician.get(job).statusCode()).isEqualTo(404);
        assertThat(technician.page("/boards/TB-4").select("main").text()).contains("No job yet.");
        assertThat(technician.page("/boards/TB-4").select("form[action$=/take-back]"))
                .isEmpty();
    }

    /** What was told of the item since then is not lost silently. */
    @Test
    void whatOthersRestOnIsNotTakenBack() {
        String board = expiredBoard("TB-5", 125);
        sent(into(shop.technician(), board, "125"));
        shop.clock.passes(Duration.ofHours(9));
        shop.tell(new Command.EndBake(shop.header(shop.clock.instant()), "P-TB-5", Optional.of(Duration.ofHours(9))));

        HttpResponse<String> refused = takeBack(board, board);

        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(Jsoup.parse(refused.body()).select("[role=alert]")).isNotEmpty();
        assertThat(shop.technician().page(board).select(".trail li")).hasSize(1);
    }

    /** A release that is taken back holds no more, and the list of releases says so. */
    @Test
    void aReleaseIsTakenBackAndStaysInTheListMarked() {
        String board = expiredBoard("TB-6", 125);
        Visitor engineer = shop.engineer();
        String ask = board + "/heat?profile=none";
        sent(engineer.submit(ask, board + "/heat/release", "reason", "Weighed dry."));
        assertThat(engineer.page(ask).select("#board-answer .caution")).isNotEmpty();

        sent(takeBack(board, board));

        assertThat(engineer.page(ask).select("#board-answer .caution")).isEmpty();
        assertThat(engineer.page("/boards/releases").select("tr:contains(TB-6)").text())
                .contains("Weighed dry.", "taken back");
    }
}
