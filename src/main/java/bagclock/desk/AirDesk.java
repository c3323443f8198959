package bagclock.desk;

import bagclock.platform.Database;
import bagclock.platform.Transaction;
import bagclock.readings.Kept;
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
import java.util.function.BiConsumer;

/** The desk's counter for readings: they come, they are taken back, and cabinets are judged by them. */
public final class AirDesk {
    private final Database database;
    private final Register register;
    private final ClockKeeping clocks;
    private final Excursions excursions;
    private final BiConsumer<Transaction, String> tell;
    private final Readings readings = new Readings();

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
        Instant recordedAt = source.recordedAt().truncatedTo(ChronoUnit.MILLIS);
        return database.inTransaction(tx -> {
            Duration gap = register.houseRules(tx, recordedAt).fact().rules().maxReadingGap();
            clocks.lock(tx, fresh);
            Taken taken = readings.add(tx, fresh, new Source(source.who(), recordedAt, source.file()), gap);
            ClockKeeping.Round round = clocks.new Round(tx, recordedAt, tell);
            round.readingsCame(taken.changes(), gap);
            round.sweep();
            return taken.kept();
        });
    }

    /** Takes back the readings of a file, and works out anew what rested on them; says how many they were. */
    public long takeBack(TakenBack file, Instant now) {
        return database.inTransaction(tx -> {
            Duration gap = register.houseRules(tx, now).fact().rules().maxReadingGap();
            clocks.lock(tx, file.zone());
            long count = readings.takeBack(tx, file, gap);
            clocks.new Round(tx, now, tell).readingsWent(file.zone());
            return count;
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
