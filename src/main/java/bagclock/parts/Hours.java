package bagclock.parts;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;

/** Hours as text and back; what is written is read as the very same time. */
final class Hours {
    private static final BigDecimal MS = BigDecimal.valueOf(Duration.ofHours(1).toMillis());
    private static final int DIGITS = 9;

    private Hours() {}

    /** Written so that {@link #floored} gives it back. */
    static String ofLife(Duration life) {
        return written(life, RoundingMode.CEILING);
    }

    /** Written so that {@link #raised} gives it back. */
    static String ofBake(Duration time) {
        return written(time, RoundingMode.FLOOR);
    }

    private static String written(Duration time, RoundingMode mode) {
        BigDecimal hours = BigDecimal.valueOf(time.toMillis()).divide(MS, DIGITS, mode);
        return plain(hours);
    }

    /** Whole milliseconds, rounded down, so that rounding never lengthens a life. */
    static Duration floored(BigDecimal hours) {
        return rounded(hours, RoundingMode.FLOOR);
    }

    /** Whole milliseconds, rounded up, so that rounding never shortens a bake. */
    static Duration raised(BigDecimal hours) {
        return rounded(hours, RoundingMode.CEILING);
    }

    private static Duration rounded(BigDecimal hours, RoundingMode mode) {
        return Duration.ofMillis(hours.multiply(MS).setScale(0, mode).longValueExact());
    }

    /** No more digits than it has, and no exponent. */
    static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }
}
