package bagclock.core.exposure;

import bagclock.core.exposure.Place.CabinetClass;
import bagclock.core.exposure.Span.Basis;
import bagclock.core.exposure.Span.Kind;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * One stay in a logged cabinet, judged by its readings: dry while inside the class, floor time in a longer excursion,
 * the room's climate where no reading holds.
 */
final class CabinetAir {
    /** A shorter excursion is the recovery that the standard allows (J-STD-033D, dry cabinet clauses). */
    private static final long RECOVERY_MS = Duration.ofHours(1).toMillis();

    private final CabinetClass limit;
    private final ZoneLog log;
    private final FloorAir room;
    private final long momentMs;
    private final long gapMs;
    private final long startMs;
    private final long endMs;
    private final List<Span> spans = new ArrayList<>();

    private List<Span> excursion = new ArrayList<>();
    private OptionalLong excursionStart = OptionalLong.empty();
    private OptionalLong lastExcursionEnd = OptionalLong.empty();

    private CabinetAir(Stay stay, long startMs, long endMs) {
        this.limit = stay.limit;
        this.log = stay.log;
        this.room = stay.room;
        this.momentMs = stay.momentMs;
        this.gapMs = stay.gapMs;
        this.startMs = startMs;
        this.endMs = endMs;
    }

    /** What does not change with the ends of the stay. */
    record Stay(CabinetClass limit, ZoneLog log, FloorAir room, long momentMs, long gapMs) {
        static Stay of(CabinetClass limit, Optional<Zone> zone, ClimateLog climate, SiteRules rules, long momentMs) {
            return new Stay(
                    limit,
                    climate.log(zone).upTo(momentMs),
                    new FloorAir(climate, Optional.empty(), rules, momentMs),
                    momentMs,
                    rules.maxReadingGap().toMillis());
        }

        /** Spans without a hole from start to end, which may lie on either side of the moment. */
        List<Span> spans(long startMs, long endMs) {
            return new CabinetAir(this, startMs, endMs).walk();
        }

        /** The cabinet is outside its class by its last reading: what follows may change what was. */
        boolean isInExcursion() {
            return log.size() > 0 && isAbove(log.air(log.size() - 1));
        }

        boolean isAbove(Air air) {
            return air.humidity().isAbove(limit.limit());
        }
    }

    private List<Span> walk() {
        int index = log.indexAtOrBefore(startMs);
        long cursor = startMs;
        if (index < 0) {
            cursor = Math.min(endMs, log.size() == 0 ? Long.MAX_VALUE : log.atMs(0));
            room(startMs, cursor);
            index = 0;
        }
        for (; cursor < endMs; index++) {
            long next = Math.min(endMs, log.nextMs(index));
            enter(index);
            reading(index, cursor, next);
            cursor = next;
        }
        endExcursion(nextInsideMs());
        return spans;
    }

    /** An excursion is measured to the next reading inside, also where the part left before. */
    private long nextInsideMs() {
        for (int i = log.indexAtOrBefore(endMs) + 1; i < log.size(); i++) {
            if (!isAbove(log.air(i))) {
                return log.atMs(i);
            }
        }
        return Math.max(endMs, momentMs);
    }

    private void enter(int index) {
        boolean above = isAbove(log.air(index));
        if (above && excursionStart.isEmpty()) {
            excursionStart = OptionalLong.of(log.atMs(firstAbove(index)));
        } else if (!above) {
            endExcursion(log.atMs(index));
        }
    }

    /** An excursion that was under way when the part came in is measured from its own first reading. */
    private int firstAbove(int index) {
        int first = index;
        while (log.atMs(index) <= startMs && first > 0 && isAbove(log.air(first - 1))) {
            first--;
        }
        return first;
    }

    private void reading(int index, long fromMs, long toMs) {
        boolean last = index == log.size() - 1;
        boolean holdsAtMoment = last && log.atMs(index) + gapMs > momentMs;
        long holdsUntil = holdsAtMoment ? toMs : Math.max(fromMs, Math.min(toMs, log.atMs(index) + gapMs));
        if (fromMs < holdsUntil) {
            Kind kind = limit == CabinetClass.UP_TO_5 ? Kind.DRY_5 : Kind.DRY_10;
            Span span = new Span(fromMs, holdsUntil, kind, Optional.of(log.untilNext(index)), Basis.READ, false);
            (excursionStart.isPresent() ? excursion : spans).add(span);
        }
        if (holdsUntil < toMs) {
            room(holdsUntil, toMs);
        }
    }

    private void room(long fromMs, long toMs) {
        for (Span span : room.spans(fromMs, toMs)) {
            (excursionStart.isPresent() ? excursion : spans).add(span.breakingRest());
        }
    }

    private void endExcursion(long atMs) {
        if (excursionStart.isEmpty()) {
            return;
        }
        long begin = excursionStart.getAsLong();
        boolean tooSoon = lastExcursionEnd.isPresent() && begin - lastExcursionEnd.getAsLong() < RECOVERY_MS;
        boolean granted = atMs - begin <= RECOVERY_MS && !tooSoon;
        for (Span span : excursion) {
            spans.add(granted || span.isFloor() ? span : counted(span));
        }
        excursion = new ArrayList<>();
        excursionStart = OptionalLong.empty();
        lastExcursionEnd = OptionalLong.of(atMs);
    }

    /** Above 10 %RH floor time at what was read; 5 to 10 %RH in the drier class a stay of the wetter class. */
    private Span counted(Span span) {
        boolean floor = span.air()
                .filter(air -> air.humidity().isAbove(CabinetClass.UP_TO_10.limit()))
                .isPresent();
        Kind kind = floor ? Kind.FLOOR : Kind.DRY_10;
        return new Span(span.startMs(), span.endMs(), kind, span.air(), span.basis(), true);
    }

    private boolean isAbove(Air air) {
        return air.humidity().isAbove(limit.limit());
    }
}
