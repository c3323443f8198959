package bagclock.climate;

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

/** The site's rules for readings over HTTP, in the demonstration's shop. */
class SiteRulesSiteTest {
    private static final HandClock CLOCK = new HandClock(Instant.parse("2026-03-12T14:20:00Z"));
    private static final String PATH = "/climate/rules";

    private static Site site;

    @BeforeAll
    static void start() {
        site = DemoShop.open(CLOCK);
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    private static HttpResponse<String> keep(String gap, String excursion, String celsius, String percent, String on) {
        Visitor engineer = Visitor.ofDemo(site.port(), Role.ENGINEER);
        String token =
                engineer.page(PATH).select("main input[name=csrf]").first().val();
        return engineer.post(
                PATH,
                "csrf",
                token,
                "drier",
                "no",
                "gapMinutes",
                gap,
                "excursionMinutes",
                excursion,
                "worstC",
                celsius,
                "worstPercent",
                percent,
                "basedOn",
                on);
    }

    @Test
    void whatTheEngineerChoosesCountsAndIsKeptWithHisName() {
        Visitor engineer = Visitor.ofDemo(site.port(), Role.ENGINEER);
        Document before = engineer.page(PATH);
        String version = before.select("input[name=basedOn]").val();

        assertThat(keep("45", "10", "28", "65", version).statusCode()).isEqualTo(303);
        Document after = engineer.page(PATH);
        assertThat(after.select("input[name=gapMinutes]").val()).isEqualTo("45");
        assertThat(after.select("input[name=excursionMinutes]").val()).isEqualTo("10");
        assertThat(after.select("input[name=worstPercent]").val()).isEqualTo("65");
        assertThat(after.text()).contains("Version ").contains(", by ");
        assertThat(engineer.page("/climate").select(".hint").text()).contains("28 °C", "65 % RH");

        assertThat(keep("60", "10", "28", "65", version).statusCode()).isEqualTo(422);
        assertThat(engineer.page(PATH).select("input[name=gapMinutes]").val()).isEqualTo("45");
    }

    @Test
    void whatIsOutOfRangeIsRefusedBesideItsField() {
        Document refused = Jsoup.parse(keep("0", "61", "28", "", "0").body());

        assertThat(refused.select(".error")).hasSize(3);
        assertThat(Visitor.ofDemo(site.port(), Role.CLERK).get(PATH).statusCode())
                .isEqualTo(403);
    }
}
