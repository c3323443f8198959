package bagclock.ovens;

import bagclock.core.proof.Proven;
import bagclock.core.quantity.Celsius;
import bagclock.platform.CsvTable;
import bagclock.platform.Entered;
import bagclock.platform.Texts;
import bagclock.register.KnownPlace.BakeOven;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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
            "chart_sha256",
            "board");

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

    /** A row, or a line of a table, by when its run ended. */
    private record Ended<T>(Instant at, T what) {
        static <T> List<T> last(Stream<Ended<T>> items, Stream<Ended<T>> boards, int most) {
            return Stream.concat(items, boards)
                    .sorted(Comparator.comparing((Ended<T> one) -> one.at()).reversed())
                    .limit(most)
                    .map(Ended::what)
                    .toList();
        }
    }

    /** The last ones first. */
    RunsPage list(List<BakeOven> ovens, int most, Instant now) {
        Map<String, String> names = ovens.stream().collect(Collectors.toMap(BakeOven::code, BakeOven::name));
        return new RunsPage(
                pages.words().text("ovens.runs"),
                pages.words().text("ovens.runs.lead"),
                Ended.last(
                        store().ends(most).stream()
                                .map(end ->
                                        new Ended<>(end.outAt(), row(end, names.getOrDefault(end.oven(), end.oven())))),
                        runs.ofBoards(most, now).stream()
                                .map(run ->
                                        new Ended<>(run.outAt(), row(run, names.getOrDefault(run.oven(), run.oven())))),
                        most));
    }

    /** What its parts needed is said on the board's page, part by part. */
    private RunsPage.Row row(BoardRun run, String oven) {
        String href = "/boards/" + run.serial();
        return new RunsPage.Row(
                pages.words().text("ovens.runs.board", run.serial()),
                href,
                href,
                oven,
                texts.at(run.loadedAt()),
                texts.at(run.outAt()),
                texts.temperature(run.setPoint()),
                pages.words().hours(run.atTemperature()),
                pages.words().text("ovens.runs.board.needed"),
                pages.words().text("ovens.chart.without"));
    }

    private RunsPage.Row row(ChartStore.End end, String oven) {
        String proof = end.verdict().isEmpty()
                ? pages.words().text("ovens.chart.without")
                : pages.chartWords().word(Proven.valueOf(end.verdict()));
        return new RunsPage.Row(
                end.tag(),
                "/items/" + end.tag(),
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

    /** One line for each item of each run and one for each board, the last first. */
    String table(int most, Instant now) {
        List<ChartStore.End> ends = store().ends(most);
        Map<String, String> hashes = store().hashes(
                        ends.stream().flatMap(end -> end.fileId().stream()).toList());
        return CsvTable.of(
                NAMES,
                Ended.last(
                        ends.stream().map(end -> new Ended<>(end.outAt(), line(end, hashes))),
                        runs.ofBoards(most, now).stream().map(run -> new Ended<>(run.outAt(), line(run))),
                        most));
    }

    private List<String> line(ChartStore.End end, Map<String, String> hashes) {
        return List.of(
                end.oven(),
                texts.machine(end.loadedAt()),
                texts.machine(end.outAt()),
                CsvTable.defused(end.tag()),
                texts.number(end.setPointC()),
                hours(end.atTemperatureMs()),
                end.neededMs().map(this::hours).orElse(""),
                end.fileId().isPresent() ? "chart" : "told",
                end.verdict(),
                end.fileId().map(hashes::get).orElse(""),
                "");
    }

    private List<String> line(BoardRun run) {
        return List.of(
                run.oven(),
                texts.machine(run.loadedAt()),
                texts.machine(run.outAt()),
                "",
                texts.number(run.setPoint().degrees()),
                hours(run.atTemperature().toMillis()),
                "",
                "told",
                "",
                "",
                CsvTable.defused(run.serial()));
    }

    private String hours(long ms) {
        return pages.words().hoursField(Duration.ofMillis(ms));
    }
}
