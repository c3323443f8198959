package bagclock.stock;

import bagclock.core.exposure.Event;
import bagclock.core.exposure.Timeline;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/** The axis of time under an item's drawings, 1000 wide: from where its history is worth showing until now. */
record TimeAxis(Instant from, Instant now) {
    private static final double WIDTH = 1000;

    /** A closed dry pack may be months old; the drawing begins this long before it was opened. */
    private static final Duration BEFORE_OPENING = Duration.ofDays(1);

    static TimeAxis of(Timeline timeline, Instant now) {
        List<Event> events = timeline.events();
        Instant first = events.isEmpty() ? now : events.get(0).at();
        boolean sealed = !events.isEmpty() && events.get(0) instanceof Event.Sealed;
        Instant opened = events.size() > 1 ? events.get(1).at() : now;
        Instant early = opened.minus(BEFORE_OPENING);
        return new TimeAxis(sealed && early.isAfter(first) ? early : first, now);
    }

    double x(Instant moment) {
        double whole = Math.max(1, Duration.between(from, now).toMillis());
        double part = Duration.between(from, moment).toMillis() / whole;
        return Math.round(Math.max(0, Math.min(1, part)) * WIDTH * 10) / 10.0;
    }
}
