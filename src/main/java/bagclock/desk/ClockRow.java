package bagclock.desk;

import java.math.BigDecimal;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * What an item's clock shows at one rating, as kept for lists; a test compares it with a replay.
 *
 * @param zone the zone whose readings count now
 * @param follows the readings of the zone change it, and no sum can tell how
 * @param anchorAt the last event, or when the life ran out: readings before it change the row
 * @param validUntil when it must be worked out again even if nothing happens
 * @param endsMs when it ends, in milliseconds since 1970
 * @param rateKey set where the zone's running sum tells when it ends
 * @param endSum the running sum at which it ends
 */
record ClockRow(
        String tag,
        int rating,
        boolean counting,
        String level,
        @Nullable Double peakC,
        String state,
        @Nullable String zone,
        boolean follows,
        String usedShare,
        @Nullable BigDecimal totalH,
        @Nullable BigDecimal usedH,
        Instant anchorAt,
        Instant workedOutAt,
        @Nullable Instant validUntil,
        @Nullable Long endsMs,
        @Nullable String rateKey,
        @Nullable BigDecimal endSum) {}
