package bagclock.register;

import java.time.Instant;

/**
 * Who changes a fact, and from when on.
 *
 * @param basedOn the version that the person saw, 0 for a new fact; another one meanwhile ends in 409
 */
public record Change(Instant validFrom, Instant recordedAt, String who, int basedOn) {
    Version version() {
        return new Version(basedOn + 1, validFrom, recordedAt, who);
    }
}
