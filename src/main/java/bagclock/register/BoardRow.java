package bagclock.register;

import bagclock.platform.SortKey;
import java.time.Instant;

/** One version of a board, as stored. */
record BoardRow(
        String serial,
        int version,
        Instant validFrom,
        Instant recordedAt,
        String who,
        String sortKey,
        String boardType,
        boolean fromField) {

    static BoardRow of(KnownBoard board, Version version) {
        return new BoardRow(
                board.serial(),
                version.number(),
                version.validFrom(),
                version.recordedAt(),
                version.who(),
                SortKey.of(board.serial()),
                board.type(),
                board.fromField());
    }

    Versioned<KnownBoard> fact() {
        return new Versioned<>(
                new KnownBoard(serial, boardType, fromField), new Version(version, validFrom, recordedAt, who));
    }
}
