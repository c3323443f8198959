package bagclock.core.exposure;

import bagclock.core.exposure.Span.Basis;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The air of one floor zone as it counts: readings while they hold, the declared worst case where none does, and after
 * the moment asked about the harsher of the last reading and the worst case.
 */
final class FloorAir {
    /** A declared worst case milder than the log of this long is replaced by the log's highest values. */
    private static final Duration LOOK_BACK = Duration.ofDays(90);

    private final ZoneLog log;
    private final Optional<Air> worstCase;
    private final long momentMs;
    private final long gapMs;

    FloorAir(ClimateLog climate, Optional<Zone> zone, SiteRules rules, long momentMs) {
        this.log = climate.log(zone).upTo(momentMs);
        this.momentMs = momentMs;
        this.gapMs = rules.maxReadingGap().toMillis();
        this.worstCase = climate.declaredFor(zone).map(this::noMilderThanLog);
    }

    private Air noMilderThanLog(Air declared) {
        return log.harshestSince(momentMs - LOOK_BACK.toMillis())
                .map(declared::harsherOf)
                .orElse(declared);
    }

    /** Spans without a hole from start to end, which may lie on either side of the moment. */
    List<Span> spans(long startMs, long endMs) {
        List<Span> spans = new ArrayList<>();
        past(spans, startMs, Math.min(endMs, momentMs));
        future(spans, Math.max(startMs, momentMs), endMs);
        return spans;
    }

    private void past(List<Span> spans, long startMs, long endMs) {
        int index = log.indexAtOrBefore(startMs);
        long cursor = startMs;
        while (cursor < endMs) {
            long next = Math.min(endMs, index < 0 ? firstReadingMs() : log.nextMs(index));
            cursor = index < 0 ? declared(spans, cursor, next) : reading(spans, index, cursor, next);
            index++;
        }
    }

    private long firstReadingMs() {
        return log.size() == 0 ? Long.MAX_VALUE : log.atMs(0);
    }

    private long reading(List<Span> spans, int index, long startMs, long endMs) {
        long holdsUntil = Math.max(startMs, Math.min(endMs, log.atMs(index) + gapMs));
        add(spans, startMs, holdsUntil, Optional.of(log.untilNext(index)), Basis.READ);
        return declared(spans, holdsUntil, endMs);
    }

    private long declared(List<Span> spans, long startMs, long endMs) {
        add(spans, startMs, endMs, worstCase, worstCase.isPresent() ? Basis.DECLARED : Basis.UNKNOWN);
        return endMs;
    }

    private void future(List<Span> spans, long startMs, long endMs) {
        if (log.size() == 0) {
            declared(spans, startMs, endMs);
            return;
        }
        Air last = log.air(log.size() - 1);
        if (worstCase.isPresent()) {
            add(spans, startMs, endMs, worstCase.map(last::harsherOf), Basis.READ);
            return;
        }
        long holdsUntil = Math.max(startMs, Math.min(endMs, log.atMs(log.size() - 1) + gapMs));
        add(spans, startMs, holdsUntil, Optional.of(last), Basis.READ);
        declared(spans, holdsUntil, endMs);
    }

    private static void add(List<Span> spans, long startMs, long endMs, Optional<Air> air, Basis basis) {
        if (startMs < endMs) {
            spans.add(Span.floor(startMs, endMs, air, basis));
        }
    }
}
