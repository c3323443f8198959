package bagclock.register;

import bagclock.core.heat.BoardQuestion.OwnBake;
import bagclock.core.quantity.Celsius;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A kind of assembled board.
 *
 * @param number unique
 * @param bears how hot the bare board may be baked; empty if unknown
 * @param ownBake a bake that the type asks for, it alone is offered
 * @param coated coated, potted or underfilled; empty if nobody knows
 * @param keptOn what cannot be taken off before a bake
 * @param spots its locations, each once
 */
public record BoardType(
        String number,
        String description,
        Optional<Celsius> bears,
        Optional<OwnBake> ownBake,
        Optional<Boolean> coated,
        List<KeptOn> keptOn,
        List<Spot> spots) {
    /** A battery, capacitor or connector that stays on in a bake, with what it bears if that is known. */
    public record KeptOn(String what, Optional<Celsius> limit) {}

    /** A location and the part type that sits there. */
    public record Spot(String location, String partNumber) {}

    /** Keeps its own copies; refuses a number that is empty. */
    public BoardType {
        keptOn = List.copyOf(keptOn);
        spots = List.copyOf(spots);
        if (number.isBlank()) {
            throw new IllegalArgumentException("a board type needs a number");
        }
    }

    /** How hot it may be baked with all that stays on it; empty as soon as one of the limits is unknown. */
    public Optional<Celsius> bakeLimit() {
        boolean known = bears.isPresent()
                && keptOn.stream().allMatch(kept -> kept.limit().isPresent());
        return known
                ? Stream.concat(bears.stream(), keptOn.stream().flatMap(kept -> kept.limit().stream()))
                        .min(Comparator.naturalOrder())
                : Optional.empty();
    }

    /** The part type at a location. */
    public Optional<String> partAt(String location) {
        return spots.stream()
                .filter(spot -> spot.location().equals(location))
                .map(Spot::partNumber)
                .findFirst();
    }

    /** The same with other locations. */
    public BoardType with(List<Spot> others) {
        return new BoardType(number, description, bears, ownBake, coated, keptOn, others);
    }
}
