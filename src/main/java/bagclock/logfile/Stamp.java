package bagclock.logfile;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Optional;

/**
 * A time as it is written.
 *
 * @param offset empty where the clock's zone must be known from elsewhere
 */
record Stamp(LocalDateTime local, Optional<ZoneOffset> offset) {
    static Stamp utc(LocalDateTime local) {
        return new Stamp(local, Optional.of(ZoneOffset.UTC));
    }
}
