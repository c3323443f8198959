package bagclock.register;

import bagclock.core.exposure.Place.CabinetClass;
import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.platform.SortKey;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** One version of a place, as stored. */
record PlaceRow(
        String code,
        int version,
        Instant validFrom,
        Instant recordedAt,
        String who,
        String sortKey,
        String kind,
        String name,
        boolean logged,
        @Nullable Double worstTempC,
        @Nullable Double worstRhPercent,
        @Nullable Double openTempC,
        @Nullable Double openRhPercent,
        @Nullable Double classRhPercent,
        @Nullable Integer positions,
        @Nullable Double lowestC,
        @Nullable Double highestC,
        @Nullable Double holdsRhPercent,
        @Nullable Long heatUpMs,
        @Nullable Long coolDownMs,
        @Nullable Long turnaroundMs,
        @Nullable Long changeMs) {
    private static final String ZONE = "zone";
    private static final String CABINET = "cabinet";
    private static final String OVEN = "oven";

    static PlaceRow of(KnownPlace place, Version version) {
        Optional<KnownPlace.FloorZone> zone = as(place, KnownPlace.FloorZone.class);
        Optional<KnownPlace.DryCabinet> cabinet = as(place, KnownPlace.DryCabinet.class);
        Optional<KnownPlace.BakeOven> oven = as(place, KnownPlace.BakeOven.class);
        return new PlaceRow(
                place.code(),
                version.number(),
                version.validFrom(),
                version.recordedAt(),
                version.who(),
                SortKey.of(place.name()),
                zone.isPresent() ? ZONE : cabinet.isPresent() ? CABINET : OVEN,
                place.name(),
                place.logged(),
                zone.map(z -> Columns.temperature(z.worstCase())).orElse(null),
                zone.map(z -> Columns.humidity(z.worstCase())).orElse(null),
                zone.map(z -> Columns.temperature(z.openBagsUpTo())).orElse(null),
                zone.map(z -> Columns.humidity(z.openBagsUpTo())).orElse(null),
                cabinet.map(c -> c.limit().limit().percent()).orElse(null),
                oven.map(KnownPlace.BakeOven::positions).orElse(null),
                oven.map(o -> o.lowest().degrees()).orElse(null),
                oven.map(o -> o.highest().degrees()).orElse(null),
                oven.flatMap(KnownPlace.BakeOven::holds)
                        .map(RelativeHumidity::percent)
                        .orElse(null),
                oven.map(o -> o.heatUp().toMillis()).orElse(null),
                millis(oven.flatMap(o -> o.pauses().coolDown())),
                millis(oven.flatMap(o -> o.pauses().turnaround())),
                millis(oven.flatMap(o -> o.pauses().change())));
    }

    private static @Nullable Long millis(Optional<Duration> time) {
        return time.map(Duration::toMillis).orElse(null);
    }

    private static Optional<Duration> time(@Nullable Long millis) {
        return Optional.ofNullable(millis).map(Duration::ofMillis);
    }

    private static <T> Optional<T> as(KnownPlace place, Class<T> kind) {
        return kind.isInstance(place) ? Optional.of(kind.cast(place)) : Optional.empty();
    }

    Versioned<KnownPlace> fact() {
        return new Versioned<>(place(), new Version(version, validFrom, recordedAt, who));
    }

    private KnownPlace place() {
        if (kind.equals(ZONE)) {
            return new KnownPlace.FloorZone(
                    code, name, logged, Columns.air(worstTempC, worstRhPercent), Columns.air(openTempC, openRhPercent));
        } else if (kind.equals(CABINET)) {
            RelativeHumidity limit = new RelativeHumidity(Objects.requireNonNull(classRhPercent));
            return new KnownPlace.DryCabinet(
                    code, name, logged, CabinetClass.of(limit).orElseThrow());
        }
        return new KnownPlace.BakeOven(
                code,
                name,
                Objects.requireNonNull(positions),
                new Celsius(Objects.requireNonNull(lowestC)),
                new Celsius(Objects.requireNonNull(highestC)),
                Optional.ofNullable(holdsRhPercent).map(RelativeHumidity::new),
                Duration.ofMillis(Objects.requireNonNull(heatUpMs)),
                new KnownPlace.Pauses(time(coolDownMs), time(turnaroundMs), time(changeMs)));
    }
}
