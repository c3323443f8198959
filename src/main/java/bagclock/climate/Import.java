package bagclock.climate;

import bagclock.core.exposure.Zone;
import bagclock.core.exposure.ZoneLog.Reading;
import bagclock.desk.Desk;
import bagclock.readings.Kept;
import bagclock.readings.Source;
import bagclock.readings.ZoneReading;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.LongConsumer;

/** Imports a log into a zone, some thousand readings in each transaction, so that its size does not matter. */
final class Import {
    private static final int CHUNK = 20_000;
    private static final int MOST_REFUSED = 200;

    private final Desk desk;
    private final Zone zone;
    private final Source source;
    private final LongConsumer progress;
    private final List<ZoneReading> chunk = new ArrayList<>(CHUNK);
    private final List<Kept.BadLine> refused = new ArrayList<>();
    private long done;
    private int added;
    private int known;

    /** Reports how many samples are done, after each transaction. */
    Import(Desk desk, Zone zone, Source source, LongConsumer progress) {
        this.desk = desk;
        this.zone = zone;
        this.source = source;
        this.progress = progress;
    }

    /** What became of a log. */
    record Result(Kept kept, RoomLog.Found found) {}

    Result run(RoomLog log) {
        try {
            RoomLog.Found found = log.read(this::take);
            flush();
            return new Result(new Kept(added, known, refused), found);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private void take(long line, Reading reading) {
        chunk.add(new ZoneReading(zone, reading, line));
        if (chunk.size() == CHUNK) {
            flush();
        }
    }

    private void flush() {
        if (chunk.isEmpty()) {
            return;
        }
        done += chunk.size();
        Kept kept = desk.air().add(apart(chunk), source);
        added += kept.added();
        known += kept.known();
        kept.refused().stream().limit(MOST_REFUSED - (long) refused.size()).forEach(refused::add);
        chunk.clear();
        progress.accept(done);
    }

    /**
     * In order of time. Of two readings of one time with other values both are kept, the second a millisecond later: so
     * the warmer and the wetter of both count.
     */
    static List<ZoneReading> apart(List<ZoneReading> readings) {
        List<ZoneReading> apart = new ArrayList<>(readings);
        apart.sort(Comparator.comparing(reading -> reading.reading().at()));
        List<Reading> same = new ArrayList<>();
        for (int i = 0; i < apart.size(); i++) {
            ZoneReading one = apart.get(i);
            if (!same.isEmpty() && !same.get(0).at().equals(one.reading().at())) {
                same.clear();
            }
            long others = same.stream()
                    .map(Reading::air)
                    .takeWhile(air -> !air.equals(one.reading().air()))
                    .count();
            if (others == same.size()) {
                same.add(one.reading());
            }
            if (others > 0) {
                Reading later = new Reading(
                        one.reading().at().plusMillis(others), one.reading().air());
                apart.set(i, new ZoneReading(one.zone(), later, one.line()));
            }
        }
        return apart;
    }
}
