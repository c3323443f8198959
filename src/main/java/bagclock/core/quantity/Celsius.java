package bagclock.core.quantity;

import java.math.BigDecimal;

/**
 * A temperature.
 *
 * @param degrees degrees Celsius, -60 to 500
 */
public record Celsius(double degrees) implements Comparable<Celsius> {
    /** Refuses with {@link IllegalArgumentException} what lies outside -60 to 500 C. */
    public Celsius {
        if (!(degrees >= -60 && degrees <= 500)) {
            throw new IllegalArgumentException("temperature must be -60 to 500 C, was " + degrees);
        }
    }

    /** Strictly hotter than the other. */
    public boolean isAbove(Celsius other) {
        return degrees > other.degrees;
    }

    /** More than {@code marginC} degrees above the other; decimal, so that 70.1 is not above 60.1 by more than 10. */
    public boolean exceedsBy(Celsius other, int marginC) {
        BigDecimal limit = BigDecimal.valueOf(other.degrees).add(BigDecimal.valueOf(marginC));
        return BigDecimal.valueOf(degrees).compareTo(limit) > 0;
    }

    /** The hotter of both. */
    public static Celsius hotterOf(Celsius one, Celsius other) {
        return one.isAbove(other) ? one : other;
    }

    /** The cooler of both. */
    public static Celsius coolerOf(Celsius one, Celsius other) {
        return one.isAbove(other) ? other : one;
    }

    @Override
    public int compareTo(Celsius other) {
        return Double.compare(degrees, other.degrees);
    }
}
