package bagclock.desk;

import bagclock.core.exposure.Zone;
import bagclock.platform.Database;
import bagclock.platform.Transaction;
import bagclock.readings.FileEvent;
import bagclock.readings.Kept;
import bagclock.readings.LoggerFile;
import bagclock.readings.LoggerFiles;
import bagclock.readings.Readings;
import bagclock.readings.Source;
import bagclock.readings.Taken;
import bagclock.readings.TakenBack;
import bagclock.readings.ZoneReading;
import bagclock.register.KnownPlace;
import bagclock.register.Register;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Predicate;

/** The desk's counter for readings: they come, they are taken back, and cabinets are judged by them. */
public final class AirDesk {
    private final Database database;
    private final Register register;
    private final ClockKeeping clocks;
    private final Excursions excursions;
    private final BiConsumer<Transaction, String> tell;
    private final Readings readings = new Readings();
    private final LoggerFiles files = new LoggerFiles();

    AirDesk(
            Database database,
            Register register,
            ClockKeeping clocks,
            Excursions excursions,
            BiConsumer<Transaction, String> tell) {
        this.database = database;
        this.register = register;
        this.clocks = clocks;
        this.excursions = excursions;
        this.tell = tell;
    }

    /** Keeps the good ones of some readings, and brings the clocks that rest on them up to date. */
    public Kept add(List<ZoneReading> fresh, Source source) {
        return addWhile(tx -> true, fresh, source).orElseThrow();
    }

    /**
     * As {@link #add}, a part of something longer.
     *
     * @param goesOn asked within the transaction, so that nothing comes between its answer and the readings
     * @return empty, with nothing kept, if it does not go on
     */
    public Optional<Kept> addWhile(Predicate<Transaction> goesOn, List<ZoneReading> fresh, Source source) {
        Instant recordedAt = source.recordedAt().truncatedTo(ChronoUnit.MILLIS);
        return database.inTransaction(tx -> {
            Duration gap = register.houseRules(tx, recordedAt).fact().rules().maxReadingGap();
            clocks.lock(tx, fresh);
            if (!goesOn.test(tx)) {
                return Optional.empty();
            }
            Taken taken = readings.add(tx, fresh, new Source(source.who(), recordedAt, source.file()), gap);
            ClockKeeping.Round round = clocks.new Round(tx, recordedAt, tell);
            round.readingsCame(taken.changes(), gap);
            round.sweep();
            return Optional.of(taken.kept());
        });
    }

    /**
     * Takes back what a file brought, and works out anew what rested on it; nothing if none of it counts. A running
     * import of the file stops: it finds this event after its own beginning.
     */
    public void takeBack(LoggerFile file, String who, Instant now) {
        Zone zone = new Zone(file.placeCode());
        database.withTransaction(tx -> {
            clocks.lock(tx, zone);
            List<FileEvent> events = files.lockedEvents(tx, file.id());
            if (!LoggerFiles.counts(events)) {
                return;
            }
            int seq = events.size() + 1;
            Instant first = LoggerFiles.first(events).orElseThrow();
            Instant last = LoggerFiles.last(events).orElseThrow();
            Duration gap = register.houseRules(tx, now).fact().rules().maxReadingGap();
            long count = readings.takeBack(tx, new TakenBack(zone, file.id(), seq, first, last), gap);
            clocks.new Round(tx, now, tell).readingsWent(zone);
            files.add(tx, file.id(), FileEvent.takenBack(seq, new Source(who, now), count));
        });
    }

    /** Items that were in a cabinet since a moment, of which its excursions changed the answer; not more are looked at. */
    public List<ChangedAnswer> changedBy(KnownPlace.DryCabinet cabinet, Instant since, Instant moment, int most) {
        return database.read(tx -> {
            List<String> tags = clocks.rows().inBetween(tx, cabinet.code(), since, moment);
            return excursions.of(tx, cabinet, tags.subList(0, Math.min(most, tags.size())), moment);
        });
    }
}
