package bagclock.register;

import bagclock.core.quantity.Celsius;
import bagclock.platform.SortKey;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** One version of a heat profile, as stored. */
record HeatProfileRow(
        String id,
        int version,
        Instant validFrom,
        Instant recordedAt,
        String who,
        String sortKey,
        String boardType,
        String location,
        String kind,
        String tool,
        @Nullable Double partC,
        String neighbours,
        @Nullable Double elsewhereC,
        long lengthMs,
        LocalDate measuredOn,
        String measuredBy) {

    static HeatProfileRow of(HeatProfile profile, Version version) {
        return new HeatProfileRow(
                profile.id(),
                version.number(),
                version.validFrom(),
                version.recordedAt(),
                version.who(),
                SortKey.of(profile.id()),
                profile.boardType(),
                profile.location(),
                profile.kind().name(),
                profile.tool(),
                Columns.degrees(profile.partPeak()),
                BoardTexts.peaks(profile.neighbours()),
                Columns.degrees(profile.elsewhere()),
                profile.length().toMillis(),
                profile.measuredOn(),
                profile.measuredBy());
    }

    Versioned<HeatProfile> fact() {
        HeatProfile profile = new HeatProfile(
                id,
                boardType,
                location,
                HeatProfile.Kind.valueOf(kind),
                tool,
                Optional.ofNullable(partC).map(Celsius::new),
                BoardTexts.peaks(neighbours),
                Optional.ofNullable(elsewhereC).map(Celsius::new),
                Duration.ofMillis(lengthMs),
                measuredOn,
                measuredBy);
        return new Versioned<>(profile, new Version(version, validFrom, recordedAt, who));
    }
}
