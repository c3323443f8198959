package bagclock.readings;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.logfile.Answers;
import bagclock.logfile.Channel;
import bagclock.logfile.DayOrder;
import bagclock.platform.OnBothDatabases;
import bagclock.readings.FileEvent.What;
import bagclock.readings.LoggerProfile.BelowZero;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class LoggerFilesTest extends OnBothDatabases {
    private static final Source SOURCE = new Source("clerk", Instant.parse("2026-03-02T10:00:00Z"));

    private final LoggerFiles files = new LoggerFiles();

    private LoggerFile add(byte[] content) {
        return database.inTransaction(tx -> {
            try {
                return files.add(
                        tx,
                        new LoggerFiles.Upload("Top", "DRY-5", "top.csv", new ByteArrayInputStream(content)),
                        SOURCE);
            } catch (IOException impossible) {
                throw new UncheckedIOException(impossible);
            }
        });
    }

    @Test
    void aFileComesBackAsItWas() throws IOException {
        byte[] content = new byte[1_700_000];
        SplittableRandom random = new SplittableRandom(3);
        for (int i = 0; i < content.length; i++) {
            content[i] = (byte) random.nextInt(256);
        }
        LoggerFile file = add(content);

        assertThat(file.sizeBytes()).isEqualTo(content.length);
        assertThat(files.source(database, file.id()).open().readAllBytes()).isEqualTo(content);
        assertThat(add(new byte[0]).sha256())
                .isEqualTo("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
        List<LoggerFile> newest = database.read(tx -> files.newest(tx, 5));
        assertThat(newest).hasSize(2);
    }

    @Test
    void whatHappenedToAFileIsToldInOrder() {
        LoggerFile file = add(new byte[] {1});
        Instant first = Instant.parse("2026-03-01T00:00:00Z");
        Instant last = Instant.parse("2026-03-02T00:00:00Z");
        database.withTransaction(tx -> {
            files.add(tx, file.id(), FileEvent.begun(1, SOURCE, first, last));
            files.add(tx, file.id(), FileEvent.ended(2, SOURCE, true, new FileEvent.Counts(3, 1, 0), "1\ttime\twhy"));
            files.add(tx, file.id(), FileEvent.takenBack(3, SOURCE, 3));
            files.setProgress(tx, file.id(), new Progress(3, 4));
        });
        List<FileEvent> events = database.read(tx -> files.events(tx, file.id()));

        assertThat(events).extracting(FileEvent::what).containsExactly(What.BEGUN, What.DONE, What.TAKEN_BACK);
        assertThat(LoggerFiles.first(events)).contains(first);
        assertThat(LoggerFiles.last(events)).contains(last);
        Progress progress = database.read(tx -> files.progress(tx, file.id()));
        assertThat(progress).isEqualTo(new Progress(3, 4));
    }

    @Test
    void whatWasSaidAboutALoggerIsKept() {
        LoggerProfile said = new LoggerProfile(
                "Top",
                "DRY-5",
                Optional.of(ZoneId.of("Europe/Berlin")),
                Optional.of(DayOrder.DAY_FIRST),
                Optional.of(Channel.Unit.FAHRENHEIT),
                new Answers.Names(Optional.of("T1"), Optional.empty()),
                true,
                BelowZero.FROST_POINT);
        database.withTransaction(tx -> files.keep(tx, LoggerProfile.fresh("Top", "DRY-5"), SOURCE));
        database.withTransaction(tx -> files.keep(tx, said, SOURCE));
        database.withTransaction(tx -> files.keep(tx, said, SOURCE));

        List<LoggerProfile> loggers = database.read(files::loggers);
        assertThat(loggers).containsExactly(said);
    }

    @Test
    void aTokenIsGoodUntilItsSensorIsShutOut() {
        Sensors sensors = new Sensors();
        String token = database.inTransaction(tx -> sensors.add(tx, "Dock", List.of("DOCK", "LINE"), SOURCE));
        SensorToken sensor = database.read(tx -> sensors.byToken(tx, token)).orElseThrow();

        assertThat(sensor.places()).containsExactly("DOCK", "LINE");
        assertThat(isGood(sensors, token + "x")).isFalse();
        database.withTransaction(tx -> sensors.revoke(tx, sensor.id(), SOURCE.recordedAt()));
        assertThat(isGood(sensors, token)).isFalse();
        List<SensorToken> all = database.read(sensors::all);
        assertThat(all.get(0).revoked()).contains(SOURCE.recordedAt());
    }

    private boolean isGood(Sensors sensors, String token) {
        return database.read(tx -> sensors.byToken(tx, token)).isPresent();
    }
}
