package bagclock.core.standard;

import bagclock.core.quantity.Celsius;
import java.util.Optional;

/**
 * How hot what a part is in or on may become: reel, tube, tray, board.
 *
 * <p>An unknown limit counts as 40 C (common practice for tape, reels, tubes and unmarked trays).
 */
public sealed interface CarrierLimit {
    /** What an unmarked carrier bears; common practice. */
    Celsius UNMARKED = new Celsius(40);

    /** A stated limit. */
    record Of(Celsius limit) implements CarrierLimit {}

    /** In no carrier at all: nothing but the part limits the bake. */
    record None() implements CarrierLimit {}

    /** Not known: counts as 40 C. */
    record Unknown() implements CarrierLimit {}

    /** Whether a bake at this temperature spares the carrier. */
    default boolean bears(Celsius temperature) {
        return this instanceof None || !temperature.isAbove(borne().orElse(UNMARKED));
    }

    /** The stated limit, empty if none is stated. */
    default Optional<Celsius> borne() {
        return this instanceof Of of ? Optional.of(of.limit()) : Optional.empty();
    }
}
