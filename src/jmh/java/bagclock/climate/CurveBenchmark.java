package bagclock.climate;

import bagclock.platform.Database;
import bagclock.readings.HourBand;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** Both curves of a year of minutes, from the database to the points of the drawing. Goal: below 50 ms. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class CurveBenchmark {
    private static final int YEAR = 525_600;
    private static final Plot.Words WORDS = new Plot.Words("c", "", "", "", "");

    private Database database = Database.open("jdbc:h2:mem:none");
    private ClimateStore store = new ClimateStore(database);

    /** Imports the year. */
    @Setup
    public void open() throws IOException {
        database.close();
        Path folder = Files.createTempDirectory("curve");
        database = LoggerYears.open(folder);
        store = new ClimateStore(database);
        LoggerYears.importFile(database, LoggerYears.write(folder, YEAR));
    }

    /** Lets the file go. */
    @TearDown
    public void close() {
        database.close();
    }

    /** Humidity and temperature. */
    @Benchmark
    public List<Curve> drawAYear() {
        Instant from = LoggerYears.END.minus(Duration.ofDays(365));
        List<HourBand> hours = store.hours(LoggerYears.ZONE, from, LoggerYears.END);
        Plot plot = new Plot(from, LoggerYears.END, Duration.ofHours(2), ZoneOffset.UTC);
        return List.of(
                plot.draw(
                        hours,
                        new Plot.Range(HourBand::driestPercent, HourBand::wettestPercent),
                        OptionalDouble.of(55),
                        WORDS),
                plot.draw(hours, new Plot.Range(HourBand::lowestC, HourBand::highestC), OptionalDouble.of(27), WORDS));
    }
}
