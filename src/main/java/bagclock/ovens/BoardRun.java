package bagclock.ovens;

import bagclock.core.quantity.Celsius;
import bagclock.desk.BoardDesk;
import bagclock.ledger.BoardEntry;
import bagclock.ledger.BoardEntry.Kind;
import bagclock.ledger.BoardNotes;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A board's run in an oven that ended, as its ledger tells it; its hours were told.
 *
 * @param oven code of the oven
 */
record BoardRun(String serial, String oven, Instant loadedAt, Instant outAt, Celsius setPoint, Duration atTemperature) {
    /** Those that count, of the boards whose bakes ended last. */
    static List<BoardRun> last(BoardDesk boards, int most, Instant now) {
        return boards.newest(Kind.BAKE_ENDED, most).stream()
                .map(BoardEntry::serial)
                .distinct()
                .flatMap(serial -> boards.board(serial, now).stream())
                .flatMap(view -> of(view.standing()).stream())
                .toList();
    }

    /** The runs that ended among a board's entries that count. */
    private static List<BoardRun> of(List<BoardEntry> standing) {
        List<BoardRun> runs = new ArrayList<>();
        Optional<BoardEntry> start = Optional.empty();
        for (BoardEntry entry : standing) {
            if (entry.kind() == Kind.BAKE_STARTED) {
                start = Optional.of(entry);
            } else if (entry.kind() == Kind.BAKE_ENDED) {
                start.map(begun -> of(begun, entry)).ifPresent(runs::add);
            }
        }
        return runs;
    }

    private static BoardRun of(BoardEntry start, BoardEntry end) {
        return new BoardRun(
                start.serial(),
                start.say(BoardNotes.OVEN).orElse(""),
                start.happenedAt(),
                end.happenedAt(),
                new Celsius(start.say(BoardNotes.SET_POINT).map(Double::valueOf).orElseThrow()),
                end.say(BoardNotes.AT_TEMPERATURE).map(Duration::parse).orElse(Duration.ZERO));
    }
}
