package bagclock.core.oven;

import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import java.time.Duration;
import java.util.Optional;

/**
 * One way to bake a lot.
 *
 * @param least time at temperature that dries it; longer than nothing
 * @param most time at temperature that it bears; not below the least
 * @param maxHumidity humidity that the oven must be shown to hold; empty where none is asked for
 */
public record Programme(Celsius temperature, Duration least, Duration most, Optional<RelativeHumidity> maxHumidity) {
    /** Refuses with {@link IllegalArgumentException} a time of nothing, and a most below the least. */
    public Programme {
        if (least.isZero() || least.isNegative() || most.compareTo(least) < 0) {
            throw new IllegalArgumentException("a bake takes time, and at most its most: " + least + ", " + most);
        }
    }

    /** Whether an oven reaches the temperature and is shown to be dry enough. */
    public boolean fits(Oven oven) {
        return oven.reaches(temperature)
                && maxHumidity
                        .map(limit -> oven.holds()
                                .filter(held -> !held.isAbove(limit))
                                .isPresent())
                        .orElse(true);
    }
}
