package bagclock.core.exposure;

import bagclock.core.quantity.RelativeHumidity;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The readings of one zone, ascending in time; no two at the same time. Immutable. */
public final class ZoneLog {
    /** A zone without a logger. */
    public static final ZoneLog EMPTY = new ZoneLog(new long[0], new Air[0]);

    private final long[] atMs;
    private final Air[] airs;

    private ZoneLog(long[] atMs, Air[] airs) {
        this.atMs = atMs;
        this.airs = airs;
    }

    /** One reading of a logger. */
    public record Reading(Instant at, Air air) {}

    /** Readings in ascending order; refuses equal or descending times with {@link IllegalArgumentException}. */
    public static ZoneLog of(List<Reading> readings) {
        long[] times = new long[readings.size()];
        Air[] airs = new Air[readings.size()];
        for (int i = 0; i < times.length; i++) {
            times[i] = readings.get(i).at().toEpochMilli();
            airs[i] = readings.get(i).air();
            if (i > 0 && times[i] <= times[i - 1]) {
                throw new IllegalArgumentException(
                        "readings must ascend in time, at " + readings.get(i).at());
            }
        }
        return new ZoneLog(times, airs);
    }

    /** The readings up to and including a moment. */
    ZoneLog upTo(long momentMs) {
        int count = indexAtOrBefore(momentMs) + 1;
        return count == atMs.length ? this : new ZoneLog(Arrays.copyOf(atMs, count), Arrays.copyOf(airs, count));
    }

    /** The same readings, had the humidity never passed a limit. */
    public ZoneLog noWetterThan(RelativeHumidity limit) {
        Air[] drier = new Air[airs.length];
        for (int i = 0; i < airs.length; i++) {
            Air air = airs[i];
            drier[i] = air.humidity().isAbove(limit) ? new Air(air.temperature(), limit) : air;
        }
        return new ZoneLog(atMs, drier);
    }

    /** How many readings there are. */
    public int size() {
        return atMs.length;
    }

    /** When the last reading was taken; empty without readings. */
    public Optional<Instant> lastAt() {
        return atMs.length == 0 ? Optional.empty() : Optional.of(Instant.ofEpochMilli(atMs[atMs.length - 1]));
    }

    long atMs(int index) {
        return atMs[index];
    }

    Air air(int index) {
        return airs[index];
    }

    /** When the next reading came, or the end of time after the last. */
    long nextMs(int index) {
        return index + 1 < atMs.length ? atMs[index + 1] : Long.MAX_VALUE;
    }

    /** What counts between this reading and the next: the warmer and the wetter of both ends. */
    Air untilNext(int index) {
        return index + 1 < airs.length ? airs[index].harsherOf(airs[index + 1]) : airs[index];
    }

    /** Index of the last reading at or before a moment, -1 if there is none. */
    int indexAtOrBefore(long momentMs) {
        int found = Arrays.binarySearch(atMs, momentMs);
        return found >= 0 ? found : -found - 2;
    }

    /** The highest temperature and the highest humidity read since a moment, each by itself. */
    Optional<Air> harshestSince(long fromMs) {
        int first = indexAtOrBefore(fromMs - 1) + 1;
        Optional<Air> harshest = Optional.empty();
        for (int i = first; i < airs.length; i++) {
            Air air = airs[i];
            harshest = Optional.of(harshest.map(air::harsherOf).orElse(air));
        }
        return harshest;
    }
}
