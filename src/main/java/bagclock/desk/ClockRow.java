package bagclock.desk;

import java.math.BigDecimal;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** What an item's clock shows at one rating, as kept for lists; a test compares it with a replay. */
record ClockRow(
        String tag,
        int rating,
        boolean counting,
        String level,
        @Nullable Double peakC,
        String state,
        @Nullable String zone,
        String usedShare,
        @Nullable BigDecimal totalH,
        @Nullable BigDecimal usedH,
        Instant workedOutAt,
        @Nullable Instant endsAt) {}
