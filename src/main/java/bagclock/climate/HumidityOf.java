package bagclock.climate;

import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.DewPoint;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.logfile.Channel.Kind;
import bagclock.readings.LoggerProfile.BelowZero;
import java.util.Optional;

/** Makes a humidity of what a logger measured: the humidity itself, or a dew or frost point with the temperature. */
record HumidityOf(Kind kind, boolean frost) {
    /** Rounding of both values can lift the dew point above the temperature by so much. */
    private static final double ROUNDING_C = 0.3;

    static HumidityOf of(Kind kind, BelowZero below) {
        return new HumidityOf(kind, kind == Kind.FROST_POINT || below == BelowZero.FROST_POINT);
    }

    /** Whether it can be a value at this temperature: a dew point does not lie above it. */
    boolean isPossible(double celsius, double measured) {
        return kind == Kind.HUMIDITY || measured <= celsius + ROUNDING_C;
    }

    /** Whether it is a dew point below 0 C, which may be a frost point. */
    boolean isBelowZero(double measured) {
        return kind != Kind.HUMIDITY && measured < 0;
    }

    /** The humidity; a point above the temperature counts as one at it. */
    RelativeHumidity at(double celsius, double measured) {
        if (kind == Kind.HUMIDITY) {
            return new RelativeHumidity(measured);
        }
        Celsius temperature = new Celsius(celsius);
        Celsius point = new Celsius(Math.min(measured, celsius));
        return frost ? DewPoint.humidityByFrost(temperature, point) : DewPoint.humidity(temperature, point);
    }

    /** As {@link #at}; empty for a value that is not possible. */
    Optional<RelativeHumidity> of(double celsius, double measured) {
        return isPossible(celsius, measured) ? Optional.of(at(celsius, measured)) : Optional.empty();
    }
}
