package bagclock.logfile;

import java.util.Optional;

/**
 * One series of values in a file.
 *
 * @param name header of the column, or name of the sensor; unique in a file
 * @param kind empty if the name does not say what it is
 * @param unit of a temperature, if the file says it
 */
public record Channel(String name, Optional<Kind> kind, Optional<Unit> unit) {
    /** What is measured. */
    public enum Kind {
        TEMPERATURE,
        HUMIDITY,
        /** Over water, or not said over what. */
        DEW_POINT,
        /** Over ice. */
        FROST_POINT;

        /** Whether it is measured in degrees. */
        public boolean isInDegrees() {
            return this != HUMIDITY;
        }
    }

    /** Unit of a temperature. */
    public enum Unit {
        CELSIUS,
        FAHRENHEIT;

        /** A value of this unit in degrees Celsius. */
        public double celsius(double value) {
            return this == CELSIUS ? value : (value - 32) / 1.8;
        }
    }
}
