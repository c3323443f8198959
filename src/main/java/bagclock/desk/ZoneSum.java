package bagclock.desk;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.Optional;

/**
 * A running sum at a moment.
 *
 * @param sum used up since the zone's first reading
 * @param perMs what each further millisecond uses up; above 0
 */
record ZoneSum(String zone, String rateKey, BigDecimal sum, BigDecimal perMs) {
    /** Less than a thousandth of a millisecond: makes good what a sum was rounded. */
    static final BigDecimal HAIR_MS = new BigDecimal("0.000001");

    static Optional<ZoneSum> of(ClockRowStore.Pair pair, ZoneAir air, CellLives lives, Instant moment) {
        return air.futureRate(lives)
                .filter(rate -> rate.signum() > 0)
                .map(rate -> new ZoneSum(pair.zone(), pair.rateKey(), air.sumAt(moment, lives), rate));
    }

    /** The sum that whatever ends before so much more time has passed stays below. */
    BigDecimal before(long ms) {
        return sum.add(perMs.multiply(BigDecimal.valueOf(ms).subtract(HAIR_MS)));
    }
}
