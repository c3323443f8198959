package bagclock.ledger;

import bagclock.core.exposure.Event;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;

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

    /** An event may begin before the act that tells it: the seal date of a received bag, a bake that is over. */
    static Instant startOf(Instant happenedAt, Act act) {
        if (act instanceof Act.Received received) {
            return received.origin().at();
        } else if (act instanceof Act.BakedElsewhere baked) {
            return baked.startedAt();
        }
        return act instanceof Act.Happened happened ? happened.event().at() : happenedAt;
    }

    /** The events that the act is; none if no clock depends on it. */
    public List<Event> events() {
        if (act instanceof Act.Received received) {
            return List.of(received.origin());
        } else if (act instanceof Act.BakedElsewhere baked) {
            return baked.events();
        }
        return act instanceof Act.Happened happened ? List.of(happened.event()) : List.of();
    }
}
