package bagclock.ovens;

import bagclock.core.heat.BakeOffer;
import bagclock.core.proof.Asked;
import bagclock.core.proof.Band;
import bagclock.core.proof.ChartProof;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.core.standard.BakeTimes;
import bagclock.core.standard.Standard;
import bagclock.desk.Desk;
import bagclock.logfile.Layout;
import bagclock.logfile.LayoutFinder;
import bagclock.logfile.LogSource;
import bagclock.readings.LoggerFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.Optional;

/** Weighs the charts of loads. */
final class Charts {
    private final Desk desk;
    private final ChartStore store;

    Charts(Desk desk, ChartStore store) {
        this.desk = desk;
        this.store = store;
    }

    ChartStore store() {
        return store;
    }

    /** A chart with what it proves of a load. */
    record Weighed(LoggerFile file, ReadChart read, ChartProof proof, ChartProof.Stay stay) {}

    /** How a file is laid out; empty if no line of it has a time and a value. */
    Optional<Layout> layout(LoggerFile file) {
        try {
            return LayoutFinder.find(store.source(file.id()));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    ReadChart read(LoggerFile file, Layout layout, ChartAnswers answers) {
        LogSource source = store.source(file.id());
        return ReadChart.of(source, layout, answers);
    }

    /** The chart that proves a load until it comes out; empty if none was kept. */
    Optional<Weighed> kept(Load load, Instant outAt, Instant now) {
        Optional<ProofRow> row = store.proof(load);
        if (row.isEmpty()) {
            return Optional.empty();
        }
        LoggerFile file = store.file(load, row.get().fileId());
        return layout(file)
                .map(layout -> read(file, layout, row.get().answers()))
                .filter(ReadChart::isReady)
                .map(read -> weigh(load, file, read, new ChartProof.Stay(load.loadedAt(), outAt), now));
    }

    /** A chart that can be weighed. */
    Weighed weigh(Load load, LoggerFile file, ReadChart read, ChartProof.Stay stay, Instant now) {
        ChartProof proof = ChartProof.of(read.chart(), asked(load, desk.standard(now)), stay);
        return new Weighed(file, read, proof, stay);
    }

    /** What the bakes of a load ask of its oven. */
    static Asked asked(Load load, Standard standard) {
        Optional<RelativeHumidity> most = load.items().stream()
                .flatMap(item -> humidity(load, item, standard).stream())
                .min(Comparator.comparing(RelativeHumidity::percent));
        boolean known = most.flatMap(limit -> load.shown().map(shown -> !shown.isAbove(limit)))
                .orElse(false);
        return new Asked(Band.of(load.setPoint(), standard), most, known);
    }

    /** As its own bake says; where it has none at this set-point as the table's. */
    private static Optional<RelativeHumidity> humidity(Load load, Load.Loaded item, Standard standard) {
        Optional<BakeOffer> own = item.view().answer().bakes().stream()
                .filter(offer -> offer.temperature().equals(load.setPoint()))
                .findFirst();
        return own.map(BakeOffer::maxHumidity).orElseGet(() -> tableHumidity(load, standard));
    }

    private static Optional<RelativeHumidity> tableHumidity(Load load, Standard standard) {
        return BakeTimes.HOTTEST.isAbove(load.setPoint()) ? standard.bakeHumidity(90) : Optional.empty();
    }

    /** The longest time at temperature that an item of the load needs; empty if none can be dried. */
    static Optional<Duration> needed(Load load) {
        return load.items().stream().flatMap(item -> item.needed().stream()).max(Comparator.naturalOrder());
    }
}
