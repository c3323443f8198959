package bagclock.core.exposure;

import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;

/** The state of the air at a place. */
public record Air(Celsius temperature, RelativeHumidity humidity) {
    /** The limit of the floor life of J-STD-020, table 5-1: 30 C and 60 %RH. */
    public static final Air LIMIT_30_60 = Air.of(30, 60);

    /** Air at degrees Celsius and percent relative humidity. */
    public static Air of(double celsius, double percent) {
        return new Air(new Celsius(celsius), new RelativeHumidity(percent));
    }

    /** Warmer than 30 C or wetter than 60 %RH. */
    public boolean isAbove3060() {
        return isWarmerThan(LIMIT_30_60) || isWetterThan(LIMIT_30_60);
    }

    /** Strictly warmer. */
    public boolean isWarmerThan(Air other) {
        return temperature.isAbove(other.temperature);
    }

    /** Strictly wetter. */
    public boolean isWetterThan(Air other) {
        return humidity.isAbove(other.humidity);
    }

    /** The warmer and the wetter of both, each by itself. */
    public Air harsherOf(Air other) {
        if (!other.isWarmerThan(this) && !other.isWetterThan(this)) {
            return this;
        }
        return new Air(
                Celsius.hotterOf(temperature, other.temperature), RelativeHumidity.wetterOf(humidity, other.humidity));
    }
}
