package bagclock.desk;

import bagclock.core.exposure.Air;
import bagclock.core.exposure.ZoneLog.Reading;
import bagclock.readings.AirTime;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * How a logged zone stands at a moment, for running sums.
 *
 * @param upToLast time from its first to its last reading
 * @param last the last reading
 * @param worst what counts where no reading holds
 * @param gap how long a reading holds
 */
record ZoneAir(AirTime upToLast, Reading last, Air worst, Duration gap) {
    /** The running sum at a moment at or after the last reading. */
    BigDecimal sumAt(Instant moment, CellLives lives) {
        long sinceMs = Math.max(0, Duration.between(last.at(), moment).toMillis());
        long heldMs = Math.min(sinceMs, gap.toMillis());
        AirTime all = upToLast.plus(AirTime.counterOf(last.air()), heldMs).plus(AirTime.UNREAD, sinceMs - heldMs);
        return lives.sum(all, worst);
    }

    /** What a millisecond after the moment uses up: at the harsher of the last reading and the worst case. */
    Optional<BigDecimal> futureRate(CellLives lives) {
        return lives.rate(last.air().harsherOf(worst));
    }

    /** Whether sums can tell when a life ends: whatever counts now and later lies inside the table. */
    boolean isCovered(CellLives lives) {
        return lives.rate(last.air()).isPresent()
                && lives.rate(worst).isPresent()
                && futureRate(lives).isPresent();
    }
}
