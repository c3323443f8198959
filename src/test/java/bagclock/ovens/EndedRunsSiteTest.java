package bagclock.ovens;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.Visitor;
import bagclock.core.exposure.Event;
import bagclock.core.heat.Verdict;
import bagclock.desk.HistoryLine;
import bagclock.ledger.Act;
import bagclock.ledger.Notes;
import bagclock.platform.Role;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Charts that come after a run ended, over HTTP in the demonstration's shop: they correct its hours, by entries. */
class EndedRunsSiteTest {
    private static OvenShop shop;

    @BeforeAll
    static void start() {
        shop = new OvenShop();
    }

    @AfterAll
    static void stop() {
        shop.close();
    }

    /** A run of some hours that ended without a chart, told to have lasted as long; its address. */
    private static String ended(String oven, String tag, String told) {
        Visitor visitor = shop.person(Role.PLANNER);
        String run = shop.loaded(visitor, oven, "125", tag);
        shop.clock().passes(Duration.ofHours(14));
        visitor = shop.person(Role.PLANNER);
        HttpResponse<String> out = visitor.submit(
                run, run + "/out", "outAt", shop.now(), "tag", tag, "to", "DRY-5", "hours", told, "early", "yes");
        assertThat(out.statusCode()).as(OvenShop.words(out)).isEqualTo(303);
        return run.replace("/loads/", "/runs/");
    }

    /** Minutes at a value from the beginning of the run on: {@code 30@60} is half an hour at 60. */
    private static String log(String... pieces) {
        StringBuilder text = new StringBuilder("Time,Tray °C\n");
        Instant at = shop.clock().instant().truncatedTo(ChronoUnit.MINUTES).minus(Duration.ofHours(14));
        for (String piece : pieces) {
            String[] parts = piece.split("@");
            for (int i = 0; i < Integer.parseInt(parts[0]); i++) {
                text.append(at).append(',').append(parts[1]).append('\n');
                at = at.plus(Duration.ofMinutes(1));
            }
        }
        return text.toString();
    }

    /** Drops a chart on a run and keeps it; the answer. */
    private static HttpResponse<String> kept(Role role, String run, String log, String... more) {
        Visitor visitor = shop.person(role);
        HttpResponse<String> sent =
                visitor.uploadFrom(run, run + "/charts", new Visitor.FilePart("file", "late.csv", log));
        assertThat(sent.statusCode()).as(sent.body()).isEqualTo(303);
        String chart = Visitor.target(sent);
        List<String> fields = new ArrayList<>(List.of("probe", "0", "air", ""));
        fields.addAll(List.of(more));
        return visitor.submit(chart, chart + "/keep", fields.toArray(String[]::new));
    }

    private static void takeBack(String run) {
        Visitor visitor = shop.person(Role.PLANNER);
        String action = visitor.page(run).select("form[action$=take-back]").attr("action");
        assertThat(visitor.submit(run, action).statusCode()).isEqualTo(303);
    }

    private static String row(String tag) {
        return shop.person(Role.PLANNER)
                .page("/ovens/runs")
                .select("tr:has(th:contains(" + tag + "))")
                .first()
                .text();
    }

    private static List<Act.Happened> ends(String tag) {
        return shop.desk().item(tag, shop.clock().instant()).orElseThrow().lines().stream()
                .filter(HistoryLine::stands)
                .map(line -> line.entry().act())
                .filter(act -> act instanceof Act.Happened happened && happened.event() instanceof Event.BakeEnded)
                .map(Act.Happened.class::cast)
                .toList();
    }

    @Test
    void theDemonstrationHasARunWithProofAndOneWithout() {
        assertThat(row("T-434")).contains("Tall oven", "Proven", "48 h");
        assertThat(row("T-436")).contains("Bench oven", "Without proof");
        Document page = shop.person(Role.CLERK)
                .page(shop.person(Role.CLERK)
                        .page("/ovens/runs")
                        .select("tr:has(th:contains(T-434)) a[href*=/runs/]")
                        .attr("href"));
        assertThat(page.select("#proof .banner").text()).contains("Proven");
        assertThat(page.select("main").text()).contains("T-434", "T-435", "tall-oven.csv", "SHA-256");
        assertThat(shop.verdict("T-434")).isEqualTo(Verdict.CLEAR);
    }

    @Test
    void aChartThatIsShortTakesWhatWasToldBackAndGivesItAgain() {
        String run = ended("OVEN-1", "T-424", "13");
        assertThat(shop.verdict("T-424")).isEqualTo(Verdict.CLEAR);
        assertThat(shop.person(Role.PLANNER).page(run).text()).contains("Without proof");

        assertThat(kept(Role.PLANNER, run, log("30@60", "300@126")).statusCode())
                .isEqualTo(303);
        assertThat(shop.verdict("T-424")).isEqualTo(Verdict.BAKE);
        assertThat(row("T-424")).contains("Short", "4 h 59 min");
        Act.Happened end = ends("T-424").get(0);
        assertThat(end.notes()).containsEntry(Notes.TIME_FROM, "chart").containsKey(Notes.CHART);
        assertThat(((Event.BakeEnded) end.event()).atTemperature()).contains(Duration.ofMinutes(299));

        takeBack(run);
        assertThat(shop.verdict("T-424")).isEqualTo(Verdict.CLEAR);
        assertThat(row("T-424")).contains("Without proof", "13 h");
        assertThat(kept(Role.PLANNER, run, log("30@60", "800@126")).statusCode())
                .isEqualTo(303);
        assertThat(row("T-424")).contains("Proven", "13 h 19 min");
        assertThat(ends("T-424")).hasSize(1);
    }

    @Test
    void aChartThatProvesMoreThanWasToldMakesThePartDry() {
        String run = ended("OVEN-3", "T-422", "1");
        assertThat(shop.verdict("T-422")).isEqualTo(Verdict.BAKE);
        kept(Role.PLANNER, run, log("30@60", "780@127"));
        assertThat(shop.verdict("T-422")).isEqualTo(Verdict.CLEAR);
    }

    @Test
    void whatWasTooHotIsNotTrustedUntilAnEngineerDecides() {
        String run = ended("OVEN-1", "T-423", "13");
        assertThat(shop.verdict("T-423")).isEqualTo(Verdict.CLEAR);
        String log = log("30@60", "700@126", "5@141", "60@126");

        assertThat(kept(Role.PLANNER, run, log).statusCode()).isEqualTo(303);
        assertThat(shop.verdict("T-423")).isNotEqualTo(Verdict.CLEAR);
        assertThat(shop.person(Role.PLANNER).page(run).text()).contains("call an engineer");
        assertThat(row("T-423")).contains("Too hot");

        takeBack(run);
        assertThat(shop.verdict("T-423")).isEqualTo(Verdict.CLEAR);
        assertThat(kept(Role.PLANNER, run, log, "decided", "yes").statusCode()).isEqualTo(403);
        assertThat(kept(Role.ENGINEER, run, log, "decided", "yes").statusCode()).isEqualTo(303);
        assertThat(shop.verdict("T-423")).isEqualTo(Verdict.CLEAR);
        assertThat(shop.person(Role.PLANNER).page(run).text()).doesNotContain("call an engineer");
    }

    @Test
    void otherProgramsGetTheRuns() {
        String csv = shop.person(Role.CLERK).get("/ovens/runs/runs.csv").body();
        assertThat(csv)
                .startsWith("oven,loaded_at,out_at,item,set_point_c,hours_at_temperature,hours_needed,hours_from,proof,"
                        + "chart_sha256,board\r\n");
        assertThat(csv.lines().filter(line -> line.contains("T-434")).findFirst())
                .hasValueSatisfying(line -> assertThat(line).contains("OVEN-1,", ",chart,PROVEN,"));
        assertThat(csv.lines().filter(line -> line.contains("T-436")).findFirst())
                .hasValueSatisfying(
                        line -> assertThat(line).contains("OVEN-3,", ",3,").endsWith(",told,,,"));
    }

    @Test
    void anAddressWithoutARunIsNotThereAndAFileThatIsNoneIsRefused() {
        assertThat(shop.person(Role.PLANNER).get("/ovens/OVEN-1/runs/1").statusCode())
                .isEqualTo(404);
        assertThat(shop.person(Role.PLANNER).get("/ovens/OVEN-1/runs/x").statusCode())
                .isEqualTo(404);
        Visitor visitor = shop.person(Role.PLANNER);
        String run = visitor.page("/ovens/runs")
                .select("tr:has(th:contains(T-436)) a[href*=/runs/]")
                .attr("href");
        HttpResponse<String> empty =
                visitor.uploadFrom(run, run + "/charts", new Visitor.FilePart("file", "late.csv", ""));
        assertThat(empty.statusCode()).isEqualTo(422);
    }

    @Test
    void theSitesOwnBandIsStricterThanTheTablesAndHoldsFromThenOn() {
        String rules = "/ovens/plan/rules";
        shop.clock().passes(Duration.ofMinutes(1));
        Visitor planner = shop.person(Role.PLANNER);
        assertThat(planner.submit(rules, "/ovens/plan/band", "bandLeast", "2", "bandMost", "1.5")
                        .statusCode())
                .isEqualTo(422);
        assertThat(planner.submit(rules, "/ovens/plan/band", "bandLeast", "5", "bandMost", "")
                        .statusCode())
                .isEqualTo(422);
        assertThat(planner.submit(rules, "/ovens/plan/band", "bandLeast", "2", "bandMost", "")
                        .statusCode())
                .isEqualTo(303);
        String run = ended("OVEN-3", "T-419", "1");
        kept(Role.PLANNER, run, log("30@60", "780@126"));
        assertThat(shop.person(Role.PLANNER).page(run).select("#proof").text())
                .contains("Short", "Band: 127 °C to 135 °C", "the site asks so");

        shop.clock().passes(Duration.ofMinutes(1));
        planner = shop.person(Role.PLANNER);
        planner.submit(rules, "/ovens/plan/band", "bandLeast", "0", "bandMost", "");
        assertThat(shop.person(Role.PLANNER).page(run).select("#proof").text()).contains("Short");
    }
}
