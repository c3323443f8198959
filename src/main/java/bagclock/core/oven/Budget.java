package bagclock.core.oven;

import java.time.Duration;

/**
 * How long an engine may search; what ends first ends it.
 *
 * @param steps changes that may be tried: with the seed, they make a search repeatable
 */
public record Budget(Duration time, long steps, long seed) {
    private static final Duration LONG = Duration.ofHours(1);

    /** By the clock. */
    public static Budget of(Duration time, long seed) {
        return new Budget(time, Long.MAX_VALUE, seed);
    }

    /** A part of it, by the clock and by steps. */
    Budget part(double share) {
        long partOfSteps = steps == Long.MAX_VALUE ? steps : (long) (steps * share);
        return new Budget(Duration.ofNanos((long) (time.toNanos() * share)), partOfSteps, seed);
    }

    /** By the number of steps, so that the same seed finds the same plan. */
    public static Budget of(long steps, long seed) {
        return new Budget(LONG, steps, seed);
    }
}
