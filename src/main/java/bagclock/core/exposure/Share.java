package bagclock.core.exposure;

import bagclock.core.standard.Life;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;

/** A share of a floor life, exact. */
public record Share(BigInteger numerator, BigInteger denominator) implements Comparable<Share> {
    /** Nothing used. */
    public static final Share NONE = new Share(BigInteger.ZERO, BigInteger.ONE);

    /** The whole life. */
    public static final Share WHOLE = new Share(BigInteger.ONE, BigInteger.ONE);

    private static final BigDecimal MS_PER_HOUR = BigDecimal.valueOf(3_600_000);

    /** What a time uses up of a life; nothing of an unlimited one. */
    static Share of(long ms, Life life) {
        if (life.isUnlimited() || ms == 0) {
            return NONE;
        }
        return new Share(
                BigInteger.valueOf(ms).multiply(BigInteger.valueOf(life.denominator())),
                BigInteger.valueOf(life.numeratorMs()));
    }

    Share plus(Share other) {
        if (numerator.signum() == 0) {
            return other;
        }
        BigInteger sum = numerator.multiply(other.denominator).add(other.numerator.multiply(denominator));
        return reduced(sum, denominator.multiply(other.denominator));
    }

    Share minus(Share other) {
        return plus(new Share(other.numerator.negate(), other.denominator));
    }

    private static Share reduced(BigInteger numerator, BigInteger denominator) {
        BigInteger common = numerator.gcd(denominator);
        return common.signum() == 0 ? NONE : new Share(numerator.divide(common), denominator.divide(common));
    }

    Share max(Share other) {
        return compareTo(other) >= 0 ? this : other;
    }

    boolean isAboveWhole() {
        return numerator.compareTo(denominator) > 0;
    }

    /** The longest time in whole milliseconds that uses up no more than this share of a life. */
    long floorMsOf(Life life) {
        return numerator
                .multiply(BigInteger.valueOf(life.numeratorMs()))
                .divide(denominator.multiply(BigInteger.valueOf(life.denominator())))
                .longValueExact();
    }

    /** This share of a life in hours, to 34 digits. */
    public BigDecimal hoursOf(Life life) {
        BigDecimal ms = new BigDecimal(numerator.multiply(BigInteger.valueOf(life.numeratorMs())));
        BigDecimal parts = new BigDecimal(denominator.multiply(BigInteger.valueOf(life.denominator())));
        return ms.divide(parts.multiply(MS_PER_HOUR), MathContext.DECIMAL128);
    }

    double approximate() {
        return numerator.doubleValue() / denominator.doubleValue();
    }

    @Override
    public int compareTo(Share other) {
        return numerator.multiply(other.denominator).compareTo(other.numerator.multiply(denominator));
    }
}
