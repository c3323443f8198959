package bagclock.register;

import bagclock.core.heat.BoardQuestion.OwnBake;
import bagclock.core.quantity.Celsius;
import bagclock.platform.SortKey;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** One version of a board type, as stored. */
record BoardTypeRow(
        String number,
        int version,
        Instant validFrom,
        Instant recordedAt,
        String who,
        String sortKey,
        String description,
        @Nullable Double bearsC,
        @Nullable Double bakeC,
        @Nullable Long bakeMs,
        @Nullable Boolean coated,
        String keptOn,
        String spots) {

    static BoardTypeRow of(BoardType type, Version version) {
        return new BoardTypeRow(
                type.number(),
                version.number(),
                version.validFrom(),
                version.recordedAt(),
                version.who(),
                SortKey.of(type.number()),
                type.description(),
                Columns.degrees(type.bears()),
                Columns.degrees(type.ownBake().map(OwnBake::temperature)),
                type.ownBake().map(bake -> bake.time().toMillis()).orElse(null),
                type.coated().orElse(null),
                BoardTexts.keptOn(type.keptOn()),
                BoardTexts.spots(type.spots()));
    }

    Versioned<BoardType> fact() {
        Optional<OwnBake> ownBake = bakeC == null || bakeMs == null
                ? Optional.empty()
                : Optional.of(new OwnBake(new Celsius(bakeC), Duration.ofMillis(bakeMs)));
        BoardType type = new BoardType(
                number,
                description,
                Optional.ofNullable(bearsC).map(Celsius::new),
                ownBake,
                Optional.ofNullable(coated),
                BoardTexts.keptOn(keptOn),
                BoardTexts.spots(spots));
        return new Versioned<>(type, new Version(version, validFrom, recordedAt, who));
    }
}
