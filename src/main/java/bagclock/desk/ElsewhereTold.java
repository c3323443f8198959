package bagclock.desk;

import bagclock.core.quantity.Celsius;
import bagclock.platform.Entered;
import java.time.Duration;
import java.util.Optional;

/**
 * A bake of an item or a board in an oven that this shop does not know, as it was told.
 *
 * @param oven whose oven it was, in free words
 * @param temperature 35 to 300 C
 * @param time 0.1 to 10,000 h
 */
public record ElsewhereTold(String oven, Celsius temperature, Duration time) {
    /** Names of the fields that it is typed in. */
    public record Fields(String oven, String degrees, String hours) {}

    /**
     * Reads what was typed; empty when something is wrong, which is noted by field. All hours count where hours are
     * counted, so a part of one is never cut off.
     */
    public static Optional<ElsewhereTold> read(Entered entered, Fields names) {
        String oven = entered.required(names.oven());
        Optional<Celsius> degrees = entered.number(names.degrees(), 35, 300).map(Celsius::new);
        Optional<Duration> time = entered.hours(names.hours(), 0.1, 10_000, Math::ceil);
        return oven.isEmpty()
                ? Optional.empty()
                : degrees.flatMap(celsius -> time.map(span -> new ElsewhereTold(oven, celsius, span)));
    }
}
