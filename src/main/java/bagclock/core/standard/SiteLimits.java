package bagclock.core.standard;

import bagclock.core.quantity.Celsius;
import java.time.Duration;

/**
 * Limits of the standard that a site may make stricter, never wider.
 *
 * @param harmlessPeak a body that local heat keeps at or below this needs no care for its moisture (C), at most 200
 * @param mostAbove90 what a part may spend above 90 C in bakes, all together; more than nothing, at most 96 h
 */
public record SiteLimits(Celsius harmlessPeak, Duration mostAbove90) {
    /** J-STD-033D, rework clause. */
    public static final Celsius HARMLESS_PEAK = new Celsius(200);

    /** J-STD-033D, clause 4.2.7 (S7). */
    public static final Duration MOST_ABOVE_90 = Duration.ofHours(96);

    /** What counts unless a site says less. */
    public static final SiteLimits RULES = new SiteLimits(HARMLESS_PEAK, MOST_ABOVE_90);

    /** Refuses with {@link IllegalArgumentException} a limit that is wider than the standard's, and no time at all. */
    public SiteLimits {
        boolean isWider = harmlessPeak.isAbove(HARMLESS_PEAK) || mostAbove90.compareTo(MOST_ABOVE_90) > 0;
        if (isWider || mostAbove90.isZero() || mostAbove90.isNegative()) {
            throw new IllegalArgumentException("a site may only be stricter than 200 C and 96 h, was "
                    + harmlessPeak.degrees() + " C and " + mostAbove90);
        }
    }
}
