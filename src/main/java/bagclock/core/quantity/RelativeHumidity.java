package bagclock.core.quantity;

/**
 * Relative humidity of air.
 *
 * @param percent percent of saturation over water, 0 to 100
 */
public record RelativeHumidity(double percent) implements Comparable<RelativeHumidity> {
    /** Refuses with {@link IllegalArgumentException} what lies outside 0 to 100 %. */
    public RelativeHumidity {
        if (!(percent >= 0 && percent <= 100)) {
            throw new IllegalArgumentException("relative humidity must be 0 to 100 %, was " + percent);
        }
    }

    /** Strictly wetter than the other. */
    public boolean isAbove(RelativeHumidity other) {
        return percent > other.percent;
    }

    /** The wetter of both. */
    public static RelativeHumidity wetterOf(RelativeHumidity one, RelativeHumidity other) {
        return one.isAbove(other) ? one : other;
    }

    @Override
    public int compareTo(RelativeHumidity other) {
        return Double.compare(percent, other.percent);
    }
}
