package bagclock.desk;

import bagclock.core.exposure.Event;
import java.time.Instant;
import java.util.List;

/**
 * Where a part on a board came from: an item of which parts were used.
 *
 * @param tag of the item
 * @param seq of the item's entry that says so
 * @param usedAt when it was soldered on
 * @param since what it went through on the board, bakes too
 */
public record BoardSource(String tag, int seq, Instant usedAt, List<Event> since) {
    /** Keeps its own copy. */
    public BoardSource {
        since = List.copyOf(since);
    }
}
