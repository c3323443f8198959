package bagclock.core.oven;

import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * An oven as a plan sees it.
 *
 * @param positions how many carriers it takes
 * @param holds humidity at or below which it was shown to stay; empty if not shown
 */
public record Oven(
        String code, Celsius lowest, Celsius highest, int positions, Optional<RelativeHumidity> holds, Habits habits) {
    /**
     * What it takes to use it.
     *
     * @param heatUp from closing the door until the load is at temperature
     * @param coolDown from the end of the bake until the door may be opened
     * @param changes what lies between two runs, directly before the second
     * @param last temperature of its last run; empty: cold
     * @param outOfService when neither a run nor the change before it may happen
     */
    public record Habits(
            Duration heatUp, Duration coolDown, ChangeOvers changes, Optional<Celsius> last, List<Span> outOfService) {
        /** Keeps its own copy. */
        public Habits {
            outOfService = List.copyOf(outOfService);
        }
    }

    /** Whether the set-point lies in its range, both ends included. */
    public boolean reaches(Celsius setPoint) {
        return !setPoint.isAbove(highest) && !lowest.isAbove(setPoint);
    }

    /** Time with the door shut for a time at temperature. */
    public Duration doorShutFor(Duration atTemperature) {
        return habits.heatUp().plus(atTemperature).plus(habits.coolDown());
    }
}
