package bagclock.ledger;

import bagclock.core.exposure.Event;
import java.time.Instant;
import java.util.Comparator;
import java.util.Optional;

/**
 * An act as it stands after all corrections.
 *
 * @param seq the entry that told it first
 * @param by the entry whose words stand: the same one, or the correction
 */
public record Told(int seq, Instant at, Act act, Told.By by) {
    static final Comparator<Told> IN_TIME = Comparator.comparing(Told::at).thenComparingInt(Told::seq);

    /** Who told it. */
    public record By(int seq, String who, Instant recordedAt) {}

    /** An event may begin before the act that tells it: the seal date of a received bag. */
    static Instant startOf(Instant happenedAt, Act act) {
        if (act instanceof Act.Received received) {
            return received.origin().at();
        }
        return act instanceof Act.Happened happened ? happened.event().at() : happenedAt;
    }

    /** The event, if the act is one. */
    public Optional<Event> event() {
        if (act instanceof Act.Received received) {
            return Optional.of(received.origin());
        }
        return act instanceof Act.Happened happened ? Optional.of(happened.event()) : Optional.empty();
    }
}
