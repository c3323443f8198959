package bagclock.stock;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.DemoShop;
import bagclock.HandClock;
import bagclock.Site;
import bagclock.Visitor;
import bagclock.desk.Command;
import bagclock.desk.Desk;
import bagclock.desk.Origin;
import bagclock.ledger.Notes;
import bagclock.platform.Database;
import bagclock.platform.Engine;
import bagclock.platform.Role;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Which boards got parts of a lot: the whole list of serial numbers can be printed (a situation met in practice). */
class LotSiteTest {
    private static final HandClock CLOCK = new HandClock(Instant.parse("2026-03-12T14:20:00Z"));
    private static final String PART = "SNR-1003";
    private static final String BENCH = "BENCH-1";

    private static Site site;
    private static Database database;
    private static Desk desk;
    private static int keys;

    @BeforeAll
    static void start() {
        String url = Engine.H2.freshUrl();
        site = DemoShop.open(url, CLOCK);
        database = Database.open(url);
        desk = DemoShop.desk(database);
        received("LOT-A", "77-A");
        received("LOT-B", "77-A");
        received("LOT-C", "78");
        tell(new Command.Split(header(), "LOT-A", 5, "LOT-A1"));
        tell(new Command.UseUp(header(), "LOT-A1", 2, "WO-1", List.of("BRD-9", "BRD-2")));
        tell(new Command.UseUp(header(), "LOT-B", 1, "WO-2", List.of()));
        tell(new Command.Join(header(), "LOT-C", List.of("LOT-A1")));
        tell(new Command.UseUp(header(), "LOT-C", 1, "WO-3", List.of("=BRD-7")));
        tell(new Command.Split(header(), "LOT-B", 1, "LOT-B1"));
        tell(new Command.Mount(header(), "LOT-B1", "BRD-5", "U3", Optional.empty()));
        tell(new Command.Remove(header(), "LOT-B1", Optional.empty()));
    }

    @AfterAll
    static void stop() {
        database.close();
        site.close();
    }

    private static Command.Header header() {
        CLOCK.passes(Duration.ofSeconds(10));
        keys++;
        return new Command.Header("clerk", CLOCK.instant(), "lot-" + keys);
    }

    private static void tell(Command command) {
        desk.handle(command, CLOCK.instant()).fold(receipt -> receipt, refusals -> {
            throw new AssertionError("refused: " + refusals);
        });
    }

    private static void received(String tag, String lot) {
        Command.Header header = header();
        Origin origin = new Origin.LeftDryPack(header.happenedAt(), BENCH, "stamped on the bag");
        tell(new Command.Receive(header, tag, PART, 20, Optional.empty(), origin, Map.of(Notes.LOT, lot)));
    }

    private static Visitor clerk() {
        return Visitor.ofDemo(site.port(), Role.CLERK);
    }

    private static String line(Document page, String first) {
        return page.select("tr:has(th:containsOwn(" + first + "))").text();
    }

    @Test
    void everyBoardOfTheLotIsListedWhicheverItemItCameFrom() {
        Document page = clerk().page("/items/LOT-A/lot");

        assertThat(page.select("h1").text()).isEqualTo("Maker's lot 77-A");
        assertThat(line(page, "BRD-9")).contains("LOT-A1", "WO-1", "used up for it");
        assertThat(line(page, "BRD-2")).contains("LOT-A1");
        assertThat(line(page, "BRD-5")).contains("U3", "LOT-B1", "was on it, taken off");
        assertThat(line(page, "=BRD-7")).contains("LOT-C", "WO-3");
        assertThat(page.select("section[aria-labelledby=items-title] th a").eachText())
                .containsExactly("LOT-A", "LOT-A1", "LOT-B", "LOT-B1", "LOT-C");
    }

    @Test
    void aUseWithoutASerialNumberIsNamedAsMissing() {
        Document page = clerk().page("/items/LOT-B1/lot");

        assertThat(page.select(".caution").text()).contains("Uses that name no board: 1.");
        assertThat(line(page, "no serial number told")).contains("LOT-B", "WO-2");
    }

    /** Parts of another lot that were in the item before are not this lot's. */
    @Test
    void anotherLotDoesNotListBoardsOfBefore() {
        Document page = clerk().page("/items/LOT-C/lot");

        assertThat(page.select("h1").text()).isEqualTo("Maker's lot 78");
        assertThat(page.select("main").text()).contains("=BRD-7").doesNotContain("BRD-9");
    }

    @Test
    void theListIsATableForOtherProgramsToo() {
        HttpResponse<String> csv = clerk().get("/items/LOT-A/lot/csv");

        assertThat(csv.headers().firstValue("Content-Type")).contains("text/csv; charset=utf-8");
        assertThat(csv.body().lines().toList())
                .first()
                .isEqualTo("kind,board_serial,location,item,part_type,lot,quantity_left,whereabouts,work_order,at");
        assertThat(csv.body())
                .contains("board,BRD-9,,LOT-A1,SNR-1003,77-A,,USED,WO-1,")
                .contains("use,,,LOT-B,SNR-1003,77-A,,USED,WO-2,")
                .contains("board,'=BRD-7,,LOT-C")
                .contains("item,,,LOT-B,SNR-1003,77-A,18,FLOOR,,");
    }

    @Test
    void anItemWithoutALotNumberHasItsOwnFamily() {
        Document page = clerk().page("/items/R-409/lot");

        assertThat(page.select("h1").text()).startsWith("What came in as ");
        assertThat(clerk().page("/items/R-409").select("a[href=/items/R-409/lot]"))
                .hasSize(1);
        assertThat(clerk().get("/items/NONE/lot").statusCode()).isEqualTo(404);
    }
}
