package bagclock.desk;

import bagclock.core.exposure.Event;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Where a part on a board came from, and what it went through there.
 *
 * @param used the item of which it was used; empty where nobody knows: then it begins with unknown exposure
 * @param from when it was soldered on; where nobody knows, before the first thing that is told of the board
 * @param since heats and bakes on the board, and times out of the house
 */
public record BoardSource(Optional<Used> used, Instant from, List<Event> since) {
    /**
     * An item of which parts were used.
     *
     * @param seq of the item's entry that says so
     */
    public record Used(String tag, int seq) {}

    /** Keeps its own copy. */
    public BoardSource {
        since = List.copyOf(since);
    }
}
