package bagclock.ovens;

import bagclock.core.proof.HotTime;
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
 * What went into one oven at one time and is in there; or, of a run that ended, what came out.
 *
 * @param shown humidity that the oven was shown to hold
 * @param cameToTemperatureAt empty if nobody has noted it
 * @param interruptions what did not count, as noted
 * @param items at least one, by tag
 */
record Load(
        BakeOven oven,
        Instant loadedAt,
        Celsius setPoint,
        Optional<RelativeHumidity> shown,
        Optional<Instant> cameToTemperatureAt,
        List<Interruption> interruptions,
        List<Loaded> items) {
    /**
     * One item in the oven, or that was in it.
     *
     * @param view of one that is out: as it was when it went in
     * @param needed time at temperature that dries it; empty if this run can't
     * @param outAt empty as long as it is in there
     */
    record Loaded(ItemView view, Optional<Duration> needed, Optional<Instant> outAt) {
        String tag() {
            return view.item().tag();
        }

        /** What is missing after some time at temperature; empty if nothing is. */
        Optional<Duration> missingAfter(Duration atTemperature) {
            return needed.map(all -> all.minus(atTemperature)).filter(rest -> !rest.isNegative() && !rest.isZero());
        }
    }

    Load {
        interruptions = List.copyOf(interruptions);
        items = List.copyOf(items);
    }

    /** When the last of it came out; empty as long as something is in there. */
    Optional<Instant> outAt() {
        return items.stream().allMatch(item -> item.outAt().isPresent())
                ? items.stream().flatMap(item -> item.outAt().stream()).max(Comparator.naturalOrder())
                : Optional.empty();
    }

    /** From when time counts: as noted, else after the oven's declared heat-up; anew after it went cold. */
    Instant countsFrom() {
        Instant hot = cameToTemperatureAt.orElse(loadedAt.plus(oven.heatUp()));
        return interruptions.stream()
                .filter(Interruption::cold)
                .map(one -> one.spell().to())
                .filter(back -> cameToTemperatureAt.filter(back::isBefore).isEmpty())
                .map(back -> back.plus(oven.heatUp()))
                .filter(hot::isBefore)
                .max(Comparator.naturalOrder())
                .orElse(hot);
    }

    private HotTime hotTime() {
        return new HotTime(
                countsFrom(), interruptions.stream().map(Interruption::spell).toList());
    }

    /** When so much time at temperature will have passed, as far as it is known now. */
    Instant readyAfter(Duration needed) {
        return hotTime().after(needed);
    }

    /** When all of it that this run can dry will be dry. */
    Optional<Instant> readyAt() {
        return items.stream()
                .flatMap(item -> item.needed().stream())
                .max(Comparator.naturalOrder())
                .map(this::readyAfter);
    }

    /** Time at temperature if it came out at a moment; at least nothing. */
    Duration atTemperatureBy(Instant moment) {
        return hotTime().until(moment);
    }
}
