package bagclock.core.standard;

import bagclock.core.quantity.Celsius;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * What is known of a part before its history begins.
 *
 * @param ratings one or more; a single rating without a level if the level is unknown
 * @param maxBake how hot the part may be baked, empty if unknown
 * @param carrier what it is in or on when its history begins
 */
public record Part(
        List<Rating> ratings,
        Body body,
        MakerRules maker,
        Optional<Celsius> maxBake,
        CarrierLimit carrier,
        Prior prior) {
    /**
     * Counts that the part brings along.
     *
     * @param bakedAbove90 time above 90 C spent in bakes
     * @param bakes bakes begun
     * @param passes heats above 200 C body temperature
     */
    public record Prior(Duration bakedAbove90, int bakes, int passes) {
        /** Nothing counted yet. */
        public static final Prior NONE = new Prior(Duration.ZERO, 0, 0);
    }

    /** A part of which nothing is known: every answer about it is the strictest. */
    public static final Part UNKNOWN = new Part(
            List.of(new Rating(Optional.empty(), Optional.empty())),
            new Body(
                    BodyKind.UNKNOWN,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty()),
            MakerRules.NONE,
            Optional.empty(),
            new CarrierLimit.Unknown(),
            Prior.NONE);

    /** Refuses an empty list of ratings. */
    public Part {
        ratings = List.copyOf(ratings);
        if (ratings.isEmpty()) {
            throw new IllegalArgumentException("a part needs at least one rating");
        }
    }

    /** A part of one level and body, of which nothing else is known. */
    public static Part of(Level level, Body body) {
        return new Part(
                List.of(new Rating(Optional.of(level), Optional.empty())),
                body,
                MakerRules.NONE,
                Optional.empty(),
                new CarrierLimit.Unknown(),
                Prior.NONE);
    }

    /** The same part in or on something else. */
    public Part in(CarrierLimit other) {
        return new Part(ratings, body, maker, maxBake, other, prior);
    }
}
