package bagclock.core.heat;

import bagclock.core.exposure.ClimateLog;
import bagclock.core.exposure.Event;
import bagclock.core.exposure.SiteRules;
import bagclock.core.quantity.Celsius;
import bagclock.core.standard.Part;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * The question whether a board may be heated.
 *
 * @param heat the plan; its peak is not used, each location has its own
 */
public record BoardQuestion(
        Board board,
        List<Location> locations,
        ClimateLog climate,
        SiteRules rules,
        Optional<HeatPlan> heat,
        Instant at) {
    /** Keeps its own copy. */
    public BoardQuestion {
        locations = List.copyOf(locations);
    }

    /**
     * What is known of the board.
     *
     * @param maxBake how hot the assembled board may be baked, empty if unknown
     * @param ownBake the board type's own bake; it alone is offered
     * @param coated coated, potted or underfilled; not stated counts as coated
     * @param useWithin how long after a board bake it must be heated
     * @param bakes starts and ends of its bakes
     * @param mostReplacements how often a location may be replaced, 1 or more
     */
    public record Board(
            Optional<Celsius> maxBake,
            Optional<OwnBake> ownBake,
            Optional<Boolean> coated,
            Optional<Duration> useWithin,
            List<Event> bakes,
            int mostReplacements) {
        /** Two at one location, as is common practice. */
        public static final int USUAL_REPLACEMENTS = 2;

        /** Keeps its own copy. */
        public Board {
            bakes = List.copyOf(bakes);
        }
    }

    /** A bake that the board type asks for. */
    public record OwnBake(Celsius temperature, Duration time) {}

    /**
     * A part at a location of the board, or about to be placed there.
     *
     * @param events its own history, without the board's bakes
     * @param peakBody measured peak of its body in this heat; empty counts as above 200 C and the rated peak
     * @param offFirst taken off before the board is baked
     * @param replacements how often the location was replaced already
     */
    public record Location(
            String name,
            Part part,
            List<Event> events,
            Optional<Celsius> peakBody,
            Fate fate,
            boolean offFirst,
            int replacements) {
        /** Keeps its own copy. */
        public Location {
            events = List.copyOf(events);
        }
    }

    /** What becomes of a part in this heat. */
    public enum Fate {
        STAYS("stays"),
        REMOVED_SCRAP("removed-scrap"),
        REMOVED_REUSE("removed-reuse"),
        PLACED("placed");

        private final String code;

        Fate(String code) {
            this.code = code;
        }

        /** The word used in requests. */
        public String code() {
            return code;
        }

        /** The fate with this code, empty if there is none. */
        public static Optional<Fate> parse(String code) {
            for (Fate fate : values()) {
                if (fate.code.equals(code)) {
                    return Optional.of(fate);
                }
            }
            return Optional.empty();
        }

        /** On the board before the heat. */
        public boolean isOnBoard() {
            return this != PLACED;
        }
    }
}
