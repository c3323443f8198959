package bagclock.logfile;

import bagclock.logfile.LogReport.Gap;
import bagclock.logfile.LogReport.Span;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Keeps the times of all samples, eight bytes each, and says how they follow each other. */
final class TimesSeen {
    private static final Duration SHORTEST_GAP = Duration.ofMinutes(15);

    /** Only changes are written, so a shorter silence says nothing. */
    private static final Duration SHORTEST_GAP_OF_CHANGES = Duration.ofHours(1);

    private static final int GAP_STEPS = 3;
    private static final int MOST_GAPS = 20;

    private final long shortestGapMs;
    private long[] times = new long[1024];
    private int count;
    private long backwards;
    private long forwards;

    TimesSeen(boolean changesOnly) {
        this.shortestGapMs = (changesOnly ? SHORTEST_GAP_OF_CHANGES : SHORTEST_GAP).toMillis();
    }

    void add(long ms) {
        if (count == times.length) {
            times = Arrays.copyOf(times, count + count / 2);
        }
        if (count > 0) {
            backwards += ms < times[count - 1] ? 1 : 0;
            forwards += ms > times[count - 1] ? 1 : 0;
        }
        times[count++] = ms;
    }

    /** A file with the newest first is in order too. */
    LogReport.Times report() {
        long disorder = Math.min(backwards, forwards);
        if (backwards > 0) {
            Arrays.sort(times, 0, count);
        }
        long step = step();
        long gapMs = Math.max(GAP_STEPS * step, shortestGapMs);
        List<Gap> gaps = new ArrayList<>();
        long repeated = 0;
        for (int i = 1; i < count; i++) {
            long apart = times[i] - times[i - 1];
            repeated += apart == 0 ? 1 : 0;
            if (apart > gapMs) {
                gaps.add(new Gap(Instant.ofEpochMilli(times[i - 1]), Instant.ofEpochMilli(times[i])));
            }
        }
        gaps.sort(Comparator.comparing(Gap::length).reversed());
        return new LogReport.Times(
                repeated,
                disorder,
                Duration.ofMillis(step),
                gaps.subList(0, Math.min(MOST_GAPS, gaps.size())),
                gaps.size());
    }

    /** The median of the times between two samples; samples at one time don't count. */
    private long step() {
        long[] steps = new long[Math.max(count - 1, 0)];
        int found = 0;
        for (int i = 1; i < count; i++) {
            if (times[i] > times[i - 1]) {
                steps[found++] = times[i] - times[i - 1];
            }
        }
        Arrays.sort(steps, 0, found);
        return found == 0 ? 0 : steps[(found - 1) / 2];
    }

    Optional<Span> span() {
        if (count == 0) {
            return Optional.empty();
        }
        long first = Arrays.stream(times, 0, count).min().orElseThrow();
        long last = Arrays.stream(times, 0, count).max().orElseThrow();
        return Optional.of(new Span(Instant.ofEpochMilli(first), Instant.ofEpochMilli(last)));
    }
}
