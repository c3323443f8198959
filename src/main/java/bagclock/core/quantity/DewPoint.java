package bagclock.core.quantity;

/** Humidity from dew point: Magnus formula over water, e = 6.112 exp(17.62 t / (243.12 + t)) hPa, WMO No. 8, annex 4.B. */
public final class DewPoint {
    private static final double B = 17.62;
    private static final double C = 243.12;
    private static final double ICE_B = 22.46;
    private static final double ICE_C = 272.62;
    private static final double SATURATED = 100;

    private DewPoint() {}

    /**
     * Relative humidity of air at a temperature with this dew point over water; valid -45 to 60 C within 0.4 %.
     *
     * @throws IllegalArgumentException if the dew point lies above the temperature
     */
    public static RelativeHumidity humidity(Celsius temperature, Celsius dewPoint) {
        if (dewPoint.isAbove(temperature)) {
            throw new IllegalArgumentException("the dew point lies above the temperature");
        }
        double percent = SATURATED * Math.exp(exponent(dewPoint.degrees()) - exponent(temperature.degrees()));
        return new RelativeHumidity(Math.min(SATURATED, percent));
    }

    /**
     * Relative humidity of air at a temperature with this frost point, over ice: e = 6.112 exp(22.46 t / (272.62 + t))
     * hPa, WMO No. 8, annex 4.B, from memory. At or above 0 C a frost point is a dew point.
     *
     * @throws IllegalArgumentException if the frost point lies above the temperature
     */
    public static RelativeHumidity humidityByFrost(Celsius temperature, Celsius frostPoint) {
        double frost = frostPoint.degrees();
        if (frost >= 0) {
            return humidity(temperature, frostPoint);
        } else if (frostPoint.isAbove(temperature)) {
            throw new IllegalArgumentException("the frost point lies above the temperature");
        }
        double percent = SATURATED * Math.exp(ICE_B * frost / (ICE_C + frost) - exponent(temperature.degrees()));
        return new RelativeHumidity(Math.min(SATURATED, percent));
    }

    private static double exponent(double degrees) {
        return B * degrees / (C + degrees);
    }
}
