package bagclock.readings;

import java.time.Instant;
import java.util.Optional;

/**
 * Who entered readings, and when.
 *
 * @param file id of the logger's file that they came from
 */
public record Source(String who, Instant recordedAt, Optional<String> file) {
    /** Readings that came from no file. */
    public Source(String who, Instant recordedAt) {
        this(who, recordedAt, Optional.empty());
    }
}
