package bagclock.readings;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A sensor that may send readings by itself.
 *
 * @param placeCodes codes of the only places that it may send readings of, separated by blanks
 * @param madeBy who let it in
 */
public record SensorToken(
        String id,
        String name,
        String placeCodes,
        Instant madeAt,
        String madeBy,
        @Nullable Instant revokedAt) {
    /** The only places that it may send readings of. */
    public List<String> places() {
        return placeCodes.isEmpty() ? List.of() : List.of(placeCodes.split(" "));
    }

    /** When it was shut out; empty while it may send. */
    public Optional<Instant> revoked() {
        return Optional.ofNullable(revokedAt);
    }
}
