package bagclock.wall;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.DemoShop;
import bagclock.HandClock;
import bagclock.Site;
import bagclock.Visitor;
import java.time.Instant;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The wall display of the demonstration, seen by somebody who has not signed in. */
class WallSiteTest {
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

    @Test
    void itSaysInTimesOfDayWhatMustBeHeatedAndWhatMayComeOut() {
        Document wall = new Visitor(site.port()).page("/wall");
        assertThat(wall.select(".ends li")).isNotEmpty().hasSizeLessThanOrEqualTo(6);
        assertThat(wall.select(".ends li .by").eachText()).allMatch(end -> end.contains("(UTC)"));
        assertThat(wall.text())
                .contains("Tall oven: may come out")
                .contains("T-431")
                .contains("bake them before any heat")
                .contains("Receiving dock: 22.1 °C and 58.5 % RH at Thu 14:20 (UTC). Open no bags there.");
    }

    @Test
    void itNamesNobodyAndFollowsWhatHappens() {
        Document wall = new Visitor(site.port()).page("/wall");
        assertThat(wall.text()).doesNotContain("clerk").doesNotContain("Clerk").doesNotContain("Sign");
        assertThat(wall.select("[data-live]").attr("hx-trigger")).contains("live");
        assertThat(new Visitor(site.port()).get("/wall").headers().firstValue("Refresh"))
                .contains("300");
    }
}
