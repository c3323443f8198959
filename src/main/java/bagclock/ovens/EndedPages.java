package bagclock.ovens;

import bagclock.core.proof.Proven;
import bagclock.core.quantity.Celsius;
import bagclock.platform.CsvTable;
import bagclock.platform.Entered;
import bagclock.platform.Texts;
import bagclock.register.KnownPlace.BakeOven;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Puts runs that ended into words, and into a table for other programs. */
final class EndedPages {
    private static final List<String> NAMES = List.of(
            "oven",
            "loaded_at",
            "out_at",
            "item",
            "set_point_c",
            "hours_at_temperature",
            "hours_needed",
            "hours_from",
            "proof",
            "chart_sha256");

    private final EndedRuns runs;
    private final LateProof late;
    private final RunPages pages;
    private final PlanAtLoad plan;
    private final Texts texts;

    EndedPages(EndedRuns runs, LateProof late, RunPages pages, PlanAtLoad plan, Texts texts) {
        this.runs = runs;
        this.late = late;
        this.pages = pages;
        this.plan = plan;
        this.texts = texts;
    }

    RunPages runPages() {
        return pages;
    }

    EndedRuns runs() {
        return runs;
    }

    LateProof late() {
        return late;
    }

    private ChartStore store() {
        return pages.charts().store();
    }

    /** The last ones first. */
    RunsPage list(List<BakeOven> ovens, int most) {
        Map<String, String> names = ovens.stream().collect(Collectors.toMap(BakeOven::code, BakeOven::name));
        return new RunsPage(
                pages.words().text("ovens.runs"),
                pages.words().text("ovens.runs.lead"),
                store().ends(most).stream()
                        .map(end -> row(end, names.getOrDefault(end.oven(), end.oven())))
                        .toList());
    }

    private RunsPage.Row row(ChartStore.End end, String oven) {
        String proof = end.verdict().isEmpty()
                ? pages.words().text("ovens.chart.without")
                : pages.chartWords().word(Proven.valueOf(end.verdict()));
        return new RunsPage.Row(
                end.tag(),
                "/ovens/" + end.oven() + "/runs/" + end.loadedAt().toEpochMilli(),
                oven,
                texts.at(end.loadedAt()),
                texts.at(end.outAt()),
                texts.temperature(new Celsius(end.setPointC())),
                pages.words()
                        .hours(Duration.ofMinutes(
                                Duration.ofMillis(end.atTemperatureMs()).toMinutes())),
                end.neededMs()
                        .map(needed -> pages.words().hours(Duration.ofMillis(needed)))
                        .orElseGet(() -> pages.words().text("ovens.needed.never")),
                proof);
    }

    /** One run; with what a chart could not correct. */
    EndedPage page(Load load, Entered entered, List<String> refused, Instant now) {
        Instant out = load.outAt().orElse(now);
        Optional<Charts.Weighed> kept = pages.charts().kept(load, out, now);
        return new EndedPage(
                pages.words().text("ovens.ended", load.oven().name()),
                OvenPages.href(load),
                pages.words()
                        .text(
                                "ovens.ended.facts",
                                texts.temperature(load.setPoint()),
                                texts.at(load.loadedAt(), now),
                                texts.at(out, now)),
                refused,
                plan.kept(load, now),
                load.items().stream().anyMatch(item -> late.isUndecided(item, now))
                        ? pages.words().text("ovens.ended.undecided")
                        : "",
                store().ends(load.oven().code(), load.loadedAt()).stream()
                        .map(end -> row(end, load.oven().name()))
                        .toList(),
                kept.map(weighed -> pages.chartWords().part(load, weighed, now)).stream()
                        .toList(),
                load.items().stream().anyMatch(item -> late.isCorrected(item, now)),
                entered.field(
                        "file",
                        pages.words().text("ovens.chart.field"),
                        pages.words().text("ovens.chart.field.hint")));
    }

    /** One line for each item of each run, the last first. */
    String table(int most) {
        List<ChartStore.End> ends = store().ends(most);
        Map<String, String> hashes = store().hashes(
                        ends.stream().flatMap(end -> end.fileId().stream()).toList());
        List<List<String>> lines = new ArrayList<>();
        for (ChartStore.End end : ends) {
            lines.add(List.of(
                    end.oven(),
                    texts.machine(end.loadedAt()),
                    texts.machine(end.outAt()),
                    CsvTable.defused(end.tag()),
                    texts.number(end.setPointC()),
                    hours(end.atTemperatureMs()),
                    end.neededMs().map(this::hours).orElse(""),
                    end.fileId().isPresent() ? "chart" : "told",
                    end.verdict(),
                    end.fileId().map(hashes::get).orElse("")));
        }
        return CsvTable.of(NAMES, lines);
    }

    private String hours(long ms) {
        return pages.words().hoursField(Duration.ofMillis(ms));
    }
}
