package bagclock.core.exposure;

import bagclock.core.quantity.Celsius;
import bagclock.core.standard.CarrierLimit;
import bagclock.core.standard.Part;
import bagclock.core.standard.SiteLimits;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a part's history adds up to whatever its rating.
 *
 * @param bakedAbove90 time above 90 C in bakes, failed ones included
 * @param bakes bakes begun
 * @param passes heats above 200 C body temperature
 * @param carrier what it is in or on now
 * @param runs every bake begun in this history
 */
public record Tally(Duration bakedAbove90, int bakes, int passes, CarrierLimit carrier, List<Event.BakeStarted> runs) {
    /** A body at or below this temperature makes no pass and no harm (J-STD-033D, rework clause). */
    private static final Celsius HARMLESS_PEAK = SiteLimits.HARMLESS_PEAK;

    private static final Celsius COUNTED_ABOVE = new Celsius(90);

    /** Adds up a history; a bake still running counts as long as it has lasted at the moment. */
    public static Tally of(Part part, Timeline timeline, Instant moment) {
        Tally tally = new Tally(
                part.prior().bakedAbove90(), part.prior().bakes(), part.prior().passes(), part.carrier(), List.of());
        Whereabouts where = Whereabouts.UNTOLD;
        Instant carrierAt = Instant.MIN;
        for (Event event : timeline.events()) {
            Whereabouts after = where.after(event);
            tally = tally.after(event, where, part);
            if (event instanceof Event.Mounted || event instanceof Event.Removed) {
                boolean told = carrierAt.equals(event.at());
                tally = tally.carriedBy(told ? limit(tally.carrier, after.mounted()) : new CarrierLimit.Unknown());
            }
            carrierAt = event instanceof Event.CarrierChanged ? event.at() : carrierAt;
            where = after;
        }
        return where.place() instanceof Place.Oven oven
                ? tally.plusHot(oven.bake(), Duration.between(oven.bake().at(), moment))
                : tally;
    }

    private Tally after(Event event, Whereabouts where, Part part) {
        if (event instanceof Event.BakeStarted bake) {
            List<Event.BakeStarted> all =
                    Stream.concat(runs.stream(), Stream.of(bake)).toList();
            return new Tally(bakedAbove90, bakes + 1, passes, carrier, all);
        } else if (event instanceof Event.BakeEnded ended && where.place() instanceof Place.Oven oven) {
            Duration stay = Duration.between(oven.bake().at(), ended.at());
            return plusHot(oven.bake(), ended.atTemperature().orElse(stay));
        } else if (event instanceof Event.Heated heated && isPass(heated.peakBody())) {
            return new Tally(bakedAbove90, bakes, passes + 1, carrier, runs);
        } else if (event instanceof Event.CarrierChanged changed) {
            return carriedBy(limit(changed.limit(), where.mounted()));
        } else if (event instanceof Event.Joined joined) {
            return worstWith(joined, part);
        }
        return this;
    }

    /** A mounted part is on its board: "in no carrier" cannot be said of it. */
    private static CarrierLimit limit(CarrierLimit told, boolean mounted) {
        return mounted && told instanceof CarrierLimit.None ? new CarrierLimit.Unknown() : told;
    }

    /** The same with another limit of what the part is in or on. */
    public Tally carriedBy(CarrierLimit limit) {
        return new Tally(bakedAbove90, bakes, passes, limit, runs);
    }

    private Tally plusHot(Event.BakeStarted bake, Duration time) {
        boolean counts = bake.temperature().isAbove(COUNTED_ABOVE);
        return counts ? new Tally(bakedAbove90.plus(time), bakes, passes, carrier, runs) : this;
    }

    private Tally worstWith(Event.Joined joined, Part part) {
        Tally worst = this;
        for (Timeline other : joined.others()) {
            worst = worst.worseOf(of(part, other.upTo(joined.at()), joined.at()));
        }
        return worst;
    }

    private Tally worseOf(Tally other) {
        Duration baked = bakedAbove90.compareTo(other.bakedAbove90) >= 0 ? bakedAbove90 : other.bakedAbove90;
        List<Event.BakeStarted> all = new ArrayList<>(runs);
        all.addAll(other.runs);
        return new Tally(
                baked, Math.max(bakes, other.bakes), Math.max(passes, other.passes), lower(other), List.copyOf(all));
    }

    private CarrierLimit lower(Tally other) {
        Celsius mine = carrier.borne().orElse(CarrierLimit.UNMARKED);
        Celsius theirs = other.carrier.borne().orElse(CarrierLimit.UNMARKED);
        if (carrier instanceof CarrierLimit.None) {
            return other.carrier;
        }
        return other.carrier instanceof CarrierLimit.None || theirs.isAbove(mine) ? carrier : other.carrier;
    }

    /** A heat above 200 C counts; of an unknown peak the worse is assumed. */
    public static boolean isPass(Optional<Celsius> peakBody) {
        return peakBody.filter(peak -> !peak.isAbove(HARMLESS_PEAK)).isEmpty();
    }
}
