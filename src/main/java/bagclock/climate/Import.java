package bagclock.climate;

import bagclock.core.exposure.Zone;
import bagclock.core.exposure.ZoneLog.Reading;
import bagclock.readings.FileEvent;
import bagclock.readings.Kept;
import bagclock.readings.ZoneReading;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.LongConsumer;

/** Imports a log into a zone, some thousand readings in each transaction, so that its size does not matter. */
final class Import {
    private static final int CHUNK = 20_000;
    private static final int MOST_REFUSED = 200;

    private final Keeper keeper;
    private final Zone zone;
    private final LongConsumer progress;
    private final List<ZoneReading> chunk = new ArrayList<>(CHUNK);
    private final List<Kept.BadLine> refused = new ArrayList<>();
    private long done;
    private long added;
    private long known;
    private long refusedInAll;
    private boolean stopped;

    /** Keeps some readings; empty, with nothing kept, once the import is to stop. */
    interface Keeper {
        Optional<Kept> keep(List<ZoneReading> readings);
    }

    /** Reports how many samples are done, after each transaction. */
    Import(Keeper keeper, Zone zone, LongConsumer progress) {
        this.keeper = keeper;
        this.zone = zone;
        this.progress = progress;
    }

    /**
     * What became of a log.
     *
     * @param refused the first of them
     */
    record Result(FileEvent.Counts counts, List<Kept.BadLine> refused, RoomLog.Found found) {}

    /** Empty if it was stopped: the file was taken back. */
    Optional<Result> run(RoomLog log) {
        try {
            RoomLog.Found found = log.read(this::take);
            flush();
            return stopped ? Optional.empty() : Optional.of(result(found));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private Result result(RoomLog.Found found) {
        return new Result(new FileEvent.Counts(added, known, refusedInAll), refused, found);
    }

    private void take(long line, Reading reading) {
        if (stopped) {
            return;
        }
        chunk.add(new ZoneReading(zone, reading, line));
        if (chunk.size() == CHUNK) {
            flush();
        }
    }

    private void flush() {
        if (chunk.isEmpty()) {
            return;
        }
        Optional<Kept> kept = keeper.keep(apart(chunk));
        stopped = kept.isEmpty();
        kept.ifPresent(this::count);
        chunk.clear();
    }

    private void count(Kept kept) {
        done += chunk.size();
        added += kept.added();
        known += kept.known();
        refusedInAll += kept.refused().size();
        kept.refused().stream().limit(MOST_REFUSED - (long) refused.size()).forEach(refused::add);
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
