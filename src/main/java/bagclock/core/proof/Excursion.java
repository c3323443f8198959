package bagclock.core.proof;

import java.time.Duration;

/**
 * A spell outside the band.
 *
 * @param channel whose
 * @param spell from the first sample outside to the next one inside, or to the last one
 * @param extreme the value farthest outside
 */
public record Excursion(String channel, Kind kind, Spell spell, double extreme) {
    /** A longer time below the band is named for itself (weak source: practice of some ovens' procedures). */
    public static final Duration LONG = Duration.ofMinutes(15);

    /** On which side. */
    public enum Kind {
        /** Colder than the band after it was reached; such time does not count. */
        BELOW,
        /** Hotter than the band: an engineer decides. */
        ABOVE,
        /** More humid than the bake allows, after the band of temperature was reached. */
        HUMID
    }

    /** Whether it lasted longer than {@link #LONG}. */
    public boolean isLong() {
        return spell.length().compareTo(LONG) > 0;
    }
}
