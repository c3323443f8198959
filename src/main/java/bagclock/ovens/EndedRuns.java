package bagclock.ovens;

import bagclock.core.exposure.Event;
import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.desk.ItemView;
import bagclock.platform.NotThere;
import bagclock.register.KnownPlace.BakeOven;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Runs that ended, as loads whose items are out. */
final class EndedRuns {
    private final Ovens ovens;
    private final ChartStore charts;

    EndedRuns(Ovens ovens, ChartStore charts) {
        this.ovens = ovens;
        this.charts = charts;
    }

    /**
     * What came out of a run.
     *
     * @throws NotThere when nothing did
     */
    Load load(String oven, long loadedAtMs, Instant now) {
        return find(oven, Instant.ofEpochMilli(loadedAtMs), now)
                .orElseThrow(() -> new NotThere("no run in " + oven + " at " + loadedAtMs));
    }

    /** The same; empty when nothing came out. */
    Optional<Load> find(String code, Instant loadedAt, Instant now) {
        List<ChartStore.End> ends = charts.ends(code, loadedAt);
        Optional<BakeOven> oven = ovens.store().ovens(now).stream()
                .filter(one -> one.code().equals(code))
                .findFirst();
        List<Load.Loaded> items = new ArrayList<>();
        for (ChartStore.End end : ends) {
            ovens.desk()
                    .item(end.tag(), loadedAt)
                    .map(view -> loaded(view, end))
                    .ifPresent(items::add);
        }
        return oven.filter(one -> !items.isEmpty())
                .map(one -> new Load(
                        one,
                        loadedAt,
                        new Celsius(ends.get(0).setPointC()),
                        shown(items.get(0).view(), loadedAt),
                        ovens.store().atTemperature(code, loadedAt),
                        ovens.store().interruptions(code, loadedAt),
                        items));
    }

    /** Runs of whole boards that ended. */
    List<BoardRun> ofBoards(int most, Instant now) {
        return BoardRun.last(ovens.desk().boards(), most, now);
    }

    private static Load.Loaded loaded(ItemView view, ChartStore.End end) {
        return new Load.Loaded(view, end.neededMs().map(Duration::ofMillis), Optional.of(end.outAt()));
    }

    private static Optional<RelativeHumidity> shown(ItemView view, Instant loadedAt) {
        return view.timeline().events().stream()
                .filter(event ->
                        event instanceof Event.BakeStarted && event.at().equals(loadedAt))
                .findFirst()
                .flatMap(event -> ((Event.BakeStarted) event).maxHumidity());
    }
}
