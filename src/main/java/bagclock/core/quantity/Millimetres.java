package bagclock.core.quantity;

import java.math.BigDecimal;

/**
 * A length of a body; decimal, so that class limits such as 1.4 mm hold exactly.
 *
 * @param value millimetres, above 0 to 100
 */
public record Millimetres(BigDecimal value) implements Comparable<Millimetres> {
    private static final BigDecimal MOST = BigDecimal.valueOf(100);

    /** Refuses with {@link IllegalArgumentException} what is not above 0 and at most 100 mm. */
    public Millimetres {
        if (value.signum() <= 0 || value.compareTo(MOST) > 0) {
            throw new IllegalArgumentException("length must be above 0 to 100 mm, was " + value);
        }
        value = value.stripTrailingZeros();
    }

    /** Parses a decimal such as {@code 1.4}. */
    public static Millimetres of(String decimal) {
        return new Millimetres(new BigDecimal(decimal));
    }

    /** Strictly longer than the other. */
    public boolean isAbove(Millimetres other) {
        return value.compareTo(other.value) > 0;
    }

    @Override
    public int compareTo(Millimetres other) {
        return value.compareTo(other.value);
    }
}
