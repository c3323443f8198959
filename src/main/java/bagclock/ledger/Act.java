package bagclock.ledger;

import bagclock.core.exposure.Event;
import bagclock.core.quantity.Celsius;
import bagclock.core.standard.CarrierLimit;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What one entry says. */
public sealed interface Act {
    /**
     * The item came into the house.
     *
     * @param origin its first event: sealed, left a dry pack, or unknown exposure; its time may lie before the receipt
     * @param quantity parts in it, above 0
     * @param carrier what they are in or on
     * @param notes what else was told, by name, see {@link Notes}
     */
    record Received(Event origin, String partType, long quantity, CarrierLimit carrier, Map<String, String> notes)
            implements Act {
        /** Keeps its own copy. */
        public Received {
            notes = Map.copyOf(notes);
        }
    }

    /** Something happened to the item that its clock may depend on. */
    record Happened(Event event, Map<String, String> notes) implements Act {
        /** Keeps its own copy. */
        public Happened {
            notes = Map.copyOf(notes);
        }
    }

    /** Parts were taken out into a child. */
    record SplitOff(String child, long quantity) implements Act {}

    /** The child's first entry: its history begins with the parent's up to, and without, the parent's entry. */
    record SplitFrom(String parent, int parentSeq, long quantity) implements Act {}

    /** Other items were put into this one. */
    record Joined(List<Other> others, long quantity) implements Act {
        /** Another item's history up to, and without, its entry. */
        public record Other(String tag, int seq) {}

        /** Keeps its own copy. */
        public Joined {
            others = List.copyOf(others);
        }
    }

    /** The whole item went into another one. */
    record JoinedInto(String keeper) implements Act {}

    /** Parts were used. */
    record UsedUp(long quantity, String workOrder, List<String> boards) implements Act {
        /** Keeps its own copy. */
        public UsedUp {
            boards = List.copyOf(boards);
        }
    }

    /** The closed bag was put at a place; no clock depends on it. */
    record PutAt(String placeCode) implements Act {}

    /**
     * A bake in an oven that this shop does not know. Nothing shows its band, its humidity or its time at temperature,
     * nor the air on the way: it dries nothing, all its hours count where hours are counted, and the history is unknown
     * from its end back.
     *
     * @param endedAt when the part was back in open air
     * @param time as it was told, above 0
     * @param oven whose oven it was, in free words
     */
    record BakedElsewhere(Instant endedAt, Celsius temperature, Duration time, String oven) implements Act {
        /** No two events of a part fall into one moment, so that their order never hangs on who sorts them. */
        private static final Duration AFTER = Duration.ofMillis(1);

        /** When it would have begun. */
        public Instant startedAt() {
            return outAt().minus(time);
        }

        private Instant outAt() {
            return endedAt.minus(AFTER);
        }

        /** The bake, of unknown time at temperature. */
        public List<Event> bake() {
            return List.of(
                    new Event.BakeStarted(startedAt(), temperature, Optional.empty()),
                    new Event.BakeEnded(outAt(), Optional.empty()));
        }

        /** The bake, and that nothing is known of the time before its end. */
        public List<Event> events() {
            return Stream.concat(bake().stream(), Stream.of(new Event.UnknownExposure(endedAt)))
                    .toList();
        }
    }

    /**
     * An engineer released one heat; no clock depends on it.
     *
     * @param notes the heat, why, and the answer that stands beside it, see {@link Notes}
     */
    record Released(Map<String, String> notes) implements Act {
        /** Keeps its own copy. */
        public Released {
            notes = Map.copyOf(notes);
        }
    }

    /** The corrected entry did not happen. */
    record TakenBack() implements Act {}

    /** Whether both are the same event at whatever time, with the same notes. */
    default boolean saysTheSameAs(Act other) {
        if (this instanceof PutAt) {
            return equals(other);
        }
        return this instanceof Happened mine
                && other instanceof Happened theirs
                && mine.notes().equals(theirs.notes())
                && EventJson.withoutTime(mine.event()).equals(EventJson.withoutTime(theirs.event()));
    }

    /** The word used for it in stored entries. */
    default String word() {
        if (this instanceof Happened happened) {
            return EventJson.word(happened.event());
        }
        return ActJson.word(this);
    }
}
