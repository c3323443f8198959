package bagclock.core.standard;

import bagclock.core.quantity.Celsius;
import java.util.Optional;

/**
 * One line of a moisture label: a level at a peak body temperature.
 *
 * @param level empty if unknown
 * @param peak rated peak body temperature (C); empty if the label names none, then J-STD-020 classifies by the body
 */
public record Rating(Optional<Level> level, Optional<Celsius> peak) {
    /** A rating with both values known. */
    public static Rating of(Level level, Celsius peak) {
        return new Rating(Optional.of(level), Optional.of(peak));
    }
}
