package bagclock.core.estimate;

import bagclock.core.diffusion.Content;
import bagclock.core.diffusion.Diffusivity;
import bagclock.core.diffusion.Soak;
import bagclock.core.exposure.AirHistory;
import bagclock.core.exposure.AirHistory.Stretch;
import bagclock.core.exposure.ClockReading;
import bagclock.core.exposure.Event;
import bagclock.core.exposure.FoldedHistory;
import bagclock.core.exposure.PartHistory;
import bagclock.core.exposure.Place;
import bagclock.core.exposure.Share;
import bagclock.core.quantity.Millimetres;
import bagclock.core.standard.DeratingClass;
import bagclock.core.standard.Part;
import bagclock.core.standard.Rating;
import bagclock.core.standard.Standard;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;

/**
 * Runs the model beside the tables: a part's history since it was last dry, with the low and the high diffusivity. Dry
 * is what the rules call dry: where the history begins, or the end of the last bake that counted; a dry rest is followed
 * like any other stay. Pure.
 */
public final class Estimates {
    private static final Millimetres THICKEST = Millimetres.of("4.5");
    private static final int POINTS = 120;
    private static final int PARTS = 1000;

    /** Of the cells that it is trusted on the model misses the worst by 37 %; less than that is no ground to warn. */
    private static final double CLEARLY_LESS = 0.63;

    private static final double MS_PER_HOUR = 3_600_000;

    private final PartHistory history;
    private final Fit fit;
    private final ClockReading reading;

    private Estimates(PartHistory history, Fit fit, ClockReading reading) {
        this.history = history;
        this.fit = fit;
        this.reading = reading;
    }

    /** What the model says of a part, judged by its strictest rating. */
    public static Beside of(Standard standard, PartHistory history) {
        Rating rating = strictest(history.part());
        Optional<Fit> fit = Fit.of(rating.level());
        if (fit.isEmpty()) {
            return Beside.silent(Silence.LEVEL_NOT_TRIED);
        }
        Optional<Silence> unfit = unfit(history.part());
        if (unfit.isPresent()) {
            return Beside.silent(unfit.get());
        }
        FoldedHistory folded = FoldedHistory.of(standard, history, rating);
        return new Estimates(history, fit.get(), folded.reading())
                .beside(folded.whereabouts().place());
    }

    private static Rating strictest(Part part) {
        return part.ratings().stream()
                .max(Comparator.comparingInt(
                        rating -> rating.level().map(Enum::ordinal).orElse(Integer.MAX_VALUE)))
                .orElseThrow();
    }

    private static Optional<Silence> unfit(Part part) {
        if (part.maker().floorLife().isPresent() || part.maker().derating().isPresent()) {
            return Optional.of(Silence.MAKERS_RULE);
        } else if (!part.body().deratingClasses().equals(EnumSet.of(DeratingClass.THICK))) {
            return Optional.of(Silence.BODY_NOT_TRIED);
        }
        boolean tooThick =
                part.body().thickness().filter(t -> t.isAbove(THICKEST)).isPresent();
        return tooThick ? Optional.of(Silence.BODY_TOO_THICK) : Optional.empty();
    }

    private Beside beside(Place place) {
        List<Event> events = history.timeline().events();
        if (reading.unknown().isPresent() || events.isEmpty() || reading.total().isEmpty()) {
            return Beside.silent(Silence.HISTORY_UNKNOWN);
        } else if (place instanceof Place.Oven) {
            return Beside.silent(Silence.IN_OVEN);
        }
        Instant dryAt = reading.driedAt().stream()
                .max(Comparator.naturalOrder())
                .orElse(events.get(0).at());
        List<Stretch> stretches = AirHistory.since(dryAt, history);
        return wasOnBoard(events, dryAt)
                .or(() -> joined(events, dryAt))
                .or(() -> Followed.silence(stretches))
                .map(Beside::silent)
                .orElseGet(() -> follow(dryAt, stretches));
    }

    private Optional<Silence> wasOnBoard(List<Event> events, Instant dryAt) {
        boolean mounted = history.timeline().whereabouts().mounted();
        boolean was = events.stream().anyMatch(e -> e instanceof Event.Removed && e.at().isAfter(dryAt));
        return mounted || was ? Optional.of(Silence.ON_BOARD) : Optional.empty();
    }

    private static Optional<Silence> joined(List<Event> events, Instant dryAt) {
        boolean joined = events.stream().anyMatch(e -> e instanceof Event.Joined && !e.at().isBefore(dryAt));
        return joined ? Optional.of(Silence.JOINED) : Optional.empty();
    }

    private Beside follow(Instant dryAt, List<Stretch> stretches) {
        Followed followed = Followed.of(fit.slab(), stretches);
        Limit limit = Limit.of(fit.slab(), life());
        Soak coarse = followed.soak().coarse(followed.soak().length().dividedBy(PARTS));
        Optional<Warning> warning = warning(limit.leftAfter(coarse), stretches);
        return fit.isSound()
                ? new Beside(
                        Optional.of(new Estimate(dryAt, curve(dryAt, followed, coarse, limit))),
                        Optional.empty(),
                        warning)
                : new Beside(Optional.empty(), Optional.of(Silence.LEVEL_NOT_SOUND), warning);
    }

    private static List<Estimate.Point> curve(Instant dryAt, Followed followed, Soak coarse, Limit limit) {
        List<Estimate.Point> curve = new ArrayList<>();
        Duration shown = coarse.length().minus(followed.untilFirstAir());
        for (int i = 0; i < POINTS; i++) {
            Duration since = followed.untilFirstAir().plus(shown.multipliedBy(i).dividedBy(POINTS));
            Content low = coarse.contentAfter(since, Diffusivity.LOW);
            curve.add(point(dryAt.plus(since), low, coarse.contentAfter(since, Diffusivity.HIGH), limit));
        }
        Soak exact = followed.soak();
        Instant end = dryAt.plus(exact.length());
        curve.add(point(end, exact.content(Diffusivity.LOW), exact.content(Diffusivity.HIGH), limit));
        return curve;
    }

    private static Estimate.Point point(Instant at, Content low, Content high, Limit limit) {
        return new Estimate.Point(at, limit.sealedFace(low, high), limit.mean(low, high));
    }

    private Duration life() {
        return time(Share.WHOLE.hoursOf(reading.total().orElseThrow().value()));
    }

    private static Duration time(BigDecimal hours) {
        return Duration.ofMillis(Math.round(hours.doubleValue() * MS_PER_HOUR));
    }

    private Optional<Warning> warning(Duration modelLeaves, List<Stretch> stretches) {
        Duration used =
                time(reading.used().hoursOf(reading.total().orElseThrow().value()));
        Duration rulesLeave = life().minus(used);
        boolean clearlyLess = modelLeaves.toMillis() < rulesLeave.toMillis() * CLEARLY_LESS;
        return reading.inside() && clearlyLess
                ? Optional.of(new Warning(cause(stretches), modelLeaves, rulesLeave))
                : Optional.empty();
    }

    /** A room's air before the account of used life begins was forgiven by a rest. */
    private Warning.Cause cause(List<Stretch> stretches) {
        long accountMs = reading.trail().stream()
                .mapToLong(entry -> entry.from().toEpochMilli())
                .min()
                .orElse(Long.MAX_VALUE);
        boolean forgiven = stretches.stream()
                .anyMatch(stretch -> stretch.kind() == AirHistory.Kind.ROOM && stretch.startMs() < accountMs);
        if (forgiven) {
            return Warning.Cause.DRY_REST;
        }
        return history.rules().useDrierThan60() ? Warning.Cause.DRIER_AIR : Warning.Cause.OTHER;
    }
}
