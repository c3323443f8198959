package bagclock.climate;

import bagclock.core.exposure.ZoneLog.Reading;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** An unbroken run of readings that lasts to the newest one. */
final class Spell {
    private Spell() {}

    /**
     * When the spell began that the newest reading belongs to; empty if that reading is outside it, or if it no longer
     * holds.
     *
     * @param readings ascending
     * @param holdsFor how long a reading holds; a longer gap ends a spell
     */
    static Optional<Instant> since(
            List<Reading> readings, Predicate<Reading> isInside, Duration holdsFor, Instant now) {
        Optional<Instant> since = Optional.empty();
        Instant next = now;
        for (int i = readings.size() - 1; i >= 0; i--) {
            Reading reading = readings.get(i);
            boolean holds = Duration.between(reading.at(), next).compareTo(holdsFor) <= 0;
            if (!holds || !isInside.test(reading)) {
                return since;
            }
            since = Optional.of(reading.at());
            next = reading.at();
        }
        return since;
    }
}
