package bagclock.core.exposure;

import bagclock.core.exposure.ClockReading.Fault;
import bagclock.core.standard.BakeColumn;
import bagclock.core.standard.Citation;
import bagclock.core.standard.Cited;
import bagclock.core.standard.Level;
import bagclock.core.standard.Life;
import bagclock.core.standard.Part;
import bagclock.core.standard.Standard;
import bagclock.core.standard.Status;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Level 6: a bake by the maker's rule before each use, then the label's hours; neither bag nor cabinet stops them, and
 * a heat above 200 C uses the bake up.
 */
final class LevelSixClock implements RatingClock {
    private final Part part;
    private final BakeNeed need;
    private boolean bakeCounted;
    private boolean sealedWet;
    private final List<Instant> driedAt = new ArrayList<>();
    private Optional<Instant> bakedAt = Optional.empty();
    private Optional<Instant> above3060At = Optional.empty();
    private Optional<UnknownHistory> unknown = Optional.empty();
    private Optional<ClockReading.Run> run = Optional.empty();
    private Optional<Zone> zone = Optional.empty();

    LevelSixClock(Standard standard, Part part) {
        this.part = part;
        this.need = new BakeNeed(standard, part);
    }

    private LevelSixClock(LevelSixClock other) {
        part = other.part;
        need = other.need;
        bakedAt = other.bakedAt;
        above3060At = other.above3060At;
        unknown = other.unknown;
        run = other.run;
        zone = other.zone;
    }

    @Override
    public LevelSixClock forecast() {
        return new LevelSixClock(this);
    }

    @Override
    public void on(Event event, Whereabouts before, Whereabouts after, boolean first) {
        sealedWet |= event instanceof Event.Sealed && !first && !bakeCounted;
        bakeCounted = false;
        if (event instanceof Event.UnknownExposure) {
            forget(UnknownHistory.Cause.UNKNOWN_EXPOSURE, event.at());
        } else if (event instanceof Event.Wetted) {
            forget(UnknownHistory.Cause.WETTED, event.at());
        } else if (event instanceof Event.Heated heated && Tally.isPass(heated.peakBody())) {
            bakedAt = Optional.empty();
        } else if (event instanceof Event.BakeStarted bake) {
            run = Optional.of(new ClockReading.Run(bake, need.of(bake, Level.L6, BakeColumn.OVER_72H)));
        } else if (event instanceof Event.BakeEnded ended) {
            endBake(ended);
        }
    }

    private void forget(UnknownHistory.Cause cause, Instant at) {
        bakedAt = Optional.empty();
        unknown = Optional.of(new UnknownHistory(cause, at));
    }

    private void endBake(Event.BakeEnded ended) {
        boolean counts = run.flatMap(ClockReading.Run::needed)
                .flatMap(needed -> ended.atTemperature().map(time -> time.compareTo(needed) >= 0))
                .orElse(false);
        run = Optional.empty();
        bakeCounted = counts;
        if (counts) {
            bakedAt = Optional.of(ended.at());
            driedAt.add(ended.at());
            above3060At = Optional.empty();
            unknown = Optional.empty();
        }
    }

    @Override
    public void pass(Span span, Optional<Zone> where) {
        zone = where;
        boolean above = bakedAt.isPresent()
                && span.isFloor()
                && span.lengthMs() > 0
                && span.air().filter(air -> !air.isAbove3060()).isEmpty();
        if (above && above3060At.isEmpty()) {
            above3060At = Optional.of(Instant.ofEpochMilli(span.startMs()));
        }
    }

    @Override
    public void breakRest() {
        // a rest does nothing for level 6
    }

    @Override
    public void join(RatingClock other) {
        LevelSixClock theirs = (LevelSixClock) other;
        boolean both = bakedAt.isPresent() && theirs.bakedAt.isPresent();
        boolean mine = both && bakedAt.get().isBefore(theirs.bakedAt.get());
        bakedAt = !both ? Optional.empty() : mine ? bakedAt : theirs.bakedAt;
        above3060At = above3060At.or(() -> theirs.above3060At);
        unknown = unknown.or(() -> theirs.unknown);
    }

    @Override
    public boolean hasLifeLeft() {
        return isInside();
    }

    @Override
    public boolean isInside() {
        return bakedAt.isPresent() && above3060At.isEmpty();
    }

    @Override
    public ClockReading read(Whereabouts where, long momentMs) {
        List<Fault> faults = new ArrayList<>();
        if (bakedAt.isEmpty()) {
            faults.add(Fault.LEVEL_6_NOT_BAKED);
        } else if (above3060At.isPresent()) {
            faults.add(Fault.LEVEL_6_ABOVE_30_60);
        }
        if (sealedWet) {
            faults.add(Fault.SEALED_AFTER_FAILED_BAKE);
        }
        Optional<Duration> label = bakedAt.isPresent() ? part.maker().useWithin() : Optional.empty();
        Optional<Instant> end = bakedAt.flatMap(baked -> label.map(baked::plus));
        List<TrailEntry> trail =
                label.map(time -> List.of(timer(Life.of(time), momentMs))).orElse(List.of());
        return new ClockReading(
                label.map(LevelSixClock::cited),
                trail.isEmpty() ? Share.NONE : trail.get(0).used(),
                isInside(),
                state(where),
                Optional.empty(),
                unknown,
                spentAt(end, momentMs),
                end,
                Optional.empty(),
                run,
                List.copyOf(driedAt),
                trail,
                faults);
    }

    /** The label's time ends early at the first air above 30/60 after the bake. */
    private Optional<Instant> spentAt(Optional<Instant> end, long momentMs) {
        Optional<Instant> passed = end.filter(moment -> moment.isBefore(Instant.ofEpochMilli(momentMs)));
        return above3060At
                .filter(above -> passed.isEmpty() || above.isBefore(passed.get()))
                .or(() -> passed);
    }

    private ClockState state(Whereabouts where) {
        if (where.place() instanceof Place.Oven) {
            return ClockState.BAKING;
        }
        return bakedAt.isPresent() ? ClockState.RUNNING : ClockState.NONE;
    }

    private TrailEntry timer(Life label, long momentMs) {
        Instant baked = bakedAt.orElseThrow();
        Share used = Share.of(momentMs - baked.toEpochMilli(), label);
        return new TrailEntry(
                baked,
                Instant.ofEpochMilli(momentMs),
                TrailEntry.Where.FLOOR,
                zone,
                Optional.empty(),
                Optional.of(label),
                used);
    }

    private static Cited<Life> cited(Duration label) {
        return new Cited<>(Life.of(label), new Citation("maker's label", "time after bake", "", "", Status.SEEN, ""));
    }
}
