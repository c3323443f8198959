package bagclock.ovens;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.Visitor;
import bagclock.core.heat.Verdict;
import bagclock.desk.HistoryLine;
import bagclock.ledger.Act;
import bagclock.ledger.Notes;
import bagclock.platform.Role;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Charts of ovens over HTTP, in the demonstration's shop: upload, verdict, proof, and the hours that come from it. */
class ChartSiteTest {
    private static OvenShop shop;

    @BeforeAll
    static void start() {
        shop = new OvenShop();
    }

    @AfterAll
    static void stop() {
        shop.close();
    }

    /** A sample of each value in every minute since now: {@code 30@60} is half an hour at 60. */
    private static String log(String header, String... pieces) {
        List<String> lines = new ArrayList<>(List.of(header));
        Instant at = shop.clock().instant().truncatedTo(ChronoUnit.MINUTES);
        for (String piece : pieces) {
            String[] parts = piece.split("@");
            for (int i = 0; i < Integer.parseInt(parts[0]); i++) {
                lines.add(LocalDateTime.ofInstant(at, ZoneOffset.UTC).toString().replace('T', ' ') + "Z," + parts[1]);
                at = at.plus(Duration.ofMinutes(1));
            }
        }
        return String.join("\n", lines) + "\n";
    }

    private static String upload(Visitor visitor, String run, String text) {
        HttpResponse<String> answer =
                visitor.uploadFrom(run, run + "/charts", new Visitor.FilePart("file", "oven.csv", text));
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(303);
        return Visitor.target(answer);
    }

    private static HttpResponse<String> unload(Visitor visitor, String run, String tag, String... more) {
        List<String> fields = new ArrayList<>(List.of("outAt", shop.now(), "tag", tag, "to", "DRY-5"));
        fields.addAll(List.of(more));
        return visitor.submit(run, run + "/out", fields.toArray(String[]::new));
    }

    private static HttpResponse<String> keep(Visitor visitor, String chart, String... fields) {
        return visitor.submit(chart, chart + "/keep", fields);
    }

    private static Map<String, String> lastNotes(String tag) {
        List<HistoryLine> lines =
                shop.desk().item(tag, shop.clock().instant()).orElseThrow().lines();
        return lines.stream()
                .map(line -> line.entry().act())
                .filter(act ->
                        act instanceof Act.Happened happened && happened.notes().containsKey(Notes.TIME_FROM))
                .map(act -> ((Act.Happened) act).notes())
                .reduce((one, other) -> other)
                .orElseThrow();
    }

    @Test
    void aProvenBakeTakesItsHoursFromTheChart() {
        Visitor visitor = shop.person(Role.PLANNER);
        String run = shop.loaded(visitor, "OVEN-3", "125", "T-436");
        String log = log("Time,Tray top °C,Tray back °C,Room °C", "25@90,60,22", "700@127,126,22");
        shop.clock().passes(Duration.ofHours(13));
        visitor = shop.person(Role.PLANNER);
        assertThat(visitor.page(run).text()).contains("Without proof");

        String chart = upload(visitor, run, log);
        Document looked = visitor.page(chart);
        assertThat(looked.select("#proof .banner").text()).contains("Short");

        HttpResponse<String> kept = keep(visitor, chart, "probe", "0", "probe", "1", "air", "");
        assertThat(kept.statusCode()).isEqualTo(303);
        Document page = visitor.page(run);
        assertThat(page.select("#proof .banner").text()).contains("Proven 11 h 39 min in band of");
        assertThat(page.select("#proof").text()).contains("Left out, not in the load: Room °C", "SHA-256");
        assertThat(page.select("#proof figure svg rect.inside")).hasSize(1);
        assertThat(page.select("input[name=hours]")).isEmpty();
        assertThat(visitor.page("/ovens").text()).contains("Proven");

        assertThat(unload(visitor, run, "T-436").statusCode()).isEqualTo(303);
        assertThat(shop.verdict("T-436")).isEqualTo(Verdict.CLEAR);
        assertThat(lastNotes("T-436")).containsEntry(Notes.TIME_FROM, "chart").containsKey(Notes.CHART);
        assertThat(visitor.page("/ovens/runs").text()).contains("T-436", "Proven");
    }

    @Test
    void aChartThatIsShortIsNotMadeLonger() {
        Visitor visitor = shop.person(Role.PLANNER);
        String run = shop.loaded(visitor, "OVEN-1", "125", "T-424");
        String log = log("Time,Tray °C", "25@90", "200@126", "20@110", "100@126");
        shop.clock().passes(Duration.ofHours(10));
        String chart = upload(visitor, run, log);
        keep(visitor, chart, "probe", "0", "air", "");
        assertThat(visitor.page(run).select("#proof").text())
                .contains("Short", "6 h 2 min missing", "Below the band, 110 °C. Longer than 15 min");

        HttpResponse<String> early = unload(visitor, run, "T-424", "hours", "9");
        assertThat(early.statusCode()).isEqualTo(422);
        assertThat(Jsoup.parse(early.body()).text()).contains("Too early", "T-424: 6 h 2 min missing of 11 h");
        assertThat(unload(visitor, run, "T-424", "early", "yes", "hours", "9").statusCode())
                .isEqualTo(303);
        assertThat(shop.verdict("T-424")).isEqualTo(Verdict.BAKE);
    }

    @Test
    void aLoadThatWasTooHotWaitsForAnEngineer() {
        Visitor planner = shop.person(Role.PLANNER);
        String run = shop.loaded(planner, "OVEN-1", "125", "T-424");
        String log = log("Time,Tray °C", "500@126", "3@141", "50@126");
        shop.clock().passes(Duration.ofHours(10));
        keep(planner, upload(planner, run, log), "probe", "0", "air", "");

        assertThat(planner.page(run).select("#proof .banner").text()).contains("Too hot", "hold");
        assertThat(unload(planner, run, "T-424", "decided", "yes", "early", "yes")
                        .statusCode())
                .isEqualTo(403);
        Visitor engineer = shop.person(Role.ENGINEER);
        assertThat(unload(engineer, run, "T-424", "early", "yes").statusCode()).isEqualTo(422);
        assertThat(shop.verdict("T-424")).isEqualTo(Verdict.WAIT);
        assertThat(unload(engineer, run, "T-424", "early", "yes", "decided", "yes")
                        .statusCode())
                .isEqualTo(303);
        assertThat(planner.page("/ovens/runs").text()).contains("Too hot");
    }

    @Test
    void whatAChartLeavesOpenIsAskedAndKeptForTheOven() {
        Visitor visitor = shop.person(Role.PLANNER);
        String run = shop.loaded(visitor, "OVEN-1", "125", "T-424");
        String log = log("Time,Ch 1,Ch 2", "700@126,127").replace("Z,", ",");
        shop.clock().passes(Duration.ofHours(12));
        visitor = shop.person(Role.PLANNER);
        String chart = upload(visitor, run, log);
        assertThat(visitor.page(chart).text()).contains("Say which channels are in the load.");

        Document asked = visitor.page(chart);
        assertThat(asked.select("input[name=zone]")).hasSize(1);
        assertThat(asked.select("input[name=unit]")).hasSize(2);
        HttpResponse<String> open = keep(visitor, chart, "probe", "0", "air", "");
        assertThat(open.statusCode()).isEqualTo(422);
        String[] said = {"probe", "0", "probe", "1", "air", "", "zone", "UTC", "unit", "CELSIUS"};
        assertThat(keep(visitor, chart, said).statusCode()).isEqualTo(303);

        assertThat(visitor.page(upload(visitor, run, log))
                        .select("#proof .banner")
                        .text())
                .contains("Proven");
        visitor.submit(run, chart + "/take-back");
        assertThat(unload(visitor, run, "T-424", "early", "yes", "hours", "1").statusCode())
                .isEqualTo(303);
    }

    @Test
    void anInterruptionAddsToTheTimeUntilItIsTakenBack() {
        Visitor visitor = shop.person(Role.PLANNER);
        String run = shop.loaded(visitor, "OVEN-1", "125", "T-424");
        String ready = visitor.page(run).select("main .sentence").text();
        Instant in = shop.clock().instant();
        shop.clock().passes(Duration.ofHours(3));
        String from =
                LocalDateTime.ofInstant(in.plusSeconds(3600), ZoneOffset.UTC).toString();
        String to =
                LocalDateTime.ofInstant(in.plusSeconds(5400), ZoneOffset.UTC).toString();
        String action = run + "/interruptions";

        HttpResponse<String> refused = visitor.submit(run, action, "breakKind", "DOOR", "brokeAt", to, "backAt", from);
        assertThat(Jsoup.parse(refused.body()).text()).contains("Must be after the start");
        visitor.submit(run, action, "breakKind", "DOOR", "brokeAt", from, "backAt", to);
        Document page = visitor.page(run);
        assertThat(page.text()).contains("Door opened", "30 min more");
        assertThat(page.select("main .sentence").text()).isNotEqualTo(ready);

        visitor.submit(run, action + "/1/take-back");
        assertThat(visitor.page(run).select("main .sentence").text()).isEqualTo(ready);
        assertThat(unload(visitor, run, "T-424", "hours", "0", "early", "yes").statusCode())
                .isEqualTo(303);
    }

    @Test
    void aProofIsTakenBackAndAFileThatIsNoChartIsNamed() {
        Visitor visitor = shop.person(Role.PLANNER);
        String run = shop.loaded(visitor, "OVEN-1", "125", "T-424");
        String chart = upload(visitor, run, log("Time,Tray °C", "5@126"));
        keep(visitor, chart, "probe", "0", "air", "");
        assertThat(visitor.page(run).select("#proof")).hasSize(1);
        visitor.submit(run, chart + "/take-back");
        assertThat(visitor.page(run).select("#proof")).isEmpty();

        assertThat(visitor.page(upload(visitor, run, "no chart")).text())
                .contains("No line of this file has a time and a value.");
        HttpResponse<String> empty =
                visitor.uploadFrom(run, run + "/charts", new Visitor.FilePart("file", "oven.csv", ""));
        assertThat(empty.statusCode()).isEqualTo(422);
        assertThat(visitor.page("/climate/files").text()).doesNotContain("oven.csv");
        assertThat(unload(visitor, run, "T-424", "early", "yes", "hours", "0").statusCode())
                .isEqualTo(303);
    }
}
