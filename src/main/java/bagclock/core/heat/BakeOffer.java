package bagclock.core.heat;

import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.core.standard.Citation;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * A bake that would restore the part, and what speaks against it.
 *
 * @param temperature set-point (C)
 * @param time time at temperature
 * @param maxHumidity humidity that the oven must be shown to hold, empty where none is asked for
 * @param bars empty if the bake is allowed
 */
public record BakeOffer(
        Celsius temperature, Duration time, Optional<RelativeHumidity> maxHumidity, List<Bar> bars, Citation citation) {
    /** Keeps its own copy. */
    public BakeOffer {
        bars = List.copyOf(bars);
    }

    /** Nothing speaks against it. */
    public boolean isAllowed() {
        return bars.isEmpty();
    }

    /** One thing that speaks against a bake; the part is the limit that it would pass. */
    public record Bar(BarCode code, Object limit) {}

    /** What can speak against a bake. */
    public enum BarCode {
        /** Limit: what the carrier bears (C); 40 if unknown. */
        CARRIER,
        /** Limit: what the part bears (C). */
        PART_LIMIT,
        /** The part's own limit is not known and its kind does not bear the table's bakes. */
        PART_LIMIT_UNKNOWN,
        /** Limit: hours above 90 C so far (duration). */
        HOURS_ABOVE_90,
        /** Limit: what this site allows above 90 C in all, less than the standard does (duration). */
        SITE_HOURS_ABOVE_90,
        /** Limit: how often it may be baked. */
        NUMBER_OF_BAKES,
        /** The edges of the array are not known. */
        MEASURE_EDGES,
        /** Another part on the board has no bake at this temperature. */
        OTHER_PART
    }
}
