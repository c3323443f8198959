package bagclock.core.heat;

import bagclock.core.exposure.PartHistory;
import bagclock.core.exposure.Tally;
import bagclock.core.standard.BakeColumn;
import bagclock.core.standard.BakeTimes;
import bagclock.core.standard.Cited;
import bagclock.core.standard.Level;
import bagclock.core.standard.Part;
import bagclock.core.standard.Standard;
import java.time.Duration;
import java.util.Optional;

/** The bake of a part whose exposure went beyond its limits, before a new dry pack gives it a fresh shelf life. */
public final class PackingBake {
    private PackingBake() {}

    /**
     * By J-STD-033D, table 4-2, at 125 C; its 150 C column is for suppliers only and is never offered. Large arrays and
     * stacked dies take the longer of this and their row of table 4-1 (inference). Empty where the maker's own bakes take
     * the place of the tables, for levels 1, 6 and unknown, for a thickness not measured and for bodies above 4.5 mm.
     */
    public static Optional<BakeOffer> of(Standard standard, PartHistory history) {
        Part part = history.part();
        Optional<Level> level =
                CountingRating.of(standard, part, Optional.empty()).rating().level();
        if (!part.maker().tableCounts() || level.isEmpty()) {
            return Optional.empty();
        }
        BakeMenu menu = new BakeMenu(standard, part, Tally.of(part, history.timeline(), history.moment()));
        return new BakeTimes(standard, part.body())
                .rows(level.get(), BakeColumn.OVER_72H).stream()
                        .filter(row -> row.temperature().equals(BakeTimes.HOTTEST))
                        .findFirst()
                        .flatMap(row -> part.body()
                                .thickness()
                                .flatMap(mm -> standard.supplierBake(mm, level.get()))
                                .map(cell -> menu.tableOffer(new BakeTimes.Row(
                                        row.temperature(),
                                        longer(cell, row.time()),
                                        row.maxHumidity(),
                                        row.measureEdges()))));
    }

    private static Cited<Duration> longer(Cited<Duration> one, Cited<Duration> other) {
        return other.value().compareTo(one.value()) > 0 ? other : one;
    }
}
