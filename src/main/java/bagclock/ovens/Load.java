package bagclock.ovens;

import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.desk.ItemView;
import bagclock.register.KnownPlace.BakeOven;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What went into one oven at one time.
 *
 * @param shown humidity that the oven was shown to hold
 * @param cameToTemperatureAt empty if nobody has noted it
 * @param items at least one, by tag
 */
record Load(
        BakeOven oven,
        Instant loadedAt,
        Celsius setPoint,
        Optional<RelativeHumidity> shown,
        Optional<Instant> cameToTemperatureAt,
        List<Loaded> items) {
    /**
     * One item in the oven.
     *
     * @param needed time at temperature that dries it; empty if this run can't
     */
    record Loaded(ItemView view, Optional<Duration> needed) {
        String tag() {
            return view.item().tag();
        }

        /** What is missing after some time at temperature; empty if nothing is. */
        Optional<Duration> missingAfter(Duration atTemperature) {
            return needed.map(all -> all.minus(atTemperature)).filter(rest -> !rest.isNegative() && !rest.isZero());
        }
    }

    Load {
        items = List.copyOf(items);
    }

    /** From when time counts: as noted, else after the oven's declared heat-up. */
    Instant countsFrom() {
        return cameToTemperatureAt.orElse(loadedAt.plus(oven.heatUp()));
    }

    /** When all of it that this run can dry will be dry. */
    Optional<Instant> readyAt() {
        return items.stream()
                .flatMap(item -> item.needed().stream())
                .max(Comparator.naturalOrder())
                .map(countsFrom()::plus);
    }

    /** Time at temperature if it came out at a moment; at least nothing. */
    Duration atTemperatureBy(Instant moment) {
        Duration time = Duration.between(countsFrom(), moment);
        return time.isNegative() ? Duration.ZERO : time;
    }
}
