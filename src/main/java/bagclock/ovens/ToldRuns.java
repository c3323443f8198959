package bagclock.ovens;

import bagclock.core.exposure.Event;
import bagclock.desk.ItemView;
import bagclock.ledger.Act;
import bagclock.ledger.Notes;
import bagclock.logfile.Layout;
import bagclock.readings.LoggerFile;
import bagclock.readings.Source;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Keeps runs that ended in an oven before, as if they had been told on the pages. */
final class ToldRuns {
    private final Ovens ovens;
    private final Charts charts;
    private final EndedRuns ended;
    private final LateProof late;

    ToldRuns(Ovens ovens, Charts charts, EndedPages pages) {
        this.ovens = ovens;
        this.charts = charts;
        this.ended = pages.runs();
        this.late = pages.late();
    }

    /** Nothing where runs are kept already. */
    void keep(List<ToldRun> runs, Instant now) {
        if (charts.store().ends(1).isEmpty()) {
            runs.forEach(run -> keep(run, now));
        }
    }

    private void keep(ToldRun run, Instant now) {
        for (String tag : run.tags()) {
            end(tag, run.who(), now).ifPresent(charts.store()::add);
        }
        run.chart()
                .ifPresent(chart -> end(run.tags().get(0), run.who(), now)
                        .flatMap(end -> ended.find(end.oven(), end.loadedAt(), now))
                        .ifPresent(load -> prove(load, chart, new LateProof.Word(run.who(), false, now))));
    }

    private void prove(Load load, ToldRun.ChartText chart, LateProof.Word word) {
        ByteArrayInputStream content = new ByteArrayInputStream(chart.text().getBytes(StandardCharsets.UTF_8));
        LoggerFile file = charts.store().add(load, chart.fileName(), content, new Source(word.who(), word.now()));
        Layout layout = charts.layout(file).orElseThrow();
        ReadChart read = charts.read(file, layout, ChartAnswers.usual(layout));
        late.prove(load, at -> charts.weigh(load, file, read, at, word.now()), word);
        ProofRow.Head head = new ProofRow.Head(load.oven().code(), load.loadedAt(), word.now(), word.who());
        charts.store().add(ProofRow.of(head, file.id(), read.answers()));
    }

    /** How the last run of an item ended, as its ledger tells. */
    private Optional<ChartStore.End> end(String tag, String who, Instant now) {
        ItemView view = ovens.desk().item(tag, now).orElseThrow();
        Optional<Event.BakeEnded> out = view.timeline().events().stream()
                .filter(Event.BakeEnded.class::isInstance)
                .map(Event.BakeEnded.class::cast)
                .reduce((one, other) -> other);
        Optional<Event.BakeStarted> in = view.timeline().events().stream()
                .filter(Event.BakeStarted.class::isInstance)
                .map(Event.BakeStarted.class::cast)
                .reduce((one, other) -> other);
        return in.flatMap(start -> out.map(stop -> end(view, start, stop, who)));
    }

    private ChartStore.End end(ItemView view, Event.BakeStarted in, Event.BakeEnded out, String who) {
        String tag = view.item().tag();
        Optional<Duration> needed = ovens.desk()
                .item(tag, out.at().minusMillis(1))
                .flatMap(before -> Ovens.needed(before.answer(), in.at()));
        return new ChartStore.End(
                oven(view, in.at()),
                in.at(),
                tag,
                out.at(),
                who,
                out.at(),
                in.temperature().degrees(),
                out.atTemperature().orElse(Duration.ZERO).toMillis(),
                needed.map(Duration::toMillis),
                Optional.empty(),
                "");
    }

    private static String oven(ItemView view, Instant loadedAt) {
        return view.lines().stream()
                .filter(line -> line.stands() && line.entry().happenedAt().equals(loadedAt))
                .map(line -> line.entry().act())
                .filter(act -> act instanceof Act.Happened happened && happened.event() instanceof Event.BakeStarted)
                .map(act -> ((Act.Happened) act).notes().getOrDefault(Notes.PLACE, ""))
                .findFirst()
                .orElse("");
    }
}
