package bagclock.core.exposure;

import bagclock.core.exposure.ClockReading.Fault;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.core.standard.BakeColumn;
import bagclock.core.standard.Level;
import bagclock.core.standard.Part;
import bagclock.core.standard.Standard;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Level 1 and unknown levels: no floor life. A wetting, or more than 24 h above 85 %RH read or declared, is remembered
 * until a maker's bake that counts (inference).
 */
final class LevelOneClock implements RatingClock {
    private static final RelativeHumidity DAMP = new RelativeHumidity(85);
    private static final Air LIMIT_30_85 = Air.of(30, 85);
    private static final Duration DAMP_FOR = Duration.ofHours(24);

    private final BakeNeed need;
    private boolean bakeCounted;
    private boolean sealedWet;
    private boolean wetted;
    private boolean above3085;
    private long dampMs;
    private Optional<ClockReading.Run> run = Optional.empty();

    LevelOneClock(Standard standard, Part part) {
        this.need = new BakeNeed(standard, part);
    }

    @Override
    public LevelOneClock forecast() {
        return this;
    }

    @Override
    public void on(Event event, Whereabouts before, Whereabouts after, boolean first) {
        sealedWet |= event instanceof Event.Sealed && !first && !bakeCounted;
        bakeCounted = false;
        if (event instanceof Event.Wetted) {
            wetted = true;
        } else if (event instanceof Event.BakeStarted bake) {
            run = Optional.of(new ClockReading.Run(bake, need.of(bake, Level.L1, BakeColumn.OVER_72H)));
        } else if (event instanceof Event.BakeEnded ended) {
            endBake(ended);
        }
    }

    private void endBake(Event.BakeEnded ended) {
        boolean counts = run.flatMap(ClockReading.Run::needed)
                .flatMap(needed -> ended.atTemperature().map(time -> time.compareTo(needed) >= 0))
                .orElse(false);
        run = Optional.empty();
        bakeCounted = counts;
        if (counts) {
            wetted = false;
            above3085 = false;
            dampMs = 0;
        }
    }

    private boolean isDamp() {
        return dampMs > DAMP_FOR.toMillis();
    }

    @Override
    public void pass(Span span, Optional<Zone> zone) {
        if (!span.isFloor() || span.air().isEmpty()) {
            return;
        }
        Air air = span.air().get();
        above3085 |= air.isWarmerThan(LIMIT_30_85) || air.isWetterThan(LIMIT_30_85);
        dampMs += air.humidity().isAbove(DAMP) ? span.lengthMs() : 0;
    }

    @Override
    public void breakRest() {
        // nothing rests where nothing runs
    }

    @Override
    public void join(RatingClock other) {
        LevelOneClock theirs = (LevelOneClock) other;
        wetted |= theirs.wetted;
        above3085 |= theirs.above3085;
        dampMs = Math.max(dampMs, theirs.dampMs);
    }

    @Override
    public boolean hasLifeLeft() {
        return isInside();
    }

    @Override
    public boolean isInside() {
        return true;
    }

    @Override
    public ClockReading read(Whereabouts where, long momentMs) {
        List<Fault> faults = new ArrayList<>();
        if (wetted) {
            faults.add(Fault.LEVEL_1_WETTED);
        }
        if (isDamp()) {
            faults.add(Fault.LEVEL_1_TOO_DAMP);
        }
        if (above3085) {
            faults.add(Fault.LEVEL_1_ABOVE_30_85);
        }
        if (sealedWet) {
            faults.add(Fault.SEALED_AFTER_FAILED_BAKE);
        }
        boolean baking = where.place() instanceof Place.Oven;
        return new ClockReading(
                Optional.empty(),
                Share.NONE,
                true,
                baking ? ClockState.BAKING : ClockState.NONE,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                run,
                List.of(),
                List.of(),
                faults);
    }
}
