package bagclock.climate;

import bagclock.logfile.LogReport;
import bagclock.logfile.LogSource;
import bagclock.platform.Database;
import bagclock.platform.Transaction;
import bagclock.readings.FileEvent;
import bagclock.readings.LoggerFile;
import bagclock.readings.LoggerFiles;
import bagclock.readings.LoggerProfile;
import bagclock.readings.Progress;
import bagclock.readings.Source;
import bagclock.register.Calibration;
import bagclock.register.KnownPlace;
import bagclock.register.Register;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;

/** What the pages of loggers' files read and write. */
final class LogStore {
    private final Database database;
    private final LoggerFiles files = new LoggerFiles();
    private final Register register = new Register();

    LogStore(Database database) {
        this.database = database;
    }

    LoggerFile add(LoggerFiles.Upload upload, Source source) {
        return database.inTransaction(tx -> {
            try {
                return files.add(tx, upload, source);
            } catch (IOException failure) {
                throw new UncheckedIOException(failure);
            }
        });
    }

    LoggerFile file(String id) {
        return database.read(tx -> files.byId(tx, id));
    }

    List<LoggerFile> newest(int most) {
        return database.read(tx -> files.newest(tx, most));
    }

    List<LoggerFile> besides(LoggerFile file, int most) {
        return database.read(tx -> files.besides(tx, file, most));
    }

    void join(String id, String otherId, Source source) {
        database.withTransaction(tx -> files.join(tx, id, otherId, source));
    }

    void part(String id, Source source) {
        database.withTransaction(tx -> files.part(tx, id, source));
    }

    Optional<LoggerFile> otherHalf(String id) {
        return database.read(tx -> files.otherHalf(tx, id));
    }

    List<LoggerFile> readWith(String id) {
        return database.read(tx -> files.readWith(tx, id));
    }

    /** How long a reading holds. */
    Duration hold(Instant moment) {
        return database.read(
                tx -> register.houseRules(tx, moment).fact().rules().maxReadingGap());
    }

    LogSource source(String id) {
        return files.source(database, id);
    }

    List<FileEvent> events(String id) {
        return database.read(tx -> files.events(tx, id));
    }

    /** Notes that the import of a file begins, and gives the number of that event; none while another one runs. */
    OptionalInt begin(String id, Source source, LogReport.Span span) {
        return database.inTransaction(tx -> {
            List<FileEvent> events = files.lockedEvents(tx, id);
            int seq = events.size() + 1;
            if (seq > 1 && events.get(seq - 2).what() == FileEvent.What.BEGUN) {
                return OptionalInt.empty();
            }
            files.add(
                    tx,
                    id,
                    FileEvent.begun(seq, source, span.first(), span.last().plusSeconds(1)));
            return OptionalInt.of(seq);
        });
    }

    /** Whether an import goes on: nobody took the file back since. */
    Predicate<Transaction> isRunning(String id, int begunSeq) {
        return tx -> files.isRunning(tx, id, begunSeq);
    }

    /** Notes how an import ended, as the event after its beginning; nothing if the file was taken back meanwhile. */
    void end(String id, FileEvent ended) {
        database.withTransaction(tx -> {
            if (files.isRunning(tx, id, ended.seq() - 1)) {
                files.add(tx, id, ended);
            }
        });
    }

    Progress progress(String id) {
        return database.read(tx -> files.progress(tx, id));
    }

    void setProgress(String id, Progress progress) {
        database.withTransaction(tx -> files.setProgress(tx, id, progress));
    }

    /** A logger or an oven with its day, and what a person calls it. */
    record Calibrated(Calibration calibration, String words) {}

    /** Every logger and every oven. */
    List<Calibrated> calibrated(Instant moment) {
        return database.read(tx -> {
            List<Calibration> known = register.calibrations(tx);
            List<Calibrated> all = new ArrayList<>();
            files.loggers(tx)
                    .forEach(logger -> all.add(
                            new Calibrated(calibration(known, Calibration.Kind.LOGGER, logger.name()), logger.name())));
            register.places(tx, KnownPlace.BakeOven.class, moment)
                    .forEach(oven -> all.add(
                            new Calibrated(calibration(known, Calibration.Kind.OVEN, oven.code()), oven.name())));
            return all;
        });
    }

    private static Calibration calibration(List<Calibration> known, Calibration.Kind kind, String name) {
        return known.stream()
                .filter(one -> one.kind() == kind && one.name().equals(name))
                .findFirst()
                .orElse(new Calibration(kind, name, Optional.empty()));
    }

    List<LoggerProfile> loggers() {
        return database.read(files::loggers);
    }

    Optional<LoggerProfile> logger(String name) {
        return database.read(tx -> files.logger(tx, name));
    }

    void keep(LoggerProfile profile, Source source) {
        database.withTransaction(tx -> files.keep(tx, profile, source));
    }
}
