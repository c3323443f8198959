package bagclock.stock;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.DemoShop;
import bagclock.HandClock;
import bagclock.Site;
import bagclock.Visitor;
import bagclock.platform.Role;
import java.net.http.HttpResponse;
import java.time.Instant;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Dry packing: rules 5 and 8 (S1, S2: J-STD-033D, dry packing and shelf life), in the demonstration's shop. */
class DryPackSiteTest {
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

    private static HttpResponse<String> close(String tag, String desiccant, String card, String closure) {
        String path = "/items/" + tag + "/dry-pack";
        return clerk().submit(path, path, "desiccant", desiccant, "card", card, "closure", closure);
    }

    @Test
    void aPartInsideItsLifeIsPackedAndItsLabelSaysTheNewDates() {
        HttpResponse<String> closed = close("R-407", "yes", "yes", "yes");
        assertThat(Visitor.target(closed)).isEqualTo("/items/R-407/bag-label?done");
        Document label = clerk().page("/items/R-407/bag-label?done");
        assertThat(label.select("[role=status]").text()).contains("closed");
        assertThat(label.select("svg.print").attr("aria-label"))
                .contains("Dry pack closed Thu 12 Mar 2026 14:20 (UTC)")
                .contains("Shelf life to Fri 12 Mar 2027 14:20 (UTC)")
                .contains("After opening 117 h of floor life are left");
        assertThat(clerk().page("/items/R-407/dry-pack").text()).contains("can't be packed where it is");
    }

    @Test
    void withoutFreshDesiccantItIsNoDryPackAndNothingIsWritten() {
        HttpResponse<String> answer = close("R-408", "no", "yes", "yes");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(Jsoup.parse(answer.body()).select("#desiccant-error").text()).contains("no dry pack");
        assertThat(close("R-408", "yes", "", "yes").statusCode()).isEqualTo(422);
        assertThat(clerk().page("/items/R-408").select("dl").text()).contains("STORES");
    }

    @Test
    void whatMustBeBakedFirstIsNotPacked() {
        Visitor clerk = clerk();
        Document page = clerk.page("/items/T-418/dry-pack");
        assertThat(page.select(".trail li:contains(It must be baked first.)").text())
                .startsWith("Not yet");
        String token = clerk.page("/stock").select("main input[name=csrf]").val();
        String[] confirmed = {"csrf", token, "desiccant", "yes", "card", "yes", "closure", "yes"};
        assertThat(clerk.post("/items/T-418/dry-pack", confirmed).statusCode()).isEqualTo(422);
        assertThat(page.select("form[action=/items/T-418/dry-pack]")).isEmpty();
        assertThat(page.select("a[href=/ovens/load?tag=T-418]")).hasSize(1);
        assertThat(page.text())
                .contains("For a fresh shelf life of the new bag it takes 48 h at 125 °C before packing.")
                .contains("table 4-2");
    }

    @Test
    void aClockThatABagDoesNotStopIsSaid() {
        assertThat(clerk().page("/items/T-411/dry-pack").text()).contains("its clock runs on in the bag");
        assertThat(clerk().page("/items/R-408/dry-pack").text()).doesNotContain("runs on in the bag");
    }
}
