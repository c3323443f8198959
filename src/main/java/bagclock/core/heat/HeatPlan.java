package bagclock.core.heat;

import bagclock.core.quantity.Celsius;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * A heat that somebody plans.
 *
 * @param at start
 * @param length how long it lasts; the whole of it must lie inside the floor life
 * @param peakBody peak of the body, top centre (C); unknown counts as above 200 C and the rated peak
 * @param purpose unknown: the part counts
 * @param local heat on this part only; unknown: not local
 */
public record HeatPlan(
        Instant at, Duration length, Optional<Celsius> peakBody, Optional<Purpose> purpose, Optional<Boolean> local) {
    /** What the heat is for. */
    public enum Purpose {
        PLACEMENT("placement"),
        REMOVAL_SCRAP("removal-scrap"),
        /** For re-use or failure analysis. */
        REMOVAL_REUSE("removal-reuse"),
        WHOLE_BOARD("whole-board");

        private final String code;

        Purpose(String code) {
            this.code = code;
        }

        /** The word used in requests. */
        public String code() {
            return code;
        }

        /** The purpose with this code, empty if there is none. */
        public static Optional<Purpose> parse(String code) {
            for (Purpose purpose : values()) {
                if (purpose.code.equals(code)) {
                    return Optional.of(purpose);
                }
            }
            return Optional.empty();
        }

        boolean isRemoval() {
            return this == REMOVAL_SCRAP || this == REMOVAL_REUSE;
        }
    }

    /** The same heat begun at another moment. */
    public HeatPlan startingAt(Instant moment) {
        return new HeatPlan(moment, length, peakBody, purpose, local);
    }

    /** When the heat is over. */
    public Instant endsAt() {
        return at.plus(length);
    }

    /** The part comes off and is thrown away: its own moisture does not count. */
    public boolean scrapsThePart() {
        return purpose.filter(p -> p == Purpose.REMOVAL_SCRAP).isPresent();
    }

    /** Removals are local; a placement is where it is stated; a whole board never. */
    public boolean isLocal() {
        return purpose.map(p -> p.isRemoval() || (p == Purpose.PLACEMENT && local.orElse(false)))
                .orElse(false);
    }

    /**
     * Local heat that keeps the body at or below a peak: moisture is no bar (J-STD-033D, rework clause).
     *
     * @param harmless 200 C, or a site's lower limit
     */
    public boolean sparesThePart(Celsius harmless) {
        return isLocal() && peakBody.filter(peak -> !peak.isAbove(harmless)).isPresent();
    }
}
