package bagclock.core.exposure;

import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.core.standard.BakeColumn;
import bagclock.core.standard.BakeTimes;
import bagclock.core.standard.Level;
import bagclock.core.standard.MakerBake;
import bagclock.core.standard.Part;
import bagclock.core.standard.Standard;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** How long a run in an oven must last to dry a part: by the maker's list, by the table, or by either. */
final class BakeNeed {
    private final Part part;
    private final BakeTimes times;

    BakeNeed(Standard standard, Part part) {
        this.part = part;
        this.times = new BakeTimes(standard, part.body());
    }

    /** Time at temperature that this run needs; empty if it cannot count. */
    Optional<Duration> of(Event.BakeStarted run, Level level, BakeColumn column) {
        boolean tooHot = run.temperature().isAbove(BakeTimes.HOTTEST) && !makerGoesAbove125();
        if (tooHot) {
            return Optional.empty();
        }
        Optional<Duration> byMaker = byMaker(run);
        Optional<Duration> byTable = part.maker().tableCounts() ? byTable(run, level, column) : Optional.empty();
        return Stream.of(byMaker, byTable).flatMap(Optional::stream).min(Comparator.naturalOrder());
    }

    private Optional<Duration> byMaker(Event.BakeStarted run) {
        Optional<Celsius> highest = part.maker().bakes().stream()
                .map(MakerBake::temperature)
                .filter(temperature -> !temperature.isAbove(run.temperature()))
                .max(Comparator.naturalOrder());
        return part.maker().bakes().stream()
                .filter(bake -> highest.filter(bake.temperature()::equals).isPresent())
                .filter(bake -> isShown(run, bake.maxHumidity()))
                .map(MakerBake::time)
                .min(Comparator.naturalOrder());
    }

    private Optional<Duration> byTable(Event.BakeStarted run, Level level, BakeColumn column) {
        List<BakeTimes.Row> rows = times.rows(level, column);
        return rows.stream()
                .filter(row -> !row.temperature().isAbove(run.temperature()))
                .max(Comparator.comparing(BakeTimes.Row::temperature))
                .filter(row -> isShown(run, row.maxHumidity()))
                .map(row -> row.time().value());
    }

    private boolean makerGoesAbove125() {
        return part.maker().bakes().stream().anyMatch(bake -> bake.temperature().isAbove(BakeTimes.HOTTEST));
    }

    private static boolean isShown(Event.BakeStarted run, Optional<RelativeHumidity> needed) {
        return needed.isEmpty()
                || run.maxHumidity()
                        .filter(shown -> !shown.isAbove(needed.get()))
                        .isPresent();
    }
}
