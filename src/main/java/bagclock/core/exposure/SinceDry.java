package bagclock.core.exposure;

import bagclock.core.exposure.Span.Kind;
import bagclock.core.exposure.TrailEntry.Where;
import bagclock.core.quantity.Celsius;
import bagclock.core.standard.Cited;
import bagclock.core.standard.Life;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * What a part went through since it was last dry, at one rating. Two readings of used life run side by side: the
 * strict one at the own life or less, and the lenient one that counts until the air leaves its condition.
 * Mutable, for one thread.
 */
final class SinceDry {
    private static final Duration COLUMN_MARGIN = Duration.ofHours(72);
    private static final Celsius TABLE_END = new Celsius(35);

    private final LifeRules lives;
    private final long excursionMs;

    private Usage strict = new Usage();
    private Usage lenient = new Usage();
    private Trail trail = new Trail();
    private OptionalLong strictSpentMs = OptionalLong.empty();
    private OptionalLong lenientSpentMs = OptionalLong.empty();
    private boolean leniently;
    private boolean over;
    private boolean above3060;
    private boolean exposed;
    private boolean onDeclared;
    private boolean onNothing;
    private long exposureMs;
    private Optional<Spell> spell = Optional.empty();

    SinceDry(LifeRules lives, Duration excursion) {
        this.lives = lives;
        this.excursionMs = excursion.toMillis();
        this.leniently = lives.lengthens();
    }

    /** How a span counts. */
    enum Counting {
        /** In open air. */
        FLOOR,
        /** The minutes of a heat out of bag or cabinet: at the rate of 30/60. */
        HEAT,
        /** Levels 4 to 5a, exposed, in bag or cabinet: at the rate of 30/60, no exposure. */
        RUNS_ON,
        /** Levels 4 to 5a, never exposed, at 5 to 10 %RH: at the 10 % cell. */
        TEN_PERCENT
    }

    /** A spell above 30 C / 60 %RH still short enough to be excused, and how things stood before it. */
    private static final class Spell {
        private final SinceDry before;
        private final List<Counted> parts = new ArrayList<>();
        private long lengthMs;
        private boolean refused;

        Spell(SinceDry before) {
            this.before = before;
        }

        Spell copy() {
            Spell copy = new Spell(before);
            copy.parts.addAll(parts);
            copy.lengthMs = lengthMs;
            copy.refused = refused;
            return copy;
        }
    }

    private record Counted(Span span, Counting counting, Optional<Zone> zone) {
        boolean isAbove3060() {
            if (counting == Counting.HEAT) {
                return false;
            } else if (span.air().isEmpty()) {
                return true;
            }
            Air air = span.air().get();
            return counting == Counting.FLOOR ? air.isAbove3060() : air.isWarmerThan(Air.LIMIT_30_60);
        }

        boolean isOutside35() {
            return span.air()
                    .filter(air -> air.temperature().isAbove(TABLE_END))
                    .isPresent();
        }
    }

    /** A copy to go on with; without the trail so far. */
    SinceDry forecast() {
        SinceDry copy = copyWithoutSpell();
        copy.trail = new Trail();
        copy.spell = spell.map(Spell::copy);
        return copy;
    }

    private void take(SinceDry other) {
        strict = other.strict.copy();
        lenient = other.lenient.copy();
        trail = other.trail.copy();
        strictSpentMs = other.strictSpentMs;
        lenientSpentMs = other.lenientSpentMs;
        leniently = other.leniently;
        over = other.over;
        above3060 = other.above3060;
        exposed = other.exposed;
        onDeclared = other.onDeclared;
        onNothing = other.onNothing;
        exposureMs = other.exposureMs;
    }

    void count(Span span, Counting counting, Optional<Zone> zone) {
        Counted counted = new Counted(span, counting, zone);
        if (excursionMs == 0 || !counted.isAbove3060()) {
            spell = Optional.empty();
            apply(counted, false);
        } else {
            inSpell(counted);
        }
    }

    /** Time that is not counted at all ends a spell. */
    void pass() {
        spell = Optional.empty();
    }

    private void inSpell(Counted counted) {
        Spell current = spell.orElseGet(() -> new Spell(copyWithoutSpell()));
        spell = Optional.of(current);
        current.parts.add(counted);
        current.lengthMs += counted.span().lengthMs();
        boolean tooMuch = current.lengthMs > excursionMs || counted.span().air().isEmpty();
        if (tooMuch && !current.refused) {
            current.refused = true;
            take(current.before);
            current.parts.forEach(part -> apply(part, false));
        } else {
            apply(counted, !current.refused);
        }
    }

    private SinceDry copyWithoutSpell() {
        SinceDry copy = new SinceDry(lives, Duration.ofMillis(excursionMs));
        copy.take(this);
        return copy;
    }

    private void apply(Counted counted, boolean excused) {
        Span span = counted.span();
        if (counted.counting() != Counting.RUNS_ON) {
            exposureMs += span.lengthMs();
        }
        exposed |= counted.counting() == Counting.HEAT;
        if (counted.counting() == Counting.FLOOR) {
            exposed = true;
            onDeclared |= span.basis() == Span.Basis.DECLARED;
            onNothing |= span.basis() == Span.Basis.UNKNOWN;
            leniently = leniently && lives.staysLenient(span.air(), span.basis());
        }
        above3060 |= counted.isAbove3060() && !excused;
        Optional<Cited<Life>> life = strictLife(counted, excused);
        if (life.isPresent()) {
            use(
                    counted,
                    life.get().value(),
                    lenientLife(counted).orElse(life.get().value()));
        } else {
            endLife(counted);
        }
    }

    private Optional<Cited<Life>> strictLife(Counted counted, boolean excused) {
        Optional<Cited<Life>> life = switch (counted.counting()) {
            case FLOOR -> counted.span().air().flatMap(lives::strict);
            case HEAT -> Optional.of(lives.own());
            case RUNS_ON -> counted.isOutside35() ? Optional.empty() : Optional.of(lives.own());
            case TEN_PERCENT -> lives.atTenPercent(counted.span().air());
        };
        return life.isEmpty() && excused ? Optional.of(lives.shortest()) : life;
    }

    private Optional<Life> lenientLife(Counted counted) {
        return leniently && counted.counting() == Counting.FLOOR
                ? counted.span().air().flatMap(lives::lenient).map(Cited::value)
                : Optional.empty();
    }

    private void use(Counted counted, Life strictLife, Life lenientLife) {
        Span span = counted.span();
        strictSpentMs = spend(strict, strictSpentMs, span, strictLife);
        lenientSpentMs = spend(lenient, lenientSpentMs, span, lenientLife);
        trail.add(line(counted, Optional.of(strictLife), Optional.of(lenientLife), Share.NONE, Share.NONE));
    }

    private static OptionalLong spend(Usage usage, OptionalLong spentMs, Span span, Life life) {
        OptionalLong now = usage.spend(span, life);
        return spentMs.isPresent() ? spentMs : now;
    }

    /** Outside the table: the life is over at once; more such time adds nothing. */
    private void endLife(Counted counted) {
        Share strictRaise = strict.raiseToWhole();
        Share lenientRaise = lenient.raiseToWhole();
        over = true;
        long now = counted.span().startMs();
        strictSpentMs = strictSpentMs.isPresent() ? strictSpentMs : OptionalLong.of(now);
        lenientSpentMs = lenientSpentMs.isPresent() ? lenientSpentMs : OptionalLong.of(now);
        trail.add(line(counted, Optional.empty(), Optional.empty(), strictRaise, lenientRaise));
    }

    private static Trail.Line line(
            Counted counted, Optional<Life> strict, Optional<Life> lenient, Share strictRaise, Share lenientRaise) {
        Span span = counted.span();
        Where where = span.isFloor() ? Where.FLOOR : span.kind() == Kind.PACK ? Where.BAG : Where.DRY_STORAGE;
        return new Trail.Line(
                span.startMs(),
                span.endMs(),
                where,
                counted.zone(),
                span.air(),
                strict,
                lenient,
                strictRaise,
                lenientRaise);
    }

    /** A bake that gave no credit: the stay counts as floor time at the rate of 30/60, the long column is not forced. */
    void countBakeWithoutCredit(long startMs, long endMs) {
        if (startMs == endMs) {
            return;
        }
        spell = Optional.empty();
        exposureMs += endMs - startMs;
        exposed = true;
        leniently = false;
        Life own = lives.own().value();
        Span stay = Span.floor(startMs, endMs, Optional.empty(), Span.Basis.UNKNOWN);
        strictSpentMs = spend(strict, strictSpentMs, stay, own);
        lenientSpentMs = spend(lenient, lenientSpentMs, stay, own);
        trail.add(new Trail.Line(
                startMs,
                endMs,
                Where.OVEN,
                Optional.empty(),
                Optional.empty(),
                Optional.of(own),
                Optional.of(own),
                Share.NONE,
                Share.NONE));
    }

    /** The worse of each value of two histories, at a join. */
    void worsenBy(SinceDry other) {
        spell = Optional.empty();
        boolean theirs = other.used().compareTo(used()) > 0;
        Trail worseTrail = theirs ? other.trail.copy() : trail;
        OptionalLong spent = theirs ? other.spentMs() : spentMs();
        Share used = used().max(other.used());
        strict.set(used);
        lenient.set(used);
        leniently = false;
        trail = worseTrail;
        strictSpentMs = spent;
        over |= other.over;
        above3060 |= other.above3060;
        exposed |= other.exposed;
        onDeclared |= other.onDeclared;
        onNothing |= other.onNothing;
        exposureMs = Math.max(exposureMs, other.exposureMs);
    }

    void markExposed() {
        exposed = true;
    }

    boolean isExposed() {
        return exposed;
    }

    boolean isInsideLife() {
        return !over && !(leniently ? lenient : strict).isPastWhole();
    }

    boolean isOver() {
        return over;
    }

    boolean restsOnDeclared() {
        return onDeclared;
    }

    boolean restsOnNothing() {
        return onNothing;
    }

    boolean isAbove3060() {
        return above3060;
    }

    /** Nothing used and no floor time: as dry as when it was closed or baked. */
    boolean isUntouched() {
        return exposureMs == 0 && !exposed && used().equals(Share.NONE);
    }

    long exposureMs() {
        return exposureMs;
    }

    Share used() {
        return (leniently ? lenient : strict).share();
    }

    OptionalLong spentMs() {
        return leniently ? lenientSpentMs : strictSpentMs;
    }

    List<TrailEntry> trail() {
        return trail.entries(leniently);
    }

    /**
     * All of it at or below 30/60, and either inside the life or past the shorter of the part's and the level's life
     * by 72 h of floor time or less.
     */
    boolean allowsShortColumn() {
        Share most = Share.of(Math.max(0, exposureMs - COLUMN_MARGIN.toMillis()), lives.lifeForColumn());
        return !above3060 && (isInsideLife() || !most.isAboveWhole());
    }
}
