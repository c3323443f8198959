package bagclock.core.exposure;

import bagclock.core.Outcome;
import bagclock.core.Reason;
import bagclock.core.Refusal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The history of one part: events in order of time, each of them possible after those before it. Immutable; an empty
 * one means that nothing is known.
 */
public final class Timeline {
    /** No history at all: unknown exposure. */
    public static final Timeline EMPTY = new Timeline(List.of());

    private final List<Event> events;

    private Timeline(List<Event> events) {
        this.events = List.copyOf(events);
    }

    /** The events as a history, or every reason why they cannot be one. */
    public static Outcome<Timeline> of(List<Event> events) {
        List<Refusal> refusals = new ArrayList<>();
        Whereabouts where = Whereabouts.UNTOLD;
        for (int i = 0; i < events.size(); i++) {
            Event event = events.get(i);
            Optional<Event> before = i == 0 ? Optional.empty() : Optional.of(events.get(i - 1));
            refusal(event, before, where).ifPresent(refusals::add);
            where = where.after(event);
        }
        return refusals.isEmpty() ? Outcome.accepted(new Timeline(events)) : new Outcome.Refused<>(refusals);
    }

    /** The events, oldest first. */
    public List<Event> events() {
        return events;
    }

    /** This history as it was known up to and including a moment. */
    public Timeline upTo(Instant moment) {
        return new Timeline(
                events.stream().filter(event -> !event.at().isAfter(moment)).toList());
    }

    /** Where the part is after the last event. */
    public Whereabouts whereabouts() {
        Whereabouts where = Whereabouts.UNTOLD;
        for (Event event : events) {
            where = where.after(event);
        }
        return where;
    }

    /** Where the part is after each of the events. */
    public List<Whereabouts> whereaboutsAfterEach() {
        List<Whereabouts> each = new ArrayList<>();
        Whereabouts where = Whereabouts.UNTOLD;
        for (Event event : events) {
            where = where.after(event);
            each.add(where);
        }
        return each;
    }

    private static Optional<Refusal> refusal(Event event, Optional<Event> before, Whereabouts where) {
        if (before.isPresent() && event.at().isBefore(before.get().at())) {
            return refuse(
                    Reason.TIME_GOES_BACK, name(event), event.at(), before.get().at());
        }
        if (event instanceof Event.Opened opened && isReadTooEarly(opened)) {
            return refuse(Reason.CARD_READ_BEFORE_OPENING, opened.cardReadAt().orElseThrow(), event.at());
        }
        if (where.place() instanceof Place.Oven oven) {
            return refusalInOven(event, oven);
        }
        return refusalElsewhere(event, before, where);
    }

    private static Optional<Refusal> refusalElsewhere(Event event, Optional<Event> before, Whereabouts where) {
        boolean closed = where.place() instanceof Place.Bag;
        if (closed && !mayHappenToClosedBag(event)) {
            return refuse(Reason.BAG_IS_CLOSED, name(event));
        }
        if (event instanceof Event.BakeEnded) {
            return refuse(Reason.NO_BAKE_RUNNING, name(event));
        }
        if (before.isPresent() && event instanceof Event.Opened && !closed) {
            return refuse(Reason.NO_CLOSED_BAG, name(event));
        }
        boolean sealedTooLate =
                event instanceof Event.Sealed && before.isPresent() && !(before.get() instanceof Event.BakeEnded);
        return sealedTooLate ? refuse(Reason.SEALED_ONLY_WHEN_DRY, name(event)) : Optional.empty();
    }

    private static Optional<Refusal> refusalInOven(Event event, Place.Oven oven) {
        if (!(event instanceof Event.BakeEnded ended)) {
            return refuse(Reason.PART_IS_IN_OVEN, name(event));
        }
        Duration stay = Duration.between(oven.bake().at(), ended.at());
        return ended.atTemperature()
                .filter(claimed -> claimed.compareTo(stay) > 0)
                .flatMap(claimed -> refuse(Reason.MORE_HOURS_THAN_STAY, claimed, stay));
    }

    private static boolean mayHappenToClosedBag(Event event) {
        return event instanceof Event.Opened || event instanceof Event.UnknownExposure || event instanceof Event.Wetted;
    }

    private static boolean isReadTooEarly(Event.Opened opened) {
        return opened.cardReadAt().filter(read -> read.isBefore(opened.at())).isPresent();
    }

    private static Optional<Refusal> refuse(Reason reason, Object... parts) {
        return Optional.of(Refusal.of(reason, parts));
    }

    private static String name(Event event) {
        return event.getClass().getSimpleName();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Timeline timeline && timeline.events.equals(events);
    }

    @Override
    public int hashCode() {
        return events.hashCode();
    }
}
