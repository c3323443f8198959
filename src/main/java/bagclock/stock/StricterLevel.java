package bagclock.stock;

import bagclock.core.standard.Level;
import bagclock.core.standard.MakerRules;
import bagclock.core.standard.Part;
import bagclock.core.standard.Rating;
import bagclock.register.PartType;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A label's level against the part type's: the stricter counts. */
final class StricterLevel {
    /** Hours out of the bag at most 30 C and 60 % RH: J-STD-020, Table 5-1. */
    private static final Map<Level, Duration> LIVES = Map.of(
            Level.L2, Duration.ofDays(365),
            Level.L2A, Duration.ofHours(672),
            Level.L3, Duration.ofHours(168),
            Level.L4, Duration.ofHours(72),
            Level.L5, Duration.ofHours(48),
            Level.L5A, Duration.ofHours(24),
            Level.L6, Duration.ZERO);

    private StricterLevel() {}

    /** The strictest level of a part type; empty if one of its levels is unknown. */
    static Optional<Level> of(PartType type) {
        List<Rating> ratings = type.part().ratings();
        return ratings.stream().anyMatch(rating -> rating.level().isEmpty())
                ? Optional.empty()
                : ratings.stream().map(rating -> rating.level().orElseThrow()).max(Level::compareTo);
    }

    /** The part type with every weaker level raised to the label's; empty if none of them is weaker. */
    static Optional<PartType> raised(PartType type, Level label, PartType.Source source) {
        Part part = type.part();
        if (part.ratings().stream().noneMatch(rating -> isWeaker(rating, label))) {
            return Optional.empty();
        }
        List<Rating> ratings = part.ratings().stream()
                .map(rating -> isWeaker(rating, label) ? new Rating(Optional.of(label), rating.peak()) : rating)
                .toList();
        Part stricter = new Part(
                ratings, part.body(), shortened(part.maker(), label), part.maxBake(), part.carrier(), part.prior());
        return Optional.of(new PartType(type.number(), type.maker(), type.description(), source, stricter));
    }

    private static boolean isWeaker(Rating rating, Level label) {
        return rating.level().filter(level -> level.compareTo(label) < 0).isPresent();
    }

    /** A maker's floor life was for the weaker level: it counts only if it is shorter, its derating table not at all. */
    private static MakerRules shortened(MakerRules maker, Level label) {
        Optional<Duration> life = maker.floorLife().filter(own -> own.compareTo(LIVES.getOrDefault(label, own)) <= 0);
        return new MakerRules(
                life,
                Optional.empty(),
                maker.shelfMonths(),
                maker.bakes(),
                maker.tableToo(),
                maker.useWithin(),
                maker.maxBakes(),
                maker.maxReflowPasses());
    }
}
