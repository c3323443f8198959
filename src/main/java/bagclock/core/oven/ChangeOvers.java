package bagclock.core.oven;

import bagclock.core.quantity.Celsius;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;

/**
 * What lies between two runs of an oven.
 *
 * @param same between two runs at one temperature
 * @param other between two runs at different temperatures; a first run of a cold oven needs none
 * @param special what takes the place of both for a pair of temperatures
 */
public record ChangeOvers(Change same, Change other, Map<Pair, Change> special) {
    /** No time, no price. */
    public static final Change NONE = new Change(Duration.ZERO, 0);

    /** Time, and a price for objectives that count one. */
    public record Change(Duration time, long price) {}

    /** From one temperature to the next; from empty: a cold oven. */
    public record Pair(Optional<Celsius> from, Celsius to) {}

    /** Keeps its own copy. */
    public ChangeOvers {
        special = Map.copyOf(special);
    }

    /** A turnaround between any two runs, and a longer one where the temperature changes. */
    public static ChangeOvers of(Duration turnaround, Duration changed) {
        return new ChangeOvers(new Change(turnaround, 0), new Change(changed, 0), Map.of());
    }

    /** What lies between them. */
    public Change between(Optional<Celsius> from, Celsius to) {
        Change exact = special.get(new Pair(from, to));
        if (exact != null) {
            return exact;
        }
        return from.map(before -> before.equals(to) ? same : other).orElse(NONE);
    }
}
