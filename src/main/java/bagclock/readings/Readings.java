package bagclock.readings;

import bagclock.core.Reason;
import bagclock.core.Refusal;
import bagclock.core.exposure.Zone;
import bagclock.core.exposure.ZoneLog;
import bagclock.core.exposure.ZoneLog.Reading;
import bagclock.platform.Transaction;
import bagclock.readings.Kept.BadLine;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The readings of all zones. A reading is never changed; the same one twice is one. */
public final class Readings {
    private final ReadingStore store = new ReadingStore();

    /** Keeps the good ones of a list; refused are the future and a second reading of one time with other values. */
    public Kept add(Transaction tx, List<ZoneReading> readings, Source source) {
        Map<Zone, TreeMap<Instant, ZoneReading>> fresh = new HashMap<>();
        List<BadLine> bad = new ArrayList<>();
        int known = 0;
        Map<Zone, Map<Instant, Reading>> there = there(tx, readings);
        for (ZoneReading reading : readings) {
            Map<Instant, Reading> kept = there.getOrDefault(reading.zone(), Map.of());
            Reading before = kept.get(reading.reading().at());
            if (reading.reading().at().isAfter(source.recordedAt())) {
                bad.add(bad(
                        reading, Reason.HAPPENED_IN_FUTURE, reading.reading().at(), source.recordedAt()));
            } else if (before == null) {
                kept.put(reading.reading().at(), reading.reading());
                fresh.computeIfAbsent(reading.zone(), zone -> new TreeMap<>())
                        .put(reading.reading().at(), reading);
            } else if (before.equals(reading.reading())) {
                known++;
            } else {
                bad.add(bad(reading, Reason.READING_DIFFERS, reading.reading().at()));
            }
        }
        int added = 0;
        for (var zone : fresh.entrySet()) {
            List<Reading> list =
                    zone.getValue().values().stream().map(ZoneReading::reading).toList();
            store.add(tx, zone.getKey(), list, source);
            added += list.size();
        }
        return new Kept(added, known, bad);
    }

    private static BadLine bad(ZoneReading reading, Reason reason, Object... parts) {
        return new BadLine(reading.line(), "time", Refusal.of(reason, parts));
    }

    private Map<Zone, Map<Instant, Reading>> there(Transaction tx, List<ZoneReading> readings) {
        Map<Zone, List<Instant>> times = new HashMap<>();
        readings.forEach(reading -> times.computeIfAbsent(reading.zone(), zone -> new ArrayList<>())
                .add(reading.reading().at()));
        Map<Zone, Map<Instant, Reading>> there = new HashMap<>();
        times.forEach((zone, all) -> {
            Map<Instant, Reading> kept = new HashMap<>();
            Instant first = all.stream().min(Instant::compareTo).orElseThrow();
            Instant last = all.stream().max(Instant::compareTo).orElseThrow();
            store.between(tx, zone, first, last).forEach(reading -> kept.put(reading.at(), reading));
            there.put(zone, kept);
        });
        return there;
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
}
