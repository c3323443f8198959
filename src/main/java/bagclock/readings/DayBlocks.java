package bagclock.readings;

import bagclock.core.exposure.ZoneLog.Reading;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** Counts the time between readings by UTC day and cell, as the core counts it: the harsher of both ends holds. */
final class DayBlocks {
    private static final long DAY_MS = Duration.ofDays(1).toMillis();

    private final long gapMs;
    private final long fromMs;
    private final long toMs;
    private final SortedMap<Integer, long[]> days = new TreeMap<>();
    private int lastDay = Integer.MIN_VALUE;
    private long[] lastCounters = {};

    private DayBlocks(Duration gap, Instant from, Instant to) {
        this.gapMs = gap.toMillis();
        this.fromMs = from.toEpochMilli();
        this.toMs = to.toEpochMilli();
    }

    /**
     * Time from a moment until before another, as far as it lies between the first and the last of the readings.
     *
     * @param readings ascending
     * @param gap how long a reading holds
     */
    static SortedMap<Integer, AirTime> of(List<Reading> readings, Duration gap, Instant from, Instant to) {
        DayBlocks blocks = new DayBlocks(gap, from, to);
        for (int i = 0; i + 1 < readings.size(); i++) {
            blocks.between(readings.get(i), readings.get(i + 1));
        }
        SortedMap<Integer, AirTime> days = new TreeMap<>();
        blocks.days.forEach((day, ms) -> days.put(day, AirTime.of(ms)));
        return days;
    }

    private void between(Reading one, Reading next) {
        long startMs = one.at().toEpochMilli();
        long endMs = next.at().toEpochMilli();
        long holdsUntil = Math.min(endMs, startMs + gapMs);
        count(startMs, holdsUntil, AirTime.counterOf(one.air().harsherOf(next.air())));
        count(holdsUntil, endMs, AirTime.UNREAD);
    }

    private void count(long startMs, long endMs, int counter) {
        long cursor = Math.max(startMs, fromMs);
        long end = Math.min(endMs, toMs);
        while (cursor < end) {
            int day = dayOf(cursor);
            long until = Math.min(end, (day + 1) * DAY_MS);
            countersOf(day)[counter] += until - cursor;
            cursor = until;
        }
    }

    private long[] countersOf(int day) {
        if (day != lastDay) {
            lastDay = day;
            lastCounters = days.computeIfAbsent(day, none -> new long[AirTime.COUNTERS]);
        }
        return lastCounters;
    }

    static int dayOf(long momentMs) {
        return Math.toIntExact(Math.floorDiv(momentMs, DAY_MS));
    }

    static int dayOf(Instant moment) {
        return dayOf(moment.toEpochMilli());
    }

    static Instant startOf(int day) {
        return Instant.ofEpochMilli(day * DAY_MS);
    }
}
