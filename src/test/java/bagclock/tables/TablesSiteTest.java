package bagclock.tables;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.DemoShop;
import bagclock.HandClock;
import bagclock.Site;
import bagclock.Visitor;
import bagclock.platform.Role;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The tables over HTTP, in the demonstration's shop. */
class TablesSiteTest {
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

    private static Visitor engineer() {
        CLOCK.passes(Duration.ofSeconds(1));
        return Visitor.ofDemo(site.port(), Role.ENGINEER);
    }

    private static String[] sent(Document page, Map<String, String> altered) {
        List<String> fields = new ArrayList<>();
        for (Element field : page.select("main form [name]")) {
            boolean unticked = field.attr("type").equals("checkbox") && !field.hasAttr("checked");
            if (!altered.containsKey(field.attr("name")) && !unticked) {
                fields.addAll(List.of(field.attr("name"), field.val()));
            }
        }
        altered.forEach((name, value) -> fields.addAll(List.of(name, value)));
        return fields.toArray(String[]::new);
    }

    /** The field of a cell on a page that compares. */
    private static String field(Document page, String label) {
        return page.select("input[type=text][aria-label=\"" + label + "\"]").attr("name");
    }

    private static String cell(Document page, String label) {
        return page.select("td a[aria-label^=\"" + label + ":\"] + small").text();
    }

    @Test
    void everyTableIsShownAsInPrintToEveryone() {
        Visitor clerk = Visitor.ofDemo(site.port(), Role.CLERK);
        Document all = clerk.page("/tables");
        assertThat(all.select("tbody tr")).hasSize(9);
        for (Element link : all.select("tbody th a")) {
            assertThat(clerk.page(link.attr("href")).select(".grid td a")).isNotEmpty();
        }
        assertThat(clerk.get("/tables/user-bake/compare").statusCode()).isEqualTo(403);
        assertThat(clerk.get("/tables/import").statusCode()).isEqualTo(403);
        assertThat(clerk.get("/tables/no-such").statusCode()).isEqualTo(404);
    }

    @Test
    void aTickConfirmsAnotherValueCorrectsAndBothCanBeTakenBack() {
        Visitor engineer = engineer();
        Document form = engineer.page("/tables/user-bake/compare?grid=2");
        String ticked = ">2.0 to 4.5 mm, level 3, 125 C, >72 h";
        String altered = ">2.0 to 4.5 mm, level 3, 125 C, <=72 h";
        String tick = "t" + field(form, ticked).substring(1);
        HttpResponse<String> answer = engineer.post(
                "/tables/user-bake/compare",
                sent(form, Map.of(tick, "on", field(form, altered), "20 h", "copy", "J-STD-033D, 2018")));
        assertThat(answer.statusCode()).isEqualTo(303);
        Document sheet = engineer.page("/tables/user-bake");
        assertThat(cell(sheet, ticked)).isEqualTo("confirmed");
        assertThat(cell(sheet, altered)).isEqualTo("corrected");

        String address = sheet.select("td a[aria-label^=\"" + altered + ":\"]").attr("href");
        Document one = engineer.page(address);
        assertThat(one.select("table").text()).contains("20 h").contains("J-STD-033D, 2018");
        assertThat(engineer.submit(address, "/tables/user-bake/take-back").statusCode())
                .isEqualTo(303);
        assertThat(cell(engineer.page("/tables/user-bake"), altered)).isEqualTo("from memory");
        assertThat(engineer.page(address).select("table").text()).contains("taken back");
    }

    @Test
    void aWholeLineIsTickedAtOnce() {
        Visitor engineer = engineer();
        Document form = engineer.page("/tables/derated-floor-life/compare?grid=1");
        HttpResponse<String> answer =
                engineer.post("/tables/derated-floor-life/compare", sent(form, Map.of("r0", "on", "copy", "2018")));
        assertThat(answer.statusCode()).isEqualTo(303);
        Element row = engineer.page("/tables/derated-floor-life")
                .select("table")
                .get(1)
                .select("tbody tr")
                .get(0);
        assertThat(row.select("small").eachText()).containsOnly("confirmed").hasSize(10);
    }

    @Test
    void aDayThatIsMissingIsSaidToBeMissing() {
        Visitor engineer = engineer();
        Document form = engineer.page("/tables/floor-life/compare");
        HttpResponse<String> answer =
                engineer.post("/tables/floor-life/compare", sent(form, Map.of("r0", "on", "copy", "2018", "on", "")));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(Jsoup.parse(answer.body()).select("#on-error").text())
                .isEqualTo("The day is missing. Write it as 2026-03-05, today or earlier.");
    }

    @Test
    void whatATableCannotHoldIsRefusedBesideTheCellAndNothingIsKept() {
        Visitor engineer = engineer();
        Document form = engineer.page("/tables/floor-life/compare");
        String field = form.select("input[type=text][aria-label^=level 5a]").attr("name");
        HttpResponse<String> answer = engineer.post(
                "/tables/floor-life/compare", sent(form, Map.of(field, "a day", "r0", "on", "copy", "2018")));
        assertThat(answer.statusCode()).isEqualTo(422);
        Document again = Jsoup.parse(answer.body());
        assertThat(again.select("#" + field + "-error").text()).contains("a day");
        assertThat(again.select("[name=" + field + "]").val()).isEqualTo("a day");
        assertThat(engineer.page("/tables/floor-life").select("small").eachText())
                .containsOnly("seen");
        assertThat(engineer.post("/tables/floor-life/compare", sent(form, Map.of("copy", "2018")))
                        .statusCode())
                .as("nothing ticked")
                .isEqualTo(422);
    }

    @Test
    void aCorrectedCellDecidesTheAnswersOfTheApiToo() {
        Visitor engineer = engineer();
        String question = """
                {"part":{"level":"4","body":"leadless","thicknessMm":1.2},"at":"2026-03-12T10:00:00Z",
                 "history":[{"at":"2026-03-12T08:00:00Z","event":"to-floor"}],
                 "climate":{"default":{"temperatureC":25,"rhPercent":50}}}""";
        assertThat(api(question)).contains("\"totalHours\" : 72");
        Document form = engineer.page("/tables/floor-life/compare");
        String field = form.select("input[type=text][aria-label^=level 4]").attr("name");
        engineer.post("/tables/floor-life/compare", sent(form, Map.of(field, "60", "copy", "2018")));
        assertThat(api(question)).contains("\"totalHours\" : 60");
        String address = engineer.page("/tables/floor-life")
                .select("td a[aria-label^=level 4]")
                .attr("href");
        engineer.submit(address, "/tables/floor-life/take-back");
        assertThat(api(question)).contains("\"totalHours\" : 72");
    }

    private static String api(String question) {
        HttpRequest request = HttpRequest.newBuilder(URI.create("http://localhost:" + site.port() + "/api/v1/assess"))
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(question))
                .build();
        try {
            return HttpClient.newHttpClient()
                    .send(request, HttpResponse.BodyHandlers.ofString())
                    .body();
        } catch (IOException | InterruptedException failure) {
            throw new AssertionError(failure);
        }
    }

    @Test
    void oneComparisonServesAnotherSite() {
        Visitor engineer = engineer();
        Document form = engineer.page("/tables/dry-rest/compare?grid=0");
        engineer.post("/tables/dry-rest/compare", sent(form, Map.of("r0", "on", "copy", "2018")));
        String saved = engineer.get("/tables/export").body();
        assertThat(saved).contains("DRY_REST");
        Document none = Jsoup.parse(engineer.submit("/tables/import", "/tables/import", "text", saved)
                .body());
        assertThat(none.select("button[name=good]")).isEmpty();

        String other = "edition,table,row,column,value,compared_by,compared_on,copy\n"
                + "J_STD_033D,LARGE_ARRAY_BAKE,array with an edge above 17 mm; or stacked die,125 C,97 h,Another,"
                + "2026-02-01,2018\nJ_STD_033D,LARGE_ARRAY_BAKE,cube,125 C,97 h,Another,2026-02-01,2018\n";
        HttpResponse<String> preview = engineer.submit("/tables/import", "/tables/import", "text", other);
        assertThat(preview.statusCode()).isEqualTo(422);
        Document page = Jsoup.parse(preview.body());
        assertThat(page.text()).contains("now 96 h, then 97 h").contains("No table has this cell");
        assertThat(engineer.post("/tables/import", sent(page, Map.of("good", "only")))
                        .statusCode())
                .isEqualTo(303);
        Document sheet = engineer.page("/tables/large-array-bake");
        assertThat(sheet.select(".grid td a").text()).isEqualTo("97 h");
        assertThat(engineer.page(sheet.select(".grid td a").attr("href")).text())
                .contains("Another")
                .contains("2026-02-01");
    }

    @Test
    void aCorrectedLifeLongerThanItsDrierNeighbourIsKeptAndDoubted() {
        Visitor engineer = engineer();
        Document form = engineer.page("/tables/derated-floor-life/compare?grid=2");
        String key = "<2.1 mm, level 4, 25 C, 70 %RH";
        assertThat(form.select("#doubts-title")).isEmpty();
        HttpResponse<String> answer = engineer.post(
                "/tables/derated-floor-life/compare", sent(form, Map.of(field(form, key), "300", "copy", "2018")));
        assertThat(answer.statusCode()).isEqualTo(303);

        Document sheet = engineer.page("/tables/derated-floor-life");
        assertThat(cell(sheet, key)).isEqualTo("corrected");
        assertThat(sheet.select("#doubts-title + ul li").text())
                .contains(key + " lives 300, longer than in drier air: <2.1 mm, level 4, 25 C, 60 %RH lives");
        String address = sheet.select("td a[aria-label^=\"" + key + ":\"]").attr("href");
        assertThat(engineer.page(address).select("#doubts-title")).hasSize(1);
        engineer.submit(address, "/tables/derated-floor-life/take-back");
    }
}
