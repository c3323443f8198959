package bagclock.core.heat;

import bagclock.core.exposure.Tally;
import bagclock.core.heat.Answer.Column;
import bagclock.core.heat.BakeOffer.Bar;
import bagclock.core.heat.BakeOffer.BarCode;
import bagclock.core.quantity.Celsius;
import bagclock.core.standard.BakeColumn;
import bagclock.core.standard.BakeTimes;
import bagclock.core.standard.CarrierLimit;
import bagclock.core.standard.Citation;
import bagclock.core.standard.Level;
import bagclock.core.standard.MakerBake;
import bagclock.core.standard.Part;
import bagclock.core.standard.SiteLimits;
import bagclock.core.standard.Standard;
import bagclock.core.standard.Status;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The bakes that a part has, and which of them part, carrier and earlier bakes allow. */
final class BakeMenu {
    private static final Celsius COUNTED_ABOVE = new Celsius(90);

    private final Standard standard;
    private final Part part;
    private final Tally tally;

    BakeMenu(Standard standard, Part part, Tally tally) {
        this.standard = standard;
        this.part = part;
        this.tally = tally;
    }

    /** How hot the part may be baked as far as is known; empty if only a maker's bake could tell. */
    static Optional<Celsius> partLimit(Part part) {
        if (part.maxBake().isPresent()) {
            return part.maxBake();
        }
        Optional<Celsius> maker =
                part.maker().bakes().stream().map(MakerBake::temperature).max(Comparator.naturalOrder());
        return part.body().kind().bears125()
                ? Optional.of(maker.map(hot -> Celsius.hotterOf(hot, BakeTimes.HOTTEST))
                        .orElse(BakeTimes.HOTTEST))
                : maker;
    }

    /** The maker's bakes as listed, then the table's from hot to cool. */
    List<BakeOffer> offers(Optional<Level> level, Optional<BakeColumn> column) {
        List<BakeOffer> offers = new ArrayList<>();
        part.maker().bakes().forEach(bake -> offers.add(makersOffer(bake)));
        if (part.maker().tableCounts() && level.isPresent() && column.isPresent()) {
            new BakeTimes(standard, part.body())
                    .rows(level.get(), column.get())
                    .forEach(row -> offers.add(tableOffer(row)));
        }
        return offers;
    }

    /** Which bake times the offers are read from. */
    Optional<Column> column(Optional<Level> level, Optional<BakeColumn> column) {
        boolean rows = level.isPresent()
                && column.isPresent()
                && !new BakeTimes(standard, part.body())
                        .rows(level.get(), column.get())
                        .isEmpty();
        if (part.maker().tableCounts() && rows) {
            return column.map(c -> c == BakeColumn.OVER_72H ? Column.OVER_72H : Column.WITHIN_72H);
        }
        return part.maker().bakes().isEmpty() ? Optional.empty() : Optional.of(Column.MAKER);
    }

    /** A row of a table as a bake of this part. */
    BakeOffer tableOffer(BakeTimes.Row row) {
        List<Bar> bars = bars(row.temperature(), row.time().value());
        boolean onlyMakers = part.maxBake().isEmpty() && !part.body().kind().bears125();
        if (onlyMakers && !part.maker().bakes().isEmpty()) {
            bars.add(new Bar(BarCode.PART_LIMIT_UNKNOWN, ""));
        }
        if (row.measureEdges()) {
            bars.add(new Bar(BarCode.MEASURE_EDGES, ""));
        }
        return new BakeOffer(
                row.temperature(),
                row.time().value(),
                row.maxHumidity(),
                bars,
                row.time().citation());
    }

    private BakeOffer makersOffer(MakerBake bake) {
        List<Bar> bars = bars(bake.temperature(), bake.time());
        boolean carrierTooWeak = bake.carrierLimit()
                .filter(asked -> !tally.carrier().bears(asked))
                .isPresent();
        if (carrierTooWeak && tally.carrier().bears(bake.temperature())) {
            bars.add(carrierBar());
        }
        Citation maker = new Citation("maker's rule for the part", "bake", "", "", Status.SEEN, "");
        return new BakeOffer(bake.temperature(), bake.time(), bake.maxHumidity(), bars, maker);
    }

    private List<Bar> bars(Celsius temperature, Duration time) {
        List<Bar> bars = new ArrayList<>();
        if (!tally.carrier().bears(temperature)) {
            bars.add(carrierBar());
        }
        Optional<Celsius> limit = partLimit(part);
        if (limit.isEmpty()) {
            bars.add(new Bar(BarCode.PART_LIMIT_UNKNOWN, ""));
        } else if (temperature.isAbove(limit.get())) {
            bars.add(new Bar(BarCode.PART_LIMIT, limit.get()));
        }
        if (temperature.isAbove(COUNTED_ABOVE)) {
            tooLong(tally.bakedAbove90().plus(time)).ifPresent(bars::add);
        }
        if (part.maker().maxBakes().isPresent()
                && tally.bakes() >= part.maker().maxBakes().getAsInt()) {
            bars.add(new Bar(BarCode.NUMBER_OF_BAKES, part.maker().maxBakes().getAsInt()));
        }
        return bars;
    }

    /** The standard's limit is named before the site's own. */
    private Optional<Bar> tooLong(Duration all) {
        Duration most = standard.limits().mostAbove90();
        if (all.compareTo(SiteLimits.MOST_ABOVE_90) > 0) {
            return Optional.of(new Bar(BarCode.HOURS_ABOVE_90, tally.bakedAbove90()));
        }
        return all.compareTo(most) > 0 ? Optional.of(new Bar(BarCode.SITE_HOURS_ABOVE_90, most)) : Optional.empty();
    }

    private Bar carrierBar() {
        return new Bar(BarCode.CARRIER, tally.carrier().borne().orElse(CarrierLimit.UNMARKED));
    }
}
