package bagclock.climate;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.DemoShop;
import bagclock.HandClock;
import bagclock.Site;
import bagclock.Visitor;
import bagclock.platform.Role;
import java.net.http.HttpResponse;
import java.time.Instant;
import java.util.Arrays;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Zones, cabinets and readings over HTTP, in the demonstration's shop. */
class ClimateSiteTest {
    private static final HandClock CLOCK = new HandClock(Instant.parse("2026-03-12T14:20:00Z"));
    private static final String HEAD = "zone,time,temperature,humidity\n";

    private static Site site;

    @BeforeAll
    static void start() {
        site = DemoShop.open(CLOCK);
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    private static Visitor engineer() {
        return Visitor.ofDemo(site.port(), Role.ENGINEER);
    }

    private static HttpResponse<String> send(Visitor visitor, String lines, String... more) {
        String[] fields = Arrays.copyOf(new String[] {"text", HEAD + lines}, 2 + more.length);
        System.arraycopy(more, 0, fields, 2, more.length);
        return visitor.submit("/climate/import", "/climate/import", fields);
    }

    @Test
    void aZoneAboveTheLimitIsNamedFirst() {
        Document page = engineer().page("/climate");

        assertThat(page.select(".caution").text())
                .isEqualTo("Open no bag at Receiving dock: 22.1 °C and 58.5 % RH, above the limit of 27 °C and 55 % RH"
                        + " since Thu 11:20 (UTC).");
        assertThat(page.select("tr:contains(SHED)").text()).contains("No readings are taken here", "30 °C and 70 % RH");
    }

    @Test
    void aBagOpenedWhereNoneShouldBeAsksWhyAndStandsSoInTheLedger() {
        Visitor clerk = Visitor.ofDemo(site.port(), Role.CLERK);
        String act = "/items/R-401/acts/open";
        String[] opening = {
            "spot5",
            "dry",
            "spot10",
            "dry",
            "spot60",
            "dry",
            "bag",
            "sound",
            "place",
            "DOCK",
            "at",
            "2026-03-12T14:20",
            "readAt",
            "",
            "whyAnyway",
            ""
        };
        assertThat(Jsoup.parse(clerk.submit(act, act, opening).body())
                        .select(".error")
                        .text())
                .isEqualTo("Fill this in.");

        opening[opening.length - 1] = "The line waits";
        assertThat(clerk.submit(act, act, opening).statusCode()).isEqualTo(303);
        assertThat(clerk.page("/items/R-401").text())
                .contains("Opened: DOCK, above the site's limit for opening (22.1 C 58.5 %RH, limit 27.0 C 55.0 %RH),"
                        + " opened all the same: The line waits");
    }

    @Test
    void theCurveOfTheStoresHasItsGap() {
        Document page = engineer().page("/climate/STORES?days=7");

        assertThat(page.select("figure svg")).hasSize(2);
        assertThat(page.select("figure").first().select("rect.gap")).hasSize(1);
        assertThat(page.select("figure").first().select("polyline.line")).hasSize(2);
    }

    @Test
    void badLinesAreNamedByLineAndColumnAndTheGoodOnesOffered() {
        Visitor visitor = engineer();
        String lines = "LINE,2026-03-12T14:01,23.1,44\nLINE,2026-03-12T14:02,warm,44\nHULL,2026-03-12T14:03,23,44\n";

        HttpResponse<String> refused = send(visitor, lines);
        Document page = Jsoup.parse(refused.body());
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(page.select("tbody tr").eachText())
                .containsExactly("3 temperature Not a number: warm.", "4 zone No logged zone has the code HULL.");
        assertThat(page.select("textarea").val()).contains("warm");
        assertThat(visitor.page("/climate/LINE").select("table").text()).doesNotContain("14:01");

        assertThat(page.select("button[name=good]").text()).isEqualTo("Keep the 1 good readings");
        assertThat(send(visitor, lines, "good", "only").statusCode()).isEqualTo(303);
        assertThat(visitor.page("/climate/LINE").select("table").text()).contains("14:01");
    }

    @Test
    void anotherValueForTheSameTimeIsRefused() {
        HttpResponse<String> answer = send(engineer(), "BENCH-1,2026-03-12T14:20,12,44\n");

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(Jsoup.parse(answer.body()).text()).contains("Another reading");
    }

    @Test
    void aReadingIsTypedIn() {
        Visitor clerk = Visitor.ofDemo(site.port(), Role.CLERK);
        String page = "/climate/STORES";
        String action = "/climate/STORES/readings";

        HttpResponse<String> refused =
                clerk.submit(page, action, "at", "2026-03-12T18:00", "temperature", "x", "humidity", "140");
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(Jsoup.parse(refused.body()).select(".error").eachText())
                .containsExactly(
                        "This lies in the future; now it is Thu 12 Mar 2026 14:20 (UTC).",
                        "Not a number. Write it as 27.5.",
                        "From 0 to 100.");

        clerk.submit(page, action, "at", "2026-03-12T14:11", "temperature", "21,4", "humidity", "50.5");
        assertThat(clerk.page(page).select("table").text()).contains("14:11 (UTC) 21.4 °C 50.5 % RH");
    }

    @Test
    void anEngineerAddsAZoneAndACabinetAndOthersDoNot() {
        Visitor visitor = engineer();

        HttpResponse<String> refused =
                visitor.submit("/climate/new?kind=zone", "/climate/new", "code", "MAST", "name", "", "logged", "no");
        assertThat(Jsoup.parse(refused.body()).select(".error").text()).isEqualTo("Fill this in.");
        visitor.submit(
                "/climate/new?kind=zone",
                "/climate/new",
                "code",
                "MAST",
                "name",
                "Mast loft",
                "logged",
                "no",
                "worstC",
                "30",
                "worstPercent",
                "75",
                "openC",
                "",
                "openPercent",
                "");
        visitor.submit(
                "/climate/new?kind=cabinet",
                "/climate/new",
                "code",
                "DRY-9",
                "name",
                "Third cabinet",
                "logged",
                "no",
                "class",
                "UP_TO_5");

        assertThat(visitor.page("/climate").text()).contains("Mast loft MAST", "30 °C and 75 % RH", "Third cabinet");
        assertThat(visitor.page("/climate/MAST/change")
                        .select("input[name=worstPercent]")
                        .val())
                .isEqualTo("75");
        assertThat(Visitor.ofDemo(site.port(), Role.CLERK).get("/climate/new").statusCode())
                .isEqualTo(403);
    }
}
