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
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Many items at once: a delivery, a trolley, a stock-take; and codes of actions. */
class BulkSiteTest {
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

    private static Visitor clerk() {
        return Visitor.ofDemo(site.port(), Role.CLERK);
    }

    /** The next bag, with the form as the last page left it. */
    private static Document next(Visitor clerk, Document page, String... fields) {
        Element form = page.selectFirst("form[action=/stock/delivery]");
        List<String> all = new java.util.ArrayList<>(List.of(fields));
        form.select("input[type=hidden]").forEach(hidden -> all.addAll(List.of(hidden.attr("name"), hidden.val())));
        return Jsoup.parse(
                clerk.post("/stock/delivery", all.toArray(String[]::new)).body());
    }

    @Test
    void aDeliveryIsReceivedBagByBag() {
        Visitor clerk = clerk();
        Document page = clerk.page("/stock/delivery");
        String[] first = {
            "type", "SNR-1003", "quantity", "40", "sealedAt", "2026-02-01T00:00", "place", "STORES", "code", "D-1"
        };
        page = next(clerk, page, first);
        assertThat(page.select("[role=status]").text()).contains("D-1 is received, 1 in all");
        assertThat(page.select("input[name=quantity]").val()).isEqualTo("40");
        assertThat(page.select("input[name=code]").val()).isEmpty();

        first[first.length - 1] = "";
        page = next(clerk, page, first);
        String drawn = page.select("ol .code").first().text();
        assertThat(drawn).matches("R\\d{5}");
        assertThat(page.select("a[href^=/labels]").attr("href")).isEqualTo("/labels?kind=item&tag=D-1&tag=" + drawn);

        first[first.length - 1] = "D-1";
        page = next(clerk, page, first);
        assertThat(page.select("[role=alert]").text()).contains("Another item has the tag D-1");
        assertThat(page.select("ol .code").eachText()).containsExactly(drawn, "D-1");

        first[3] = "";
        page = next(clerk, page, first);
        assertThat(page.select("#quantity-error").text()).isNotEmpty();
        assertThat(page.select("ol .code")).hasSize(2);
        assertThat(clerk.page("/items/D-1").select("dl").text())
                .contains("STORES")
                .contains("sealed");
    }

    @Test
    void aWholePlaceIsMovedAndTakenBack() {
        Visitor clerk = clerk();
        List<String> there =
                clerk.page("/items?place=BENCH-1").select("tbody th .code").eachText();
        assertThat(there).hasSizeGreaterThan(3);
        Document asked =
                Jsoup.parse(clerk.submit("/stock", "/stock", "code", "BENCH-1").body());
        assertThat(asked.select("a[href=/stock/trolley?from=BENCH-1]")).hasSize(1);

        CLOCK.passes(Duration.ofSeconds(10));
        String path = "/stock/trolley?from=BENCH-1";
        HttpResponse<String> nowhere = clerk.submit(path, "/stock/trolley", "code", "OVEN-1");
        assertThat(nowhere.statusCode()).isEqualTo(422);
        Document moved = Jsoup.parse(
                clerk.submit(path, "/stock/trolley", "code", "DRY-5").body());
        int count = moved.select("input[name=moved]").val().split(",").length;
        assertThat(moved.select("[role=status]").text()).contains(count + " items are now at Dry cabinet by the line");
        assertThat(clerk.page(path).select("ul.reasons .code").eachText())
                .doesNotContainAnyElementsOf(List.of("R-409", "T-411"));
        assertThat(clerk.page("/items/R-409").select("dl").text()).contains("DRY-5");

        Element back = moved.selectFirst("form[action=/stock/trolley/take-back]");
        List<String> fields = new java.util.ArrayList<>();
        back.select("input[type=hidden]").forEach(hidden -> fields.addAll(List.of(hidden.attr("name"), hidden.val())));
        Document undone = Jsoup.parse(clerk.post("/stock/trolley/take-back", fields.toArray(String[]::new))
                .body());
        assertThat(undone.select("[role=status]").text()).contains(count + " items are back at Sonar bench");
        assertThat(clerk.page("/items/R-409").select("dl").text()).contains("BENCH-1");
    }

    private static Document post(Visitor clerk, Document page, String action, String... more) {
        Element form = page.selectFirst("form[action=" + action + "]");
        List<String> fields = new java.util.ArrayList<>(List.of(more));
        form.select("input[type=hidden]").forEach(hidden -> fields.addAll(List.of(hidden.attr("name"), hidden.val())));
        return Jsoup.parse(clerk.post(action, fields.toArray(String[]::new)).body());
    }

    @Test
    void aStockTakeShowsWhatIsMissingWhatIsExtraAndWhatIsNothing() {
        Visitor clerk = clerk();
        Document page = clerk.page("/stock/count?place=STORES");
        page = post(clerk, page, "/stock/count", "code", "R-408");
        assertThat(page.select("[role=status]").text()).contains("R-408 is right");
        page = post(clerk, page, "/stock/count", "code", "R-407");
        assertThat(page.select("[role=status]").text()).contains("R-407 is expected elsewhere");
        page = post(clerk, page, "/stock/count", "code", "nope");
        assertThat(page.select("[role=alert]").text()).contains("nope is no item");
        page = post(clerk, page, "/stock/count", "code", "R-408");
        assertThat(page.select("[role=status]").text()).contains("already");
        page = post(clerk, page, "/stock/count/differences");
        assertThat(page.select("[aria-labelledby=missing-title]").text())
                .contains("R-427")
                .doesNotContain("R-408");
        assertThat(page.select("[aria-labelledby=extra-title]").text())
                .contains("R-407")
                .contains("LINE");
        assertThat(page.select("[aria-labelledby=strange-title]").text()).contains("nope");

        Document kept = kept(clerk, page);
        assertThat(kept.text())
                .contains("Expected and found: 1")
                .contains("Found and not expected: 1")
                .contains("Codes of no item: 1")
                .contains("Stockroom clerk");
        CLOCK.passes(Duration.ofSeconds(10));
        page = post(clerk, page, "/stock/count/here", "tags", "R-407");
        assertThat(page.select("[role=status]").text()).contains("Recorded here: 1");
        assertThat(page.select("[aria-labelledby=extra-title]")).isEmpty();
        assertThat(clerk.page("/items/R-407").select("dl").text()).contains("STORES");
    }

    /** The same form sent twice is one record, and its table says the same. */
    private static Document kept(Visitor clerk, Document page) {
        Element form = page.selectFirst("form[action=/stock/count/keep]");
        List<String> fields = new java.util.ArrayList<>();
        form.select("input[type=hidden]").forEach(hidden -> fields.addAll(List.of(hidden.attr("name"), hidden.val())));
        String path = Visitor.target(clerk.post("/stock/count/keep", fields.toArray(String[]::new)));
        assertThat(Visitor.target(clerk.post("/stock/count/keep", fields.toArray(String[]::new))))
                .isEqualTo(path);
        assertThat(clerk.page("/stock/counts").select("tbody tr")).hasSize(1);
        assertThat(clerk.get(path + "/csv").body())
                .contains("R-408,found,")
                .contains("R-407,unexpected,")
                .contains("nope,strange,")
                .contains("R-427,missing,");
        return clerk.page(path);
    }

    @Test
    void aClosedBagIsScannedToAPlaceAndStaysClosed() {
        Visitor clerk = clerk();
        Document held =
                Jsoup.parse(clerk.submit("/stock", "/stock", "code", "R-402").body());
        Document moved = post(clerk, held, "/stock", "code", "DRY-10");
        assertThat(moved.select("[role=status]").text())
                .contains("R-402 is now at")
                .contains("closed");
        assertThat(clerk.page("/items/R-402").select("dl").text()).contains("sealed");
        assertThat(clerk.page("/items?place=DRY-10").text()).contains("R-402");
    }

    @Test
    void anActionIsScannedAfterItsItem() {
        Visitor clerk = clerk();
        Document held =
                Jsoup.parse(clerk.submit("/stock", "/stock", "code", "R-401").body());
        Element form = held.selectFirst("form[data-scan][action=/stock]");
        HttpResponse<String> open =
                clerk.post("/stock", "csrf", form.select("input[name=csrf]").val(), "held", "R-401", "code", "DOOPEN");
        assertThat(Visitor.target(open)).isEqualTo("/items/R-401/acts/open");
        assertThat(clerk.submit("/stock", "/stock", "code", "DOOPEN").statusCode())
                .isEqualTo(422);
        assertThat(Visitor.target(clerk.submit("/stock", "/stock", "code", "DORECEIVE")))
                .isEqualTo("/stock/receive");
        assertThat(Visitor.target(clerk.get("/scan?code=dodeliver"))).isEqualTo("/stock/delivery");
        HttpResponse<String> onItsPage =
                clerk.get("/scan?code=DOPRINT", "Referer", "http://localhost:8080/items/R-401?done");
        assertThat(Visitor.target(onItsPage)).isEqualTo("/items/R-401/label");
        assertThat(clerk.get("/scan?code=DOPRINT").statusCode()).isEqualTo(422);
    }

    @Test
    void aWrongDigitIsToldFromAnUnknownTag() {
        HttpResponse<String> answer = clerk().submit("/stock", "/stock", "code", "R99999");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(Jsoup.parse(answer.body()).select("[role=alert]").text()).contains("check digit");
    }
}
