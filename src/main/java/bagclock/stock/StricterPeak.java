package bagclock.stock;

import bagclock.core.quantity.Celsius;
import bagclock.core.standard.Level;
import bagclock.core.standard.Part;
import bagclock.core.standard.Rating;
import bagclock.register.PartType;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/** A label's peak body temperature against the part type's: the lower counts. */
final class StricterPeak {
    private StricterPeak() {}

    /** The peaks that the part type names, the lowest first. */
    static List<Celsius> of(PartType type) {
        return type.part().ratings().stream()
                .flatMap(rating -> rating.peak().stream())
                .sorted()
                .toList();
    }

    /**
     * The part type with every higher peak lowered to the label's; empty if none is higher. Of several levels that then
     * have one peak the strictest stays.
     *
     * @param byBody what counts for a rating without a peak: J-STD-020 classifies by the body
     */
    static Optional<PartType> lowered(PartType type, Celsius label, Celsius byBody, PartType.Source source) {
        Part part = type.part();
        if (part.ratings().stream().noneMatch(rating -> isHigher(rating, label, byBody))) {
            return Optional.empty();
        }
        TreeMap<Celsius, Rating> ratings = new TreeMap<>();
        for (Rating rating : part.ratings()) {
            Celsius peak = Celsius.coolerOf(rating.peak().orElse(byBody), label);
            ratings.merge(peak, new Rating(rating.level(), Optional.of(peak)), StricterPeak::stricter);
        }
        Part lower = new Part(
                List.copyOf(ratings.values()), part.body(), part.maker(), part.maxBake(), part.carrier(), part.prior());
        return Optional.of(new PartType(type.number(), type.maker(), type.description(), source, lower));
    }

    private static boolean isHigher(Rating rating, Celsius label, Celsius byBody) {
        return rating.peak().orElse(byBody).isAbove(label);
    }

    /** An unknown level is the strictest. */
    private static Rating stricter(Rating one, Rating other) {
        if (one.level().isEmpty() || other.level().isEmpty()) {
            return one.level().isEmpty() ? one : other;
        }
        Level level = one.level().orElseThrow();
        return level.compareTo(other.level().orElseThrow()) >= 0 ? one : other;
    }
}
