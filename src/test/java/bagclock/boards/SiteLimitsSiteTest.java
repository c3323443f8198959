package bagclock.boards;

import static bagclock.boards.CaseShop.bakeAt;
import static bagclock.boards.CaseShop.sent;
import static bagclock.boards.CaseShop.verdict;
import static org.assertj.core.api.Assertions.assertThat;

import bagclock.Visitor;
import java.net.http.HttpResponse;
import java.time.Duration;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Limits of J-STD-033D that the site makes stricter (200 C of the rework clause, 96 h of clause 4.2.7), on the site. */
class SiteLimitsSiteTest {
    private static final String RULES = "/boards/rules";

    private CaseShop shop;

    @BeforeEach
    void open() {
        shop = new CaseShop();
        shop.part("L3-12", "3", "1.2", 260);
        shop.board("LIM-1", 125, "L3-12");
        shop.mounted("P-LIM-1", "L3-12", 1000, "LIM-1", "U1");
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private HttpResponse<String> keep(Visitor engineer, String peak, String hours) {
        return engineer.submit(
                RULES, RULES, "within", "12", "replacements", "2", "months", "12", "harmless", peak, "above90", hours);
    }

    @Test
    void widerIsRefusedWithWords() {
        HttpResponse<String> refused = keep(shop.engineer(), "201", "97");
        Document page = Jsoup.parse(refused.body());

        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(page.select("#harmless-error").text()).contains("The standard allows 200 °C", "only be stricter");
        assertThat(page.select("#above90-error").text()).contains("The standard allows 96 h");
        assertThat(shop.engineer().page(RULES).select("#above90").val()).isEqualTo("96");
    }

    @Test
    void theSitesPeakDecidesOnTheBoardAtTheBenchAndInTheRecord() {
        Visitor technician = shop.technician();
        String job = shop.job(technician, "LIM-1", "U1", OldPart.REUSE);
        shop.step(technician, job);
        String ask = job + "?profile=none&peak=190";
        assertThat(verdict(technician.page(ask))).isEqualTo("Clear");

        sent(keep(shop.engineer(), "180", "96"));

        Document page = technician.page(ask);
        assertThat(verdict(page)).isEqualTo("Bake");
        assertThat(page.select("main").text()).contains("This site counts a body above 180", "limit of this site");
        assertThat(verdict(technician.page("/bench?code=P-LIM-1&purpose=removal-reuse&peak=190")))
                .isEqualTo("Bake");
        String record = technician
                .page(sent(technician.submit(ask, job + "/heat", "at", shop.now(), "measured", "190")))
                .select("a[href~=/heats/]")
                .attr("href");
        assertThat(technician.page(record).select("main").text())
                .contains(
                        "This site counts a body above 180",
                        "limits 1",
                        "board type T-LIM-1, version 1",
                        "It asked for a bake first, by these cells.",
                        "level 3, 125 C");
    }

    @Test
    void theSitesHoursBarABakeAndAreNamed() {
        Visitor technician = shop.technician();
        sent(keep(shop.engineer(), "200", "8"));

        Document page = technician.page("/boards/LIM-1/bake");

        assertThat(bakeAt(page, 125)).contains("limit of this site; the standard says 96 h");
        assertThat(bakeAt(page, 90)).endsWith("Allowed");
        assertThat(page.select("main").text()).contains("This site allows a part 8 h above 90");
    }

    /** Answers of before keep the limits of then. */
    @Test
    void aLimitCountsFromItsKeepingOn() {
        shop.clock.passes(Duration.ofMinutes(10));
        sent(keep(shop.engineer(), "180", "96"));
        assertThat(shop.desk
                        .standard(shop.clock.instant())
                        .limits()
                        .harmlessPeak()
                        .degrees())
                .isEqualTo(180);
        assertThat(shop.desk
                        .standard(shop.clock.instant().minus(Duration.ofMinutes(5)))
                        .limits()
                        .harmlessPeak()
                        .degrees())
                .isEqualTo(200);
    }

    /** The contract knows no field for it; the site's answer over HTTP takes it as it takes corrected cells. */
    @Test
    void theContractTakesThemToo() {
        sent(keep(shop.engineer(), "180", "96"));
        String asked = """
                {"part":{"level":"3","classificationC":260,"thicknessMm":1.2,"body":"leadless"},
                 "history":[{"at":"2026-01-01T00:00:00Z","event":"unknown-exposure"}],
                 "heat":{"at":"2026-01-02T00:00:00Z","minutes":5,"peakBodyC":190,"purpose":"removal-reuse"}}
                """;

        String answer = shop.technician().call("/api/v1/assess", "none", asked).body();

        assertThat(answer).contains("SITE_PEAK_LIMIT").contains("\"status\" : \"site\"");
    }
}
