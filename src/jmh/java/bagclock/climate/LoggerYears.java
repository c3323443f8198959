package bagclock.climate;

import bagclock.core.exposure.Zone;
import bagclock.core.standard.Edition;
import bagclock.core.standard.Standard;
import bagclock.desk.Desk;
import bagclock.logfile.Answers;
import bagclock.logfile.LogSource;
import bagclock.platform.Database;
import bagclock.platform.Settings;
import bagclock.readings.LoggerProfile.BelowZero;
import bagclock.readings.Source;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;

/** Years of minutes of an invented logger, in an H2 file as a site has it. */
final class LoggerYears {
    static final Instant END = Instant.parse("2026-01-01T00:00:00Z");
    static final Zone ZONE = new Zone("BENCH");
    private static final int CHUNK = 20_000;

    private LoggerYears() {}

    static Instant at(int row, int rows) {
        return END.minus(Duration.ofMinutes((long) rows - row));
    }

    static double celsius(int row) {
        return Math.round(220 + 20 * Math.sin(row / 230.0)) / 10.0;
    }

    static double percent(int row) {
        return Math.round(450 + 90 * Math.sin(row / 510.0)) / 10.0;
    }

    static Path write(Path folder, int rows) throws IOException {
        Path file = folder.resolve("logger.csv");
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            out.write("Time,Temperature C,RH %\n");
            for (int row = 0; row < rows; row++) {
                out.write(at(row, rows) + "," + celsius(row) + "," + percent(row) + "\n");
            }
        }
        return file;
    }

    static Database open(Path folder) {
        return Database.open(Settings.h2Url(folder));
    }

    /** Looks at the whole file as the preview does, then imports it. */
    static long importFile(Database database, Path csv) throws IOException {
        LogSource bytes = () -> Files.newInputStream(csv);
        Preview preview = Preview.of(bytes, Answers.NONE, BelowZero.UNKNOWN)
                .orElseThrow(() -> new IllegalStateException("no preview of " + csv));
        Desk desk = new Desk(database, Standard.load(Edition.J_STD_033D), (tx, topic) -> {});
        Source source = new Source("bench", END, Optional.of("file"));
        return new Import(readings -> Optional.of(desk.air().add(readings, source)), ZONE, done -> {})
                .run(preview.log(BelowZero.UNKNOWN))
                .orElseThrow()
                .counts()
                .added();
    }

    /** The same rows into the same table, and nothing else. */
    static int insertPlainly(Path folder, int rows) throws SQLException {
        try (Connection connection = DriverManager.getConnection(Settings.h2Url(folder), "sa", "");
                PreparedStatement insert = connection.prepareStatement(
                        "insert into reading (zone, read_at, temperature_c, rh_percent, recorded_at, who, file_id)"
                                + " values (?, ?, ?, ?, ?, ?, ?)")) {
            connection.setAutoCommit(false);
            for (int row = 0; row < rows; row++) {
                insert.setString(1, ZONE.name());
                insert.setObject(2, at(row, rows).atOffset(ZoneOffset.UTC));
                insert.setDouble(3, celsius(row));
                insert.setDouble(4, percent(row));
                insert.setObject(5, END.atOffset(ZoneOffset.UTC));
                insert.setString(6, "bench");
                insert.setString(7, "file");
                insert.addBatch();
                if (row % CHUNK == CHUNK - 1) {
                    insert.executeBatch();
                    connection.commit();
                }
            }
            insert.executeBatch();
            connection.commit();
        }
        return rows;
    }
}
