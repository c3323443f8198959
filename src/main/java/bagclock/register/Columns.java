package bagclock.register;

import bagclock.core.exposure.Air;
import bagclock.core.quantity.Celsius;
import bagclock.core.standard.CarrierLimit;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Values that take two columns. */
final class Columns {
    private static final String LIMIT = "limit";
    private static final String NONE = "none";
    private static final String UNKNOWN = "unknown";

    private Columns() {}

    static Optional<Air> air(@Nullable Double temperature, @Nullable Double humidity) {
        return temperature == null || humidity == null ? Optional.empty() : Optional.of(Air.of(temperature, humidity));
    }

    static @Nullable Double temperature(Optional<Air> air) {
        return air.map(a -> a.temperature().degrees()).orElse(null);
    }

    static @Nullable Double humidity(Optional<Air> air) {
        return air.map(a -> a.humidity().percent()).orElse(null);
    }

    static @Nullable Double degrees(Optional<Celsius> temperature) {
        return temperature.map(Celsius::degrees).orElse(null);
    }

    static CarrierLimit carrier(String kind, @Nullable Double degrees) {
        if (kind.equals(LIMIT) && degrees != null) {
            return new CarrierLimit.Of(new Celsius(degrees));
        }
        return kind.equals(NONE) ? new CarrierLimit.None() : new CarrierLimit.Unknown();
    }

    static String kind(CarrierLimit limit) {
        return limit instanceof CarrierLimit.Of ? LIMIT : limit instanceof CarrierLimit.None ? NONE : UNKNOWN;
    }
}
