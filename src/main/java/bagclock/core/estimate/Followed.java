package bagclock.core.estimate;

import bagclock.core.diffusion.Slab;
import bagclock.core.diffusion.Soak;
import bagclock.core.exposure.AirHistory;
import bagclock.core.exposure.AirHistory.Stretch;
import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.DewPoint;
import bagclock.core.quantity.RelativeHumidity;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * A part's air as phases of the model. What is inside dry storage up to 5 %RH or a dry pack counts as perfectly dry,
 * as rule and table have it; the model was not tried below 20 %RH. Below 20 C counts as 20 C, as in the table. An oven
 * holds what it was shown to hold, else the air of 30 C / 60 %RH warmed up.
 */
record Followed(Soak soak, Duration untilFirstAir) {
    private static final RelativeHumidity DRY = new RelativeHumidity(0);
    private static final RelativeHumidity TEN = new RelativeHumidity(10);
    private static final Celsius COOLEST = new Celsius(20);
    private static final Celsius WARMEST = new Celsius(35);
    private static final RelativeHumidity WETTEST = new RelativeHumidity(90);

    /** Dew point of 30 C / 60 %RH (WMO No. 8, annex 4.B). */
    private static final Celsius DEW_POINT = new Celsius(21.39);

    static Followed of(Slab slab, List<Stretch> stretches) {
        Soak.Phases phases = new Soak.Phases(slab);
        long firstMs = stretches.get(0).startMs();
        long airMs = stretches.get(stretches.size() - 1).endMs();
        for (Stretch stretch : stretches) {
            Duration length = Duration.ofMillis(stretch.endMs() - stretch.startMs());
            Celsius temperature = stretch.temperature().orElse(COOLEST);
            if (stretch.kind() == AirHistory.Kind.OVEN) {
                phases.oven(length, temperature, inOven(stretch, temperature));
            } else {
                phases.air(length, Celsius.hotterOf(COOLEST, temperature), inAir(stretch));
            }
            airMs = stretch.kind() == AirHistory.Kind.ROOM ? Math.min(airMs, stretch.startMs()) : airMs;
        }
        return new Followed(phases.soak(), Duration.ofMillis(airMs - firstMs));
    }

    private static RelativeHumidity inAir(Stretch stretch) {
        return switch (stretch.kind()) {
            case PACK, CABINET_5 -> DRY;
            case CABINET_10 -> stretch.humidity().orElse(TEN);
            case ROOM, OVEN -> stretch.humidity().orElse(WETTEST);
        };
    }

    private static RelativeHumidity inOven(Stretch stretch, Celsius temperature) {
        return stretch.humidity()
                .orElseGet(() -> DewPoint.humidity(Celsius.hotterOf(temperature, DEW_POINT), DEW_POINT));
    }

    /** What keeps the model from following these stretches. */
    static Optional<Silence> silence(List<Stretch> stretches) {
        if (stretches.stream().noneMatch(stretch -> stretch.kind() == AirHistory.Kind.ROOM)) {
            return Optional.of(Silence.STILL_DRY);
        }
        for (Stretch stretch : stretches) {
            if (stretch.kind() == AirHistory.Kind.ROOM) {
                if (stretch.temperature().isEmpty() || stretch.humidity().isEmpty()) {
                    return Optional.of(Silence.AIR_UNKNOWN);
                } else if (stretch.temperature().get().isAbove(WARMEST)
                        || stretch.humidity().get().isAbove(WETTEST)) {
                    return Optional.of(Silence.AIR_OUTSIDE);
                }
            }
        }
        return Optional.empty();
    }
}
