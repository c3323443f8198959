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
    private final BandStore bands;

    Charts(Desk desk, ChartStore store, BandStore bands) {
        this.desk = desk;
        this.store = store;
        this.bands = bands;
    }

    ChartStore store() {
        return store;
    }

    /**
     * A chart with what it proves of a load.
     *
     * @param rule the site's own band that counted
     */
    record Weighed(LoggerFile file, ReadChart read, ChartProof proof, ChartProof.Stay stay, BandRule rule) {}

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

    /** The chart that proves a load until it comes out, by the band that counted when it was kept; empty if none was. */
    Optional<Weighed> kept(Load load, Instant outAt, Instant now) {
        Optional<ProofRow> row = store.proof(load);
        if (row.isEmpty()) {
            return Optional.empty();
        }
        LoggerFile file = store.file(load, row.get().fileId());
        BandRule rule = bands.at(row.get().recordedAt());
        return layout(file)
                .map(layout -> read(file, layout, row.get().answers()))
                .filter(ReadChart::isReady)
                .map(read -> weigh(load, new Part(file, read, rule), outAt, now));
    }

    /** A chart that can be weighed, as if it were kept now, until something comes out. */
    Weighed weigh(Load load, LoggerFile file, ReadChart read, Instant outAt, Instant now) {
        return weigh(load, new Part(file, read, bands.at(now)), outAt, now);
    }

    private record Part(LoggerFile file, ReadChart read, BandRule rule) {}

    private Weighed weigh(Load load, Part part, Instant outAt, Instant now) {
        ChartProof.Stay stay = new ChartProof.Stay(load.loadedAt(), outAt);
        Asked asked = asked(load, desk.standard(now), part.rule());
        return new Weighed(
                part.file(), part.read(), ChartProof.of(part.read().chart(), asked, stay), stay, part.rule());
    }

    /** What the bakes of a load ask of its oven. */
    private static Asked asked(Load load, Standard standard, BandRule rule) {
        Optional<RelativeHumidity> most = load.items().stream()
                .flatMap(item -> humidity(load, item, standard).stream())
                .min(Comparator.comparing(RelativeHumidity::percent));
        boolean known = most.flatMap(limit -> load.shown().map(shown -> !shown.isAbove(limit)))
                .orElse(false);
        return new Asked(rule.inside(Band.of(load.setPoint(), standard), load.setPoint()), most, known);
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
