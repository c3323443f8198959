package bagclock.ledger;

import java.time.Instant;
import java.util.OptionalInt;

/**
 * An entry before it is written.
 *
 * @param corrects seq of the entry of the same item that this one replaces or takes back
 */
public record Draft(String tag, Instant happenedAt, Act act, OptionalInt corrects) {
    /** An entry that corrects nothing. */
    public Draft(String tag, Instant happenedAt, Act act) {
        this(tag, happenedAt, act, OptionalInt.empty());
    }
}
