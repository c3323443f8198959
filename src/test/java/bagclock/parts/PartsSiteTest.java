package bagclock.parts;

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
import java.util.Map;
import java.util.stream.IntStream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Part types over HTTP, in the demonstration's shop. */
class PartsSiteTest {
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

    /** Everything that a form shows, as it would be sent. */
    private static List<String> sent(Document page, Map<String, String> altered) {
        List<String> fields = new ArrayList<>();
        for (Element field : page.select("main form [name]")) {
            String name = field.attr("name");
            String value = field.normalName().equals("select")
                    ? field.select("option[selected]").attr("value")
                    : field.val();
            if (!altered.containsKey(name)) {
                fields.addAll(List.of(name, value));
            }
        }
        altered.forEach((name, value) -> fields.addAll(List.of(name, value)));
        return fields;
    }

    private static HttpResponse<String> alter(Visitor engineer, String number, Map<String, String> altered) {
        Document page = engineer.page("/parts/change?number=" + number);
        return engineer.post("/parts/change", sent(page, altered).toArray(String[]::new));
    }

    @Test
    void theListIsFilteredSortedAndKeepsItsStateInTheAddress() {
        Visitor clerk = Visitor.ofDemo(site.port(), Role.CLERK);
        assertThat(clerk.page("/parts?text=sonar&level=4").select("tbody th").eachText())
                .containsExactly("SNR-1002");
        assertThat(clerk.page("/parts?level=unknown").select("tbody th").eachText())
                .contains("OLD-9001", "RDR-3006");
        List<String> up =
                clerk.page("/parts?text=tide&sort=NUMBER").select("tbody th").eachText();
        List<String> down = clerk.page("/parts?text=tide&sort=NUMBER&down=1")
                .select("tbody th")
                .eachText();
        assertThat(up.get(0)).isEqualTo(down.get(down.size() - 1));
        assertThat(clerk.page("/parts?sort=MAKER")
                        .select("th[aria-sort=ascending]")
                        .text())
                .isEqualTo("Maker");
        assertThat(clerk.page("/parts").select("main a[href=/parts/new]")).isEmpty();
        assertThat(clerk.get("/parts/new").statusCode()).isEqualTo(403);
        assertThat(clerk.get("/parts/import").statusCode()).isEqualTo(403);
    }

    @Test
    void aPartTypeShowsWhatIsKnownWhoEnteredItAndItsItems() {
        Document page = engineer().page("/parts/type?number=TGE-2005");
        assertThat(page.select("dl").text()).contains("90 C 8 h 5 %RH").contains("not known");
        assertThat(page.select("table").text()).contains("entered");
        assertThat(engineer().get("/parts/type?number=NO-SUCH").statusCode()).isEqualTo(404);
    }

    @Test
    void everyFactCanBeEnteredByHandAndNoneIsLostWhenAnotherIsAltered() {
        Visitor engineer = engineer();
        Map<String, String> facts = Map.ofEntries(
                Map.entry("part_number", "NEW/1 & co"),
                Map.entry("maker", "Supplier Gull"),
                Map.entry("description", "Echo sounder"),
                Map.entry("document", "data sheet DS-7"),
                Map.entry("revision", "C"),
                Map.entry("level", "3"),
                Map.entry("peak_c", "260"),
                Map.entry("more_ratings", "2a@245"),
                Map.entry("body", "leaded"),
                Map.entry("thickness_mm", "1.4"),
                Map.entry("length_mm", "9"),
                Map.entry("width_mm", "9"),
                Map.entry("stacked_die", "no"),
                Map.entry("blocking_planes", "no"),
                Map.entry("lead_free", "yes"),
                Map.entry("floor_life_h", "24"),
                Map.entry("floor_life_table", "30 C 60 %RH 24 h\n35 C 60 %RH 12 h"),
                Map.entry("shelf_months", "18"),
                Map.entry("bakes", "90 C 48 h 5 %RH carrier 90 C"),
                Map.entry("table_too", "yes"),
                Map.entry("use_within_h", "12"),
                Map.entry("max_bakes", "1"),
                Map.entry("max_bake_c", "125"),
                Map.entry("max_reflow_passes", "2"),
                Map.entry("carrier_max_c", "none"),
                Map.entry("baked_over_90_h", "2.5"),
                Map.entry("bakes_before", "0"),
                Map.entry("passes_before", "1"));
        Document form = engineer.page("/parts/new");
        HttpResponse<String> doubtful =
                engineer.post("/parts/new", sent(form, facts).toArray(String[]::new));
        assertThat(doubtful.statusCode()).isEqualTo(422);
        Document again = Jsoup.parse(doubtful.body());
        assertThat(again.select("[role=note]").text()).contains("The maker allows only 24 h");
        HttpResponse<String> kept =
                engineer.post("/parts/new", sent(again, Map.of()).toArray(String[]::new));
        assertThat(kept.statusCode()).isEqualTo(303);
        assertThat(Visitor.target(kept)).isEqualTo("/parts/type?number=NEW%2F1+%26+co&done=added");

        String number = "NEW%2F1+%26+co";
        assertThat(alter(engineer, number, Map.of("revision", "D")).statusCode())
                .isEqualTo(303);
        Document after = engineer.page("/parts/change?number=" + number);
        facts.forEach((name, value) -> {
            String now = after.select("[name=" + name + "]").is("select")
                    ? after.select("[name=" + name + "] option[selected]").val()
                    : after.select("[name=" + name + "]").val();
            if (!name.equals("part_number")) {
                assertThat(now).as(name).isEqualTo(name.equals("revision") ? "D" : value);
            }
        });
        assertThat(engineer.page("/parts/type?number=" + number).select("table").text())
                .contains("Revision");
    }

    @Test
    void aRefusedFormSaysWhyBesideTheFieldAndKeepsWhatWasEntered() {
        Visitor engineer = engineer();
        HttpResponse<String> answer =
                alter(engineer, "SNR-1001", Map.of("thickness_mm", "thick", "max_bake_c", "100", "bakes", "125 C 9 h"));
        assertThat(answer.statusCode()).isEqualTo(422);
        Document page = Jsoup.parse(answer.body());
        assertThat(page.select("#thickness_mm-error").text()).contains("thick");
        assertThat(page.select("#bakes-error").text()).contains("hotter than the part's own limit");
        assertThat(page.select("#max_bake_c").val()).isEqualTo("100");
        assertThat(engineer.page("/parts/type?number=SNR-1001").select("dl").text())
                .contains("1.4 mm");
        HttpResponse<String> taken =
                engineer.submit("/parts/new", "/parts/new", "part_number", "SNR-1001", "table_too", "no");
        assertThat(Jsoup.parse(taken.body()).select("#part_number-error").text())
                .contains("known already");
    }

    @Test
    void twoEngineersAtOnceLoseNothing() {
        Visitor first = engineer();
        Document page = first.page("/parts/change?number=SNR-1004");
        assertThat(alter(engineer(), "SNR-1004", Map.of("maker", "Supplier Heron"))
                        .statusCode())
                .isEqualTo(303);
        HttpResponse<String> late =
                first.post("/parts/change", sent(page, Map.of("revision", "B")).toArray(String[]::new));
        assertThat(late.statusCode()).isEqualTo(422);
        Document again = Jsoup.parse(late.body());
        assertThat(again.select("[role=alert]").text()).contains("Maker").contains("Revision");
        assertThat(again.select("#revision").val()).isEqualTo("B");
        assertThat(first.page("/parts/type?number=SNR-1004").select("dl").text())
                .contains("Supplier Heron");
        HttpResponse<String> kept =
                first.post("/parts/change", sent(again, Map.of()).toArray(String[]::new));
        assertThat(kept.statusCode()).isEqualTo(303);
    }

    @Test
    void aFileIsShownFirstAndItsGoodLinesAreKept() {
        Visitor engineer = engineer();
        String text = "part_number,level,peak_c,shade\nFILE-1,3,260,red\nFILE-2,33,260,red\nSNR-1005,2,260,blue\n";
        HttpResponse<String> preview = engineer.submit("/parts/import", "/parts/import", "text", text);
        assertThat(preview.statusCode()).isEqualTo(422);
        Document page = Jsoup.parse(preview.body());
        assertThat(page.text())
                .contains("1 new, 1 altered, 0 as they are, 1 lines that can't be read")
                .contains("left out: shade")
                .contains("33 is not known");
        assertThat(engineer.get("/parts/type?number=FILE-1").statusCode()).isEqualTo(404);

        List<String> fields = sent(page, Map.of("good", "only"));
        assertThat(alter(engineer(), "SNR-1005", Map.of("revision", "Z")).statusCode())
                .isEqualTo(303);
        HttpResponse<String> stale = engineer.post("/parts/import", fields.toArray(String[]::new));
        assertThat(stale.statusCode()).isEqualTo(422);
        assertThat(Jsoup.parse(stale.body()).select("[role=alert]").text()).contains("Nothing was kept");

        List<String> fresh = sent(Jsoup.parse(stale.body()), Map.of("good", "only"));
        CLOCK.passes(Duration.ofSeconds(1));
        assertThat(engineer.post("/parts/import", fresh.toArray(String[]::new)).statusCode())
                .isEqualTo(303);
        assertThat(engineer.page("/parts/type?number=FILE-1").select("dl").text())
                .contains("260 °C");
        assertThat(engineer.page("/parts/type?number=SNR-1005").select("dl").text())
                .contains("Supplier Heron")
                .contains("Z");
    }

    @Test
    void whatIsSavedAsAFileIsReadAsNoChange() {
        Visitor engineer = engineer();
        String saved = engineer.get("/parts/export").body();
        assertThat(saved).startsWith("part_number,maker,description");
        HttpResponse<String> preview = engineer.submit("/parts/import", "/parts/import", "text", saved);
        assertThat(preview.statusCode()).isEqualTo(200);
        Document page = Jsoup.parse(preview.body());
        assertThat(page.text()).contains("0 new, 0 altered").contains("0 lines that can't be read");
        assertThat(page.select("button[name=good]")).isEmpty();
        assertThat(engineer.get("/parts/export?text=sonar&level=4").body().lines())
                .hasSize(2);
    }

    @Test
    void fiveThousandLinesAreKeptInOneGo() {
        Visitor engineer = engineer();
        StringBuilder text = new StringBuilder("part_number,level,peak_c\n");
        IntStream.range(0, 5000).forEach(i -> text.append("BIG-").append(i).append(",3,260\n"));
        HttpResponse<String> preview = engineer.submit("/parts/import", "/parts/import", "text", text.toString());
        List<String> fields = sent(Jsoup.parse(preview.body()), Map.of("good", "only"));
        assertThat(engineer.post("/parts/import", fields.toArray(String[]::new)).statusCode())
                .isEqualTo(303);
        Document list = engineer.page("/parts?text=BIG-");
        assertThat(list.select(".lead").text()).contains("5000");
        assertThat(list.select("tbody tr")).hasSize(50);
        assertThat(engineer.page("/parts?text=BIG-&page=99").select("tbody tr")).hasSize(50);
    }
}
