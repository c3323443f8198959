package bagclock.register;

import bagclock.core.quantity.Celsius;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;

/**
 * What a heat at a location was measured to do to the bodies around it.
 *
 * @param id unique
 * @param location that is worked on; empty for a heat of the whole board
 * @param tool nozzle, programme and the like, in free words
 * @param partPeak top centre of the part itself; empty if not measured
 * @param neighbours top-centre peaks by location
 * @param elsewhere the hottest body measured anywhere else; empty: what is not named counts as above 200 C
 * @param measuredBy who measured, in words
 */
public record HeatProfile(
        String id,
        String boardType,
        String location,
        Kind kind,
        String tool,
        Optional<Celsius> partPeak,
        Map<String, Celsius> neighbours,
        Optional<Celsius> elsewhere,
        Duration length,
        LocalDate measuredOn,
        String measuredBy) {
    /** What is heated. */
    public enum Kind {
        REMOVAL,
        PLACEMENT,
        WHOLE_BOARD
    }

    /** Keeps its own copy. */
    public HeatProfile {
        neighbours = Map.copyOf(neighbours);
    }

    /** The measured peak of a body in this heat; empty if not measured. */
    public Optional<Celsius> peakAt(String spot) {
        if (!location.isEmpty() && spot.equals(location)) {
            return partPeak;
        }
        return Optional.ofNullable(neighbours.get(spot)).or(() -> elsewhere);
    }

    /** Whether it was measured so long ago that it is trusted no more; on the very day it still is. */
    public boolean isOld(LocalDate today, BoardRules rules) {
        return measuredOn.plusMonths(rules.profileMonths()).isBefore(today);
    }
}
