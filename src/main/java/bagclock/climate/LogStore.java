package bagclock.climate;

import bagclock.logfile.LogSource;
import bagclock.platform.Database;
import bagclock.readings.FileEvent;
import bagclock.readings.LoggerFile;
import bagclock.readings.LoggerFiles;
import bagclock.readings.LoggerProfile;
import bagclock.readings.Progress;
import bagclock.readings.Source;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;

/** What the pages of loggers' files read and write. */
final class LogStore {
    private final Database database;
    private final LoggerFiles files = new LoggerFiles();

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

    LogSource source(String id) {
        return files.source(database, id);
    }

    List<FileEvent> events(String id) {
        return database.read(tx -> files.events(tx, id));
    }

    Optional<FileEvent> last(String id) {
        List<FileEvent> events = events(id);
        return events.isEmpty() ? Optional.empty() : Optional.of(events.get(events.size() - 1));
    }

    void add(String id, FileEvent event) {
        database.withTransaction(tx -> files.add(tx, id, event));
    }

    Progress progress(String id) {
        return database.read(tx -> files.progress(tx, id));
    }

    void setProgress(String id, Progress progress) {
        database.withTransaction(tx -> files.setProgress(tx, id, progress));
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
