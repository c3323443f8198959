package bagclock.climate;

import bagclock.platform.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A logger's file, looked at and imported, against a plain insert of the same rows in batches; both with at most 512 MB
 * of heap. What counts is the rate of the import as a share of the rate of the insert: the insert's time by the import's.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(value = 1, jvmArgs = "-Xmx512m")
@Warmup(iterations = 0)
@Measurement(iterations = 1)
public class ImportBenchmark {
    /** Rows of the file. */
    @Param({"5000000"})
    public int rows;

    private Path folder = Path.of("target");

    /** A fresh database and the file. */
    @Setup(Level.Invocation)
    public void open() throws IOException {
        folder = Files.createTempDirectory("import");
        LoggerYears.write(folder, rows);
        LoggerYears.open(folder).close();
    }

    /** What the site does. */
    @Benchmark
    public long importFile() throws IOException {
        try (Database database = LoggerYears.open(folder)) {
            return LoggerYears.importFile(database, folder.resolve("logger.csv"));
        }
    }

    /** What the database can do at most. */
    @Benchmark
    public int insertPlainly() throws SQLException {
        return LoggerYears.insertPlainly(folder, rows);
    }
}
