package bagclock.ovens;

import bagclock.core.quantity.Celsius;
import bagclock.desk.BoardDesk;
import bagclock.desk.BoardView;
import bagclock.ledger.BoardEntry;
import bagclock.ledger.BoardEntry.Kind;
import bagclock.ledger.BoardNotes;
import bagclock.ledger.Item;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A board that is in an oven with no item on it: its own ledger alone tells of it. A board with items is seen by them.
 *
 * @param oven code of the oven
 */
record BoardIn(String serial, String oven, Instant loadedAt, Celsius setPoint) {
    private static final int MOST = 200;

    /** Every one, of the boards that went into an oven last. */
    static List<BoardIn> now(BoardDesk boards, Instant now) {
        return started(boards).stream()
                .flatMap(serial -> boards.board(serial, now).stream())
                .flatMap(view -> of(view).stream())
                .toList();
    }

    /** Without those of which the newest is that they came out: looked at one by one they would be many. */
    private static Set<String> started(BoardDesk boards) {
        Set<String> seen = new HashSet<>();
        Set<String> out = new HashSet<>();
        Set<String> started = new HashSet<>();
        Stream.of(Kind.BAKE_STARTED, Kind.BAKE_ENDED, Kind.TAKEN_BACK)
                .flatMap(kind -> boards.newest(kind, MOST).stream())
                .sorted((one, other) -> Integer.compare(other.seq(), one.seq()))
                .forEach(entry -> {
                    if (seen.add(entry.serial()) && entry.kind() == Kind.BAKE_ENDED) {
                        out.add(entry.serial());
                    }
                    if (entry.kind() == Kind.BAKE_STARTED) {
                        started.add(entry.serial());
                    }
                });
        started.removeAll(out);
        return started;
    }

    private static Optional<BoardIn> of(BoardView view) {
        boolean isSeen = view.items().stream().anyMatch(item -> item.where() == Item.Where.OVEN);
        if (isSeen || view.state().running().isEmpty()) {
            return Optional.empty();
        }
        return view.standing().stream()
                .filter(entry -> entry.kind() == Kind.BAKE_STARTED)
                .reduce((first, last) -> last)
                .map(BoardIn::of);
    }

    private static BoardIn of(BoardEntry start) {
        return new BoardIn(
                start.serial(),
                start.say(BoardNotes.OVEN).orElse(""),
                start.happenedAt(),
                new Celsius(start.say(BoardNotes.SET_POINT).map(Double::valueOf).orElseThrow()));
    }
}
