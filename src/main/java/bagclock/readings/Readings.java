package bagclock.readings;

import bagclock.core.Reason;
import bagclock.core.Refusal;
import bagclock.core.exposure.Air;
import bagclock.core.exposure.Zone;
import bagclock.core.exposure.ZoneLog;
import bagclock.core.exposure.ZoneLog.Reading;
import bagclock.platform.Transaction;
import bagclock.readings.Kept.BadLine;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The readings of all zones, and a block of each day that adds them up. A reading is never changed; the same one twice
 * is one.
 */
public final class Readings {
    /** A clock that lost its date begins before it. */
    private static final Instant EARLIEST = Instant.parse("2000-01-01T00:00:00Z");

    /** So that years of readings are never held at once. */
    private static final int DAYS_AT_ONCE = 30;

    private final ReadingStore store = new ReadingStore();
    private final BlockStore blocks = new BlockStore();
    private final HourStore hours = new HourStore();

    /**
     * Keeps the good ones of a list; refused are the future, the time before 2000, and a second reading of one time with
     * other values. Only the blocks of the days that they touch are made anew.
     *
     * @param gap how long a reading holds
     */
    public Taken add(Transaction tx, List<ZoneReading> readings, Source source, Duration gap) {
        Map<Zone, TreeMap<Instant, Reading>> fresh = new HashMap<>();
        List<BadLine> bad = new ArrayList<>();
        readings.forEach(line -> impossible(line, source.recordedAt()).ifPresent(bad::add));
        List<ZoneReading> possible = readings.stream()
                .filter(line -> impossible(line, source.recordedAt()).isEmpty())
                .toList();
        Map<Zone, Map<Instant, Reading>> there = there(tx, possible);
        int known = 0;
        for (ZoneReading line : possible) {
            Reading reading = line.reading();
            Optional<Reading> before = Optional.ofNullable(
                    there.getOrDefault(line.zone(), Map.of()).get(reading.at()));
            if (before.isEmpty()) {
                there.computeIfAbsent(line.zone(), zone -> new HashMap<>()).put(reading.at(), reading);
                fresh.computeIfAbsent(line.zone(), zone -> new TreeMap<>()).put(reading.at(), reading);
            } else if (before.get().equals(reading)) {
                known++;
            } else {
                bad.add(bad(line, Reason.READING_DIFFERS, reading.at()));
            }
        }
        List<ZoneChange> changes = fresh.entrySet().stream()
                .map(zone ->
                        write(tx, zone.getKey(), List.copyOf(zone.getValue().values()), source, gap))
                .toList();
        int added = changes.stream().mapToInt(change -> change.added().size()).sum();
        bad.sort(Comparator.comparingLong(BadLine::line));
        return new Taken(new Kept(added, known, bad), changes);
    }

    /** What no reading can be; no database is asked about such times. */
    private static Optional<BadLine> impossible(ZoneReading line, Instant recordedAt) {
        Instant at = line.reading().at();
        if (at.isBefore(EARLIEST)) {
            return Optional.of(bad(line, Reason.READING_TOO_OLD, at));
        }
        return at.isAfter(recordedAt)
                ? Optional.of(bad(line, Reason.HAPPENED_IN_FUTURE, at, recordedAt))
                : Optional.empty();
    }

    private static BadLine bad(ZoneReading reading, Reason reason, Object... parts) {
        return new BadLine(reading.line(), "time", Refusal.of(reason, parts));
    }

    private Map<Zone, Map<Instant, Reading>> there(Transaction tx, List<ZoneReading> readings) {
        Map<Zone, Set<Instant>> times = new HashMap<>();
        readings.forEach(reading -> times.computeIfAbsent(reading.zone(), zone -> new HashSet<>())
                .add(reading.reading().at()));
        Map<Zone, Map<Instant, Reading>> there = new HashMap<>();
        times.forEach((zone, all) -> there.put(zone, store.at(tx, zone, all)));
        return there;
    }

    private ZoneChange write(Transaction tx, Zone zone, List<Reading> fresh, Source source, Duration gap) {
        Instant first = fresh.get(0).at();
        Instant last = fresh.get(fresh.size() - 1).at();
        Optional<Reading> before = store.latest(tx, zone, first.minusMillis(1));
        Optional<Reading> after = store.next(tx, zone, last);
        store.add(tx, zone, fresh, source);
        int days = 0;
        int done = Integer.MIN_VALUE;
        for (List<Reading> run : runs(fresh)) {
            Instant start = run.get(0).at();
            Instant end = run.get(run.size() - 1).at();
            int firstDay = DayBlocks.dayOf(store.latest(tx, zone, start.minusMillis(1))
                    .map(Reading::at)
                    .orElse(start));
            int lastDay =
                    DayBlocks.dayOf(store.next(tx, zone, end).map(Reading::at).orElse(end));
            firstDay = Math.max(firstDay, done + 1);
            if (firstDay <= lastDay) {
                rebuild(tx, zone, firstDay, lastDay, gap);
                days += lastDay - firstDay + 1;
                done = lastDay;
            }
        }
        return new ZoneChange(zone, before, fresh, after, days);
    }

    /** Readings of days that follow each other. */
    private static List<List<Reading>> runs(List<Reading> readings) {
        List<List<Reading>> runs = new ArrayList<>();
        int lastDay = Integer.MIN_VALUE;
        for (Reading reading : readings) {
            int day = DayBlocks.dayOf(reading.at());
            if (runs.isEmpty() || day > lastDay + 1) {
                runs.add(new ArrayList<>());
            }
            runs.get(runs.size() - 1).add(reading);
            lastDay = day;
        }
        return runs;
    }

    private void rebuild(Transaction tx, Zone zone, int firstDay, int lastDay, Duration gap) {
        for (int day = firstDay; day <= lastDay; day += DAYS_AT_ONCE) {
            rebuildSome(tx, zone, day, Math.min(lastDay, day + DAYS_AT_ONCE - 1), gap);
        }
    }

    private void rebuildSome(Transaction tx, Zone zone, int firstDay, int lastDay, Duration gap) {
        Instant from = DayBlocks.startOf(firstDay);
        Instant to = DayBlocks.startOf(lastDay + 1);
        List<Reading> around = around(tx, zone, from, to);
        blocks.replace(tx, zone, firstDay, lastDay, DayBlocks.of(around, gap, from, to));
        hours.replace(tx, zone, from, to, HourBand.of(around, from, to));
    }

    /** The readings of a span, with the last one before and the first one after it. */
    private List<Reading> around(Transaction tx, Zone zone, Instant from, Instant to) {
        Instant start = store.latest(tx, zone, from).map(Reading::at).orElse(from);
        Instant end = store.next(tx, zone, to).map(Reading::at).orElse(to);
        return store.between(tx, zone, start, end);
    }

    /** Takes back what a file brought, and makes the blocks of its days anew; says how many readings it was. */
    public long takeBack(Transaction tx, TakenBack file, Duration gap) {
        long count = store.takeBack(tx, file);
        Instant before =
                store.latest(tx, file.zone(), file.first()).map(Reading::at).orElse(file.first());
        Instant after =
                store.next(tx, file.zone(), file.last()).map(Reading::at).orElse(file.last());
        rebuild(tx, file.zone(), DayBlocks.dayOf(before), DayBlocks.dayOf(after), gap);
        return count;
    }

    /** The bands of the hours of a span, ascending; hours without readings have none. */
    public List<HourBand> hours(Transaction tx, Zone zone, Instant from, Instant to) {
        return hours.between(tx, zone, from, to);
    }

    /** Makes every block of a zone anew, after the site changed how long a reading holds. */
    public void rebuild(Transaction tx, Zone zone, Duration gap) {
        Optional<Reading> first = store.next(tx, zone, Instant.EPOCH);
        Optional<Reading> last = latest(tx, zone);
        if (first.isPresent() && last.isPresent()) {
            rebuild(
                    tx,
                    zone,
                    DayBlocks.dayOf(first.get().at()),
                    DayBlocks.dayOf(last.get().at()),
                    gap);
        }
    }

    /**
     * How much time the zone spent in which air, from its first reading to a moment or to its last reading, whichever is
     * earlier; a moment before the first reading counts as unread time below 0. None without readings.
     */
    public AirTime airTime(Transaction tx, Zone zone, Instant moment, Duration gap) {
        Optional<Reading> first = store.next(tx, zone, Instant.EPOCH);
        if (first.isEmpty()) {
            return AirTime.NONE;
        }
        long earlyMs = Duration.between(moment, first.get().at()).toMillis();
        if (earlyMs > 0) {
            return AirTime.NONE.plus(AirTime.UNREAD, -earlyMs);
        }
        int day = DayBlocks.dayOf(moment);
        Instant from = DayBlocks.startOf(day);
        AirTime today =
                DayBlocks.of(around(tx, zone, from, moment), gap, from, moment).getOrDefault(day, AirTime.NONE);
        return blocks.before(tx, zone, day).plus(today);
    }

    /** The day blocks of a zone, by days since 1970 (UTC), both ends included. */
    public SortedMap<Integer, AirTime> days(Transaction tx, Zone zone, int firstDay, int lastDay) {
        return blocks.days(tx, zone, firstDay, lastDay);
    }

    /** The readings of a zone from a moment up to and including another, ascending. */
    public List<Reading> between(Transaction tx, Zone zone, Instant fromInclusive, Instant toInclusive) {
        return store.between(tx, zone, fromInclusive, toInclusive);
    }

    /** The same as a log. */
    public ZoneLog log(Transaction tx, Zone zone, Instant fromInclusive, Instant toInclusive) {
        return ZoneLog.of(between(tx, zone, fromInclusive, toInclusive));
    }

    /** The newest reading at or before a moment. */
    public Optional<Reading> latest(Transaction tx, Zone zone, Instant moment) {
        return store.latest(tx, zone, moment);
    }

    /** The newest reading of all. */
    public Optional<Reading> latest(Transaction tx, Zone zone) {
        return store.newest(tx, zone);
    }

    /** The highest temperature and the highest humidity of a period, each by itself, both ends included. */
    public Optional<Air> harshest(Transaction tx, Zone zone, Instant fromInclusive, Instant toInclusive) {
        return store.harshest(tx, zone, fromInclusive, toInclusive);
    }
}
