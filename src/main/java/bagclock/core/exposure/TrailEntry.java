package bagclock.core.exposure;

import bagclock.core.standard.Life;
import java.time.Instant;
import java.util.Optional;

/**
 * One line of the account of used floor life; the shares of all lines add up to the share used.
 *
 * @param from start, included
 * @param to end, excluded
 * @param zone where it was on the floor, or the logged cabinet that it was in; empty if not told
 * @param air the harshest air of the stretch, empty if not known
 * @param life the life at whose rate it counted, empty if at none
 */
public record TrailEntry(
        Instant from,
        Instant to,
        Where where,
        Optional<Zone> zone,
        Optional<Air> air,
        Optional<Life> life,
        Share used) {
    /** The kind of place. */
    public enum Where {
        FLOOR("floor"),
        BAG("bag"),
        DRY_STORAGE("dry-storage"),
        OVEN("oven"),
        /** A history that is not known counts as the whole life. */
        UNKNOWN("unknown");

        private final String code;

        Where(String code) {
            this.code = code;
        }

        /** The word used in answers. */
        public String code() {
            return code;
        }
    }
}
