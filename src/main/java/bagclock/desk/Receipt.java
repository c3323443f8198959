package bagclock.desk;

import bagclock.ledger.Act;
import bagclock.ledger.Entry;
import java.time.Instant;
import java.util.Optional;

/**
 * What was written down.
 *
 * @param tag the item; of a received one its new tag
 * @param child the tag of an item that was split off
 * @param repeated nothing was written now: the same command or scan was taken before
 */
public record Receipt(String tag, int seq, Optional<String> child, Instant recordedAt, boolean repeated) {
    static Receipt of(Entry entry, boolean repeated) {
        Optional<String> child =
                entry.act() instanceof Act.SplitOff split ? Optional.of(split.child()) : Optional.empty();
        return new Receipt(entry.tag(), entry.seq(), child, entry.stamp().recordedAt(), repeated);
    }
}
