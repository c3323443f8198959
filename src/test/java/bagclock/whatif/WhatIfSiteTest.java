package bagclock.whatif;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.DemoShop;
import bagclock.Site;
import bagclock.Visitor;
import bagclock.platform.Engine;
import bagclock.platform.Role;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Suppositions as a technician without a script makes them, over the invented shop at a fixed moment. */
class WhatIfSiteTest {
    private static final Instant NOW = Instant.parse("2026-03-12T13:20:00Z");

    private static Site site;

    @BeforeAll
    static void start() {
        site = DemoShop.open(Engine.H2.freshUrl(), Clock.fixed(NOW, ZoneOffset.UTC), "Europe/Berlin");
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    private static Document page(String address) {
        return Visitor.ofDemo(site.port(), Role.TECHNICIAN).page(address);
    }

    private static String panel(Document page, String title) {
        return page.select("[aria-labelledby=" + title + "]").text();
    }

    @Test
    void theItemsPageLinksToItAndShowsTheEstimate() {
        Document item = page("/items/R-407");

        assertThat(item.select("a[href=/items/R-407/what-if]")).hasSize(1);
        assertThat(item.select("[aria-labelledby=estimate-title] svg[role=img]").attr("aria-label"))
                .contains("of the limit", "diffusivity");
        assertThat(panel(item, "estimate-title")).contains("changes no answer");
    }

    /** Level 3 has 168 h (J-STD-033D, table 5-1), of which 51 h are used; 35 C / 90 %RH leaves less. */
    @Test
    void milderAndHarsherAirAreAnsweredByTheRules() {
        assertThat(panel(page("/items/R-407/what-if?temperature=22&humidity=45"), "air-title"))
                .contains("Clear", "in 4 days 21 h", "Beside it, for Tue 17 Mar 2026 11:20 (CET): By the model");
        assertThat(panel(page("/items/R-407/what-if?temperature=35&humidity=90"), "air-title"))
                .contains("Clear", "The floor life ends")
                .doesNotContain("4 days");
    }

    /** Levels 2 to 3 pause in dry storage (J-STD-033D, clause 4): the night costs nothing. */
    @Test
    void aNightInTheCabinetPausesALevel3() {
        String told = panel(page("/items/R-407/what-if?until=2026-03-13T08:00"), "cabinet-title");

        assertThat(told).contains("Clear", "The floor life ends", "in 4 days 21 h", "Left where it is, it ends");
    }

    @Test
    void bakingNowAndLaterAreComparedByTheirEnds() {
        String told = panel(page("/items/T-418/what-if?bakeAt=2026-03-12T18:00"), "bake-title");

        assertThat(told).contains("Now: ", "At Thu 18:00 (CET): ", "done ");
    }

    @Test
    void aClosedBagCountsAsOpenedAndSaysSo() {
        Document page = page("/items/R-401/what-if");

        assertThat(page.text()).contains("Its closed bag counts as opened now, the card dry.");
        assertThat(panel(page, "air-title")).contains("Clear", "The floor life ends");
    }

    @Test
    void aPartTypeIsAskedAboutWithoutAnItem() {
        assertThat(panel(page("/parts/what-if?number=SNR-1001&temperature=22&humidity=45"), "air-title"))
                .contains("Clear", "in 7 days", "Beside it, for Thu 19 Mar 2026 14:20 (CET): By the model");
    }

    @Test
    void whatCantBeReadIsRefusedBesideItsField() {
        Document page = page(
                "/items/R-407/what-if?temperature=warm&humidity=45&until=2020-01-01T00:00&bakeAt=2026-03-12T18:00");

        assertThat(page.select("#temperature-error").text()).isNotEmpty();
        assertThat(page.select("#until-error").text()).contains("within 90 days");
        assertThat(page.select("#temperature").val()).isEqualTo("warm");
    }
}
