package bagclock.core.standard;

import java.math.BigInteger;
import java.time.Duration;

/**
 * A floor life as an exact positive fraction of milliseconds, in lowest terms, or unlimited. A fraction, because a
 * year scaled by the ratio of two cells need not end on a whole millisecond.
 *
 * @param numeratorMs above 0
 * @param denominator above 0; 0 stands for {@link #UNLIMITED} alone
 */
public record Life(long numeratorMs, long denominator) implements Comparable<Life> {
    /** Never ends. */
    public static final Life UNLIMITED = new Life(1, 0);

    /** Reduces to lowest terms; refuses with {@link IllegalArgumentException} what is not positive. */
    public Life {
        if (numeratorMs <= 0 || denominator < 0) {
            throw new IllegalArgumentException("life must be above 0 ms, was " + numeratorMs + "/" + denominator);
        }
        long common = gcd(numeratorMs, denominator);
        numeratorMs /= common;
        denominator /= common;
    }

    /** A life of this many whole milliseconds; refuses with {@link IllegalArgumentException} less than one. */
    public static Life of(Duration duration) {
        return new Life(duration.toMillis(), 1);
    }

    /** The shorter of both. */
    public static Life shorterOf(Life one, Life other) {
        return other.compareTo(one) < 0 ? other : one;
    }

    /** Whether it never ends. */
    public boolean isUnlimited() {
        return denominator == 0;
    }

    /**
     * This life times {@code part} over {@code whole}; unlimited if this life or {@code part} is. Refuses with
     * {@link IllegalArgumentException} an unlimited whole, and with {@link ArithmeticException} what exceeds a long.
     */
    Life scaled(Life part, Life whole) {
        if (whole.isUnlimited()) {
            throw new IllegalArgumentException("a life can't be scaled by an unlimited whole");
        }
        BigInteger numerator = product(numeratorMs, part.numeratorMs, whole.denominator);
        BigInteger divisor = product(denominator, part.denominator, whole.numeratorMs);
        BigInteger common = numerator.gcd(divisor);
        return new Life(
                numerator.divide(common).longValueExact(),
                divisor.divide(common).longValueExact());
    }

    private static BigInteger product(long one, long two, long three) {
        return BigInteger.valueOf(one).multiply(BigInteger.valueOf(two)).multiply(BigInteger.valueOf(three));
    }

    private static long gcd(long one, long other) {
        return other == 0 ? one : gcd(other, one % other);
    }

    /** By length; unlimited is the longest. Exact: compares both cross products to 128 bits. */
    @Override
    public int compareTo(Life other) {
        int high = Long.compare(
                Math.multiplyHigh(numeratorMs, other.denominator), Math.multiplyHigh(other.numeratorMs, denominator));
        return high != 0
                ? high
                : Long.compareUnsigned(numeratorMs * other.denominator, other.numeratorMs * denominator);
    }
}
