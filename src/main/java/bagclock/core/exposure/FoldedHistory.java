package bagclock.core.exposure;

import bagclock.core.standard.Level;
import bagclock.core.standard.Part;
import bagclock.core.standard.Rating;
import bagclock.core.standard.Standard;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A part's history folded at one of its ratings, up to the moment asked about: what the clock shows, and what it will
 * show if the part stays where it is or is heated.
 */
public final class FoldedHistory {
    /** Longer than any life that a table or a maker states, at any rate. */
    private static final Duration FAR = Duration.ofDays(365 * 200);

    private static final long SECOND_MS = 1000;

    private final Surroundings surroundings;
    private final Whereabouts where;
    private final RatingClock beforeLastLeg;
    private final RatingClock atMoment;
    private final RatingClock withTrail;
    private final long lastEventMs;
    private final long momentMs;
    private final ClockReading reading;

    private FoldedHistory(Standard standard, PartHistory history, Rating rating) {
        Part part = history.part();
        this.surroundings = new Surroundings(
                history.climate(), history.rules(), history.moment().toEpochMilli());
        this.momentMs = history.moment().toEpochMilli();
        RatingClock clock = clock(standard, part, rating, history.rules());
        Whereabouts now = Whereabouts.UNTOLD;
        List<Event> events = history.timeline().events();
        long sinceMs = momentMs;
        for (int i = 0; i < events.size(); i++) {
            Event event = events.get(i);
            Whereabouts after = now.after(event);
            clock.on(event, now, after, i == 0);
            join(standard, history, rating, event, clock);
            now = after;
            sinceMs = event.at().toEpochMilli();
            if (i + 1 < events.size()) {
                long untilMs = events.get(i + 1).at().toEpochMilli();
                clock.passAll(surroundings.spans(now.place(), sinceMs, untilMs), now.stands());
            }
        }
        if (events.isEmpty()) {
            clock.on(new Event.UnknownExposure(history.moment()), now, now, true);
        }
        this.where = now;
        this.lastEventMs = sinceMs;
        this.beforeLastLeg = clock.forecast();
        clock.passAll(surroundings.spans(now.place(), sinceMs, momentMs), now.stands());
        if (sinceMs == momentMs) {
            surroundings.spans(now.place(), momentMs, momentMs + 1).forEach(clock::look);
        }
        this.reading = clock.read(now, momentMs);
        this.atMoment = clock.forecast();
        this.withTrail = clock;
    }

    /** Folds a history at one rating. */
    public static FoldedHistory of(Standard standard, PartHistory history, Rating rating) {
        return new FoldedHistory(standard, history, rating);
    }

    private static RatingClock clock(Standard standard, Part part, Rating rating, SiteRules rules) {
        Level level = rating.level().orElse(Level.L1);
        return switch (level) {
            case L1 -> new LevelOneClock(standard, part);
            case L6 -> new LevelSixClock(standard, part);
            default -> new FloorClock(standard, part, level, rules);
        };
    }

    private static void join(Standard standard, PartHistory history, Rating rating, Event event, RatingClock clock) {
        if (event instanceof Event.Joined joined) {
            for (Timeline other : joined.others()) {
                PartHistory theirs = new PartHistory(
                        history.part(), other.upTo(joined.at()), history.climate(), history.rules(), joined.at());
                clock.join(new FoldedHistory(standard, theirs, rating).withTrail);
            }
        }
    }

    /** What the clock shows at the moment. */
    public ClockReading reading() {
        return reading;
    }

    /** Where the part is at the moment. */
    public Whereabouts whereabouts() {
        return where;
    }

    /**
     * Whether the part is still inside its floor life when a heat of this length ends. The minutes of the heat are
     * floor time: in the part's zone, or out of a bag or cabinet at the rate of 30/60.
     */
    public boolean isInsideAfterHeat(Duration length) {
        if (length.isZero()) {
            return atMoment.isInside();
        }
        long endMs = momentMs + length.toMillis();
        RatingClock clock = atMoment.forecast();
        boolean inAir = where.isOnFloor() || (where.place() instanceof Place.Bag bag && !bag.dryPack());
        if (inAir) {
            clock.passAll(surroundings.spans(where.place(), momentMs, endMs), where.lastFloor());
        } else {
            clock.heat(Span.floor(momentMs, endMs, Optional.empty(), Span.Basis.UNKNOWN), where.lastFloor());
        }
        return clock.isInside();
    }

    /**
     * When the floor life runs out if the part stays where it is, rounded down to the second; past if it already did;
     * empty if paused, unlimited, in an oven, or not known.
     */
    public Optional<Instant> endsAt() {
        if (reading.total().isEmpty() || reading.unknown().isPresent()) {
            return Optional.empty();
        } else if (reading.spentAt().isPresent()) {
            return reading.spentAt().map(FoldedHistory::toSecond);
        } else if (where.place() instanceof Place.Oven) {
            return Optional.empty();
        }
        boolean byTimer = atMoment instanceof LevelSixClock;
        long horizonMs = horizonMs(byTimer);
        if (hasLifeAt(horizonMs)) {
            return byTimer ? reading.timerEnd().map(FoldedHistory::toSecond) : Optional.empty();
        }
        return Optional.of(toSecond(lastInside(horizonMs)));
    }

    /** As far as the end of the life can lie: a timer's end, a rest's, or beyond every life. */
    private long horizonMs(boolean byTimer) {
        if (byTimer) {
            return reading.timerEnd().orElseThrow().toEpochMilli();
        }
        return reading.restEnd().map(end -> end.toEpochMilli() - 1).orElse(momentMs + FAR.toMillis());
    }

    /** The last millisecond at which the part is inside, between the moment and a moment at which it is not. */
    private Instant lastInside(long outsideMs) {
        long inside = momentMs;
        long outside = outsideMs;
        while (outside - inside > 1) {
            long middle = inside + (outside - inside) / 2;
            if (hasLifeAt(middle)) {
                inside = middle;
            } else {
                outside = middle;
            }
        }
        return Instant.ofEpochMilli(inside);
    }

    private boolean hasLifeAt(long laterMs) {
        boolean whole = surroundings.mayChangeWhatWas(where.place());
        RatingClock clock = (whole ? beforeLastLeg : atMoment).forecast();
        clock.passAll(surroundings.spans(where.place(), whole ? lastEventMs : momentMs, laterMs), where.lastFloor());
        return clock.hasLifeLeft();
    }

    private static Instant toSecond(Instant exact) {
        return Instant.ofEpochMilli(Math.floorDiv(exact.toEpochMilli(), SECOND_MS) * SECOND_MS);
    }
}
