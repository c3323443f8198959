package bagclock.core.exposure;

import bagclock.core.exposure.ClockReading.Fault;
import bagclock.core.exposure.SinceDry.Counting;
import bagclock.core.exposure.Span.Kind;
import bagclock.core.exposure.UnknownHistory.Cause;
import bagclock.core.standard.BakeColumn;
import bagclock.core.standard.Level;
import bagclock.core.standard.Part;
import bagclock.core.standard.RestRule;
import bagclock.core.standard.Standard;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The floor life clock of levels 2 to 5a. Levels 2, 2a and 3 pause in dry storage; levels 4, 5 and 5a run on once they
 * were exposed; a short exposure followed by an unbroken dry rest resets both (J-STD-033D, table 4-3).
 */
final class FloorClock implements RatingClock {
    private final Part part;
    private final Level level;
    private final LifeRules lives;
    private final BakeNeed need;
    private final RestRule restRule;
    private final Duration excursion;

    private SinceDry since;
    private Usage dryStay = new Usage();
    private boolean dryStayOver;
    private boolean inTenPercentStay;
    private boolean restTried = true;
    private boolean bakeCounted;
    private boolean sealedWet;
    private final List<Instant> driedAt = new ArrayList<>();
    private Optional<Span> last = Optional.empty();
    private Optional<Rest> rest = Optional.empty();
    private Optional<UnknownHistory> unknown = Optional.empty();
    private Optional<ClockReading.Run> run = Optional.empty();
    private Optional<Instant> timerEnd = Optional.empty();

    private record Rest(long startMs, long endMs) {}

    FloorClock(Standard standard, Part part, Level level, SiteRules rules) {
        this.part = part;
        this.level = level;
        this.lives = new LifeRules(standard, part, level, rules);
        this.need = new BakeNeed(standard, part);
        this.restRule = standard.restRule(level);
        this.excursion = rules.excursion();
        this.since = new SinceDry(lives, excursion);
    }

    private FloorClock(FloorClock other) {
        part = other.part;
        level = other.level;
        lives = other.lives;
        need = other.need;
        restRule = other.restRule;
        excursion = other.excursion;
        since = other.since.forecast();
        dryStay = other.dryStay.copy();
        dryStayOver = other.dryStayOver;
        inTenPercentStay = other.inTenPercentStay;
        restTried = other.restTried;
        bakeCounted = other.bakeCounted;
        rest = other.rest;
        unknown = other.unknown;
        run = other.run;
        timerEnd = other.timerEnd;
    }

    @Override
    public FloorClock forecast() {
        return new FloorClock(this);
    }

    @Override
    public void on(Event event, Whereabouts before, Whereabouts after, boolean first) {
        breakRest();
        boolean afterCountedBake = bakeCounted;
        bakeCounted = false;
        if (first && !statesDryness(event)) {
            forget(Cause.UNKNOWN_EXPOSURE, event.at());
        }
        sealedWet |= event instanceof Event.Sealed && !first && !afterCountedBake;
        take(event, before, first);
        restTried = false;
        last = Optional.empty();
    }

    private void take(Event event, Whereabouts before, boolean first) {
        if (event instanceof Event.Opened opened) {
            open(opened, first || (before.place() instanceof Place.Bag bag && bag.byMaker()));
        } else if (event instanceof Event.UnknownExposure) {
            forget(Cause.UNKNOWN_EXPOSURE, event.at());
        } else if (event instanceof Event.Wetted) {
            forget(Cause.WETTED, event.at());
        } else if (event instanceof Event.BakeStarted bake) {
            run = Optional.of(new ClockReading.Run(bake, need.of(bake, level, column())));
        } else if (event instanceof Event.BakeEnded ended) {
            endBake(ended);
        }
    }

    private static boolean statesDryness(Event event) {
        return event instanceof Event.Sealed || event instanceof Event.Opened || event instanceof Event.ToFloor;
    }

    private void open(Event.Opened opened, boolean makersBag) {
        Optional<Cause> fault = CardRule.fault(opened, level);
        if (fault.isPresent()) {
            forget(fault.get(), opened.at());
        } else if (makersBag && unknown.isEmpty()) {
            becomeDry();
        }
    }

    private void forget(Cause cause, Instant at) {
        if (unknown.isEmpty()) {
            unknown = Optional.of(new UnknownHistory(cause, at));
        }
    }

    private void endBake(Event.BakeEnded ended) {
        ClockReading.Run ending = run.orElseThrow();
        run = Optional.empty();
        bakeCounted = ending.needed()
                .flatMap(needed -> ended.atTemperature().map(time -> time.compareTo(needed) >= 0))
                .orElse(false);
        if (bakeCounted) {
            driedAt.add(ended.at());
            becomeDry();
            unknown = Optional.empty();
            timerEnd = part.maker().useWithin().map(ended.at()::plus);
        } else {
            since.countBakeWithoutCredit(
                    ending.bake().at().toEpochMilli(), ended.at().toEpochMilli());
        }
    }

    private void becomeDry() {
        since = new SinceDry(lives, excursion);
        dryStay = new Usage();
        dryStayOver = false;
        rest = Optional.empty();
    }

    @Override
    public void pass(Span span, Optional<Zone> zone) {
        if (unknown.isPresent() || span.lengthMs() == 0) {
            return;
        }
        last = Optional.of(span);
        if (span.isFloor()) {
            breakRest();
            restTried = false;
            since.count(span, Counting.FLOOR, zone);
        } else if (level.isPausedByDryStorage()) {
            paused(span);
        } else {
            runningOn(span, zone);
        }
    }

    @Override
    public void heat(Span minutes, Optional<Zone> zone) {
        breakRest();
        since.count(minutes, Counting.HEAT, zone);
    }

    private void paused(Span span) {
        tryRest(span.startMs());
        if (rest.isPresent() && rest.get().endMs() <= span.endMs()) {
            long resetMs = rest.get().endMs();
            stay(span.until(resetMs));
            if (!dryStayOver) {
                becomeDry();
            }
            rest = Optional.empty();
            stay(span.from(resetMs));
        } else {
            stay(span);
        }
    }

    /** The clock stands still; at 5 to 10 %RH for no longer than the 10 % cell. */
    private void stay(Span span) {
        since.pass();
        if (span.kind() != Kind.DRY_10 || span.lengthMs() == 0 || dryStayOver) {
            return;
        }
        var cell = lives.atTenPercent(span.air());
        cell.ifPresent(life -> dryStay.spend(span, life.value()));
        dryStayOver = cell.isEmpty() || dryStay.isPastWhole();
    }

    private void runningOn(Span span, Optional<Zone> zone) {
        if (span.kind() == Kind.DRY_10) {
            rest = Optional.empty();
            restTried = false;
            if (!since.isExposed()) {
                inTenPercentStay = true;
            }
            since.count(span, inTenPercentStay ? Counting.TEN_PERCENT : Counting.RUNS_ON, zone);
            return;
        }
        endTenPercentStay();
        tryRest(span.startMs());
        if (rest.isPresent() && rest.get().endMs() <= span.endMs()) {
            long resetMs = rest.get().endMs();
            runOn(span.until(resetMs), zone);
            if (!since.isAbove3060()) {
                becomeDry();
            }
            rest = Optional.empty();
            runOn(span.from(resetMs), zone);
        } else {
            runOn(span, zone);
        }
    }

    private void runOn(Span span, Optional<Zone> zone) {
        if (span.lengthMs() > 0 && since.isExposed()) {
            since.count(span, Counting.RUNS_ON, zone);
        } else {
            since.pass();
        }
    }

    /** Once for each unbroken stretch: inside its life, short exposure, at or below 30/60. */
    private void tryRest(long startMs) {
        if (restTried) {
            return;
        }
        restTried = true;
        long exposureMs = since.exposureMs();
        boolean shortEnough =
                exposureMs > 0 && exposureMs <= restRule.maxExposure().toMillis();
        if (shortEnough && since.isInsideLife() && !since.isAbove3060() && !dryStayOver) {
            rest = Optional.of(new Rest(startMs, startMs + restRule.factor() * exposureMs));
        }
    }

    @Override
    public void breakRest() {
        rest = Optional.empty();
        endTenPercentStay();
    }

    private void endTenPercentStay() {
        if (inTenPercentStay) {
            inTenPercentStay = false;
            since.markExposed();
        }
    }

    @Override
    public void look(Span now) {
        last = Optional.of(now);
        boolean restful = !now.isFloor() && (level.isPausedByDryStorage() || now.kind() != Kind.DRY_10);
        if (restful && unknown.isEmpty()) {
            tryRest(now.startMs());
        }
    }

    @Override
    public void join(RatingClock other) {
        FloorClock theirs = (FloorClock) other;
        since.worsenBy(theirs.since);
        dryStay.set(dryStay.share().max(theirs.dryStay.share()));
        dryStayOver |= theirs.dryStayOver;
        unknown = unknown.or(() -> theirs.unknown);
        timerEnd = earlier(timerEnd, theirs.timerEnd);
        breakRest();
    }

    private static Optional<Instant> earlier(Optional<Instant> one, Optional<Instant> other) {
        return one.isPresent() && other.isPresent() && other.get().isBefore(one.get()) ? other : one.or(() -> other);
    }

    @Override
    public boolean hasLifeLeft() {
        return unknown.isEmpty() && since.isInsideLife();
    }

    @Override
    public boolean isInside() {
        return hasLifeLeft() && !dryStayOver;
    }

    private BakeColumn column() {
        boolean within = unknown.isEmpty() && !dryStayOver && since.allowsShortColumn();
        return within ? BakeColumn.WITHIN_72H : BakeColumn.OVER_72H;
    }

    @Override
    public ClockReading read(Whereabouts where, long momentMs) {
        run.ifPresent(
                running -> since.countBakeWithoutCredit(running.bake().at().toEpochMilli(), momentMs));
        Instant moment = Instant.ofEpochMilli(momentMs);
        return new ClockReading(
                Optional.of(lives.own()),
                unknown.isPresent() ? Share.WHOLE : since.used(),
                isInside(),
                state(where),
                Optional.of(column()),
                unknown,
                unknown.isPresent() || since.spentMs().isEmpty()
                        ? Optional.empty()
                        : Optional.of(Instant.ofEpochMilli(since.spentMs().getAsLong())),
                timerEnd,
                restEnd(),
                run,
                List.copyOf(driedAt),
                unknown.map(u -> unknownTrail(u, moment)).orElseGet(since::trail),
                faults());
    }

    private Optional<Instant> restEnd() {
        return since.isAbove3060() ? Optional.empty() : rest.map(r -> Instant.ofEpochMilli(r.endMs()));
    }

    private static List<TrailEntry> unknownTrail(UnknownHistory unknown, Instant moment) {
        return List.of(new TrailEntry(
                unknown.at(),
                moment,
                TrailEntry.Where.UNKNOWN,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Share.WHOLE));
    }

    private List<Fault> faults() {
        List<Fault> faults = new ArrayList<>();
        if (dryStayOver) {
            faults.add(Fault.DRY_STAY_TOO_LONG);
        } else if (since.isOver()) {
            faults.add(Fault.OUTSIDE_TABLE);
        }
        if (since.isAbove3060()) {
            faults.add(Fault.ABOVE_30_60);
        }
        if (since.restsOnDeclared()) {
            faults.add(Fault.AIR_DECLARED);
        }
        if (since.restsOnNothing()) {
            faults.add(Fault.AIR_UNKNOWN);
        }
        if (sealedWet) {
            faults.add(Fault.SEALED_AFTER_FAILED_BAKE);
        }
        return faults;
    }

    private ClockState state(Whereabouts where) {
        if (where.place() instanceof Place.Oven) {
            return ClockState.BAKING;
        } else if (timerEnd.isPresent() || unknown.isPresent()) {
            return ClockState.RUNNING;
        } else if (restEnd().isPresent()) {
            return ClockState.RESTING;
        }
        return stateByPlace(where.place());
    }

    private ClockState stateByPlace(Place place) {
        boolean dryPack = place instanceof Place.Bag bag && bag.dryPack();
        if (dryPack && since.isUntouched()) {
            return ClockState.SEALED;
        }
        boolean dry = dryPack || place instanceof Place.Cabinet;
        return dry && !isUsing(place) ? ClockState.PAUSED : ClockState.RUNNING;
    }

    /** In dry storage: whether time is being used all the same. */
    private boolean isUsing(Place place) {
        if (last.filter(Span::isFloor).isPresent()) {
            return true;
        } else if (level.isPausedByDryStorage()) {
            return false;
        } else if (since.isExposed()) {
            return true;
        }
        boolean tenPercent = last.map(span -> span.kind() == Kind.DRY_10)
                .orElse(place instanceof Place.Cabinet cabinet && cabinet.limit() == Place.CabinetClass.UP_TO_10);
        return tenPercent
                && lives.atTenPercent(last.flatMap(Span::air))
                        .filter(cell -> cell.value().isUnlimited())
                        .isEmpty();
    }
}
