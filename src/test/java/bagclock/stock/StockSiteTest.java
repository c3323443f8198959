package bagclock.stock;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.DemoShop;
import bagclock.HandClock;
import bagclock.Site;
import bagclock.Visitor;
import bagclock.platform.Role;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The clerk's flow over HTTP, in the demonstration's shop. */
class StockSiteTest {
    private static final HandClock CLOCK = new HandClock(Instant.parse("2026-03-12T14:20:00Z"));
    private static final String PART = "SNR-1003";

    private static Site site;

    @BeforeAll
    static void start() {
        site = DemoShop.open(CLOCK);
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    private static Visitor clerk() {
        return Visitor.ofDemo(site.port(), Role.CLERK);
    }

    private static HttpResponse<String> act(Visitor clerk, String tag, String act, String... fields) {
        String path = "/items/" + tag + "/acts/" + act;
        return clerk.submit(path, path, fields);
    }

    private static String receive(Visitor clerk, String tag) {
        HttpResponse<String> answer = clerk.submit(
                "/stock/receive",
                "/stock/receive",
                "type",
                PART,
                "quantity",
                "40",
                "tag",
                tag,
                "carrier",
                "",
                "origin",
                "pack",
                "sealedAt",
                "2026-02-01T00:00",
                "at",
                "2026-02-03T09:00");
        assertThat(answer.statusCode()).isEqualTo(303);
        return Visitor.target(answer);
    }

    private static HttpResponse<String> open(Visitor clerk, String tag, String at) {
        return act(clerk, tag, "open", openFields(at).toArray(String[]::new));
    }

    private static List<String> openFields(String at) {
        return new ArrayList<>(
                List.of("spot5", "dry", "spot10", "dry", "spot60", "dry", "bag", "sound", "place", "LINE", "at", at));
    }

    private static String verdict(Visitor clerk, String tag) {
        return clerk.page("/items/" + tag).select("section.answer .call span").text();
    }

    @Test
    void aBagIsReceivedOpenedAndItsLifeEndsWhenTheOpeningWasEarlier() {
        Visitor clerk = clerk();
        assertThat(receive(clerk, "N-1")).startsWith("/items/N-1");
        assertThat(verdict(clerk, "N-1")).isEqualTo("Hold");
        assertThat(open(clerk, "N-1", "2026-03-12T10:00").statusCode()).isEqualTo(303);
        assertThat(verdict(clerk, "N-1")).isEqualTo("Clear");

        List<String> earlier = openFields("2026-02-10T10:00");
        String path = "/items/N-1/acts/open";
        clerk.submit(path + "?corrects=2", path, earlier.toArray(String[]::new));
        assertThat(verdict(clerk, "N-1")).isEqualTo("Bake");
        assertThat(clerk.page("/items/N-1").select("table").text()).contains("corrects entry 2");
    }

    @Test
    void aRefusedFormSaysWhyBesideTheFieldAndKeepsWhatWasEntered() {
        Visitor clerk = clerk();
        receive(clerk, "N-2");
        HttpResponse<String> answer =
                act(clerk, "N-2", "open", "spot5", "dry", "place", "LINE", "at", "2030-01-01T00:00");
        assertThat(answer.statusCode()).isEqualTo(422);
        Document page = Jsoup.parse(answer.body());
        assertThat(page.select("#bag-error").text()).isNotEmpty();
        assertThat(page.select("#at-error").text()).contains("future");
        assertThat(page.select("input[name=spot5][value=dry]").hasAttr("checked"))
                .isTrue();
        assertThat(verdict(clerk, "N-2")).isEqualTo("Hold");
    }

    @Test
    void aRefusalOfTheDeskIsSaidAndChangesNothing() {
        Visitor clerk = clerk();
        receive(clerk, "N-3");
        HttpResponse<String> answer =
                act(clerk, "N-3", "reseal", "desiccant", "yes", "card", "yes", "at", "2026-03-12T10:00");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(Jsoup.parse(answer.body()).select("[role=alert]").text()).contains("Nothing was changed");
        assertThat(verdict(clerk, "N-3")).isEqualTo("Hold");
    }

    @Test
    void anItemAndAPlaceAreScannedAndTheScanIsTakenBack() {
        Visitor clerk = clerk();
        receive(clerk, "N-4");
        open(clerk, "N-4", "2026-03-12T10:00");
        CLOCK.passes(Duration.ofSeconds(5));
        Document held =
                Jsoup.parse(clerk.submit("/stock", "/stock", "code", "N-4").body());
        assertThat(held.select("input[name=held]").val()).isEqualTo("N-4");
        String key =
                held.select("form[data-scan][action=/stock] input[name=key]").val();
        String token = held.select("form[action=/stock] input[name=csrf]").val();
        HttpResponse<String> moved = clerk.post("/stock", "csrf", token, "key", key, "held", "N-4", "code", "DRY-5");
        assertThat(Jsoup.parse(moved.body()).select("[role=status]").text()).contains("N-4 is now at");
        assertThat(clerk.page("/items/N-4").select("dl").text())
                .contains("DRY-5")
                .contains("resting");

        HttpResponse<String> back = clerk.submit("/stock", "/stock/take-back");
        assertThat(Jsoup.parse(back.body()).select("[role=status]").text()).contains("Taken back");
        assertThat(clerk.page("/items/N-4").select("dl").text()).contains("LINE");
    }

    @Test
    void anUnknownCodeChangesNothing() {
        HttpResponse<String> answer = clerk().submit("/stock", "/stock", "code", "<b>nope</b>");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).doesNotContain("<b>nope</b>").contains("&lt;b&gt;nope&lt;/b&gt;");
    }

    @Test
    void theListKeepsItsStateInTheAddress() {
        Document list = clerk().page("/items?text=SNR&sort=PLACE&down=1");
        assertThat(list.select("tbody tr"))
                .isNotEmpty()
                .allMatch(row -> row.text().contains("SNR"));
        assertThat(list.select("th[aria-sort=descending]").text()).isEqualTo("Place");
        assertThat(list.select("th a[href*='text=SNR']")).hasSize(4);
    }

    @Test
    void everyFormOfAnItemIsShown() {
        Visitor clerk = clerk();
        receive(clerk, "N-5");
        for (String act :
                List.of("open", "move", "reseal", "split", "join", "carrier", "mount", "use-up", "wet", "unknown")) {
            assertThat(clerk.get("/items/N-5/acts/" + act).statusCode()).as(act).isEqualTo(200);
        }
    }
}
