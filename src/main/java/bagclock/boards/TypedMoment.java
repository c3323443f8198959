package bagclock.boards;

import bagclock.desk.BoardView;
import bagclock.ledger.BoardEntry;
import bagclock.platform.Entered;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/** When something on a board happened, as people type it. */
final class TypedMoment {
    private TypedMoment() {}

    /**
     * The moment in a field, empty and refused if it is none or lies ahead. A field has no seconds: the minute that
     * runs is now, and the minute of the board's last entry is that entry's moment.
     */
    static Optional<Instant> of(Entered sent, String name, BoardView view, Instant now) {
        Optional<Instant> last = view.last().map(BoardEntry::happenedAt);
        return sent.pastTime(name, now)
                .map(at -> isMinuteOf(now, at) ? now : at)
                .map(at -> last.filter(before -> isMinuteOf(before, at) && at.isBefore(before))
                        .orElse(at));
    }

    private static boolean isMinuteOf(Instant moment, Instant at) {
        return moment.truncatedTo(ChronoUnit.MINUTES).equals(at.truncatedTo(ChronoUnit.MINUTES));
    }
}
