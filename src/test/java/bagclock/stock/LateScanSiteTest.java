package bagclock.stock;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.DemoShop;
import bagclock.HandClock;
import bagclock.OpenBag;
import bagclock.Site;
import bagclock.Visitor;
import bagclock.platform.Role;
import java.time.Instant;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Scans that were made without the network arrive later: once, with their own time, in their maker's name. */
class LateScanSiteTest {
    private static final HandClock CLOCK = new HandClock(Instant.parse("2026-03-12T14:20:00Z"));

    private static Site site;

    @BeforeAll
    static void start() {
        site = DemoShop.open(CLOCK);
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    private static String late(Visitor visitor, String... fields) {
        Document page = visitor.page("/stock");
        String[] all = java.util.Arrays.copyOf(fields, fields.length + 2);
        all[fields.length] = "csrf";
        all[fields.length + 1] = page.select("main input[name=csrf]").first().val();
        return visitor.post("/stock/late", all).body();
    }

    @Test
    void aLateScanIsWrittenOnceInItsMakersNameAtItsTime() {
        Visitor clerk = Visitor.ofDemo(site.port(), Role.CLERK);
        OpenBag.at(clerk, "W-1");
        String pass = clerk.page("/stock").select("#late").attr("data-pass");
        Visitor technician = Visitor.ofDemo(site.port(), Role.TECHNICIAN);

        String held = late(technician, "key", "late-a", "pass", pass, "code", "W-1", "held", "", "age", "601000");
        assertThat(held).contains("\"held\":\"W-1\"").contains("\"refused\":\"\"");
        for (int sending = 1; sending <= 2; sending++) {
            String moved =
                    late(technician, "key", "late-b", "pass", pass, "code", "DRY-5", "held", "W-1", "age", "600000");
            assertThat(moved).contains("\"held\":\"\"").contains("\"refused\":\"\"");
        }

        Document mine = clerk.page("/stock");
        assertThat(mine.select("ol li:contains(DRY-5)").text()).contains("W-1", "14:10");
        assertThat(mine.select("ol li:contains(DRY-5):contains(W-1)")).hasSize(1);
        assertThat(technician.page("/stock").select("ol li:contains(W-1)")).isEmpty();
    }

    @Test
    void aStrangersPassAPlaceWithoutAnItemAndAnOldPageAreRefused() {
        Visitor clerk = Visitor.ofDemo(site.port(), Role.CLERK);
        String pass = clerk.page("/stock").select("#late").attr("data-pass");
        assertThat(late(clerk, "key", "late-c", "pass", "late stolen", "code", "DRY-5", "held", "R-409", "age", "1"))
                .contains("too long ago");
        assertThat(late(clerk, "key", "late-d", "pass", pass, "code", "DRY-5", "held", "", "age", "1"))
                .contains("Scan an item first");
        assertThat(late(clerk, "key", "late-e", "pass", pass, "code", "DRY-5", "held", "R-409", "age", "700000000"))
                .contains("too long ago");
    }
}
