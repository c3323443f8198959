package bagclock.core.exposure;

import java.time.Instant;

/** Why a history is not known, and since when it is known not to be. */
public record UnknownHistory(Cause cause, Instant at) {
    /** What made it so. */
    public enum Cause {
        /** Nobody knows how long the part was open. */
        UNKNOWN_EXPOSURE,
        WETTED,
        BAG_DAMAGED,
        CARD_MISSING,
        CARD_WITHOUT_PROOF,
        CARD_READ_LATE,
        CARD_WET
    }
}
