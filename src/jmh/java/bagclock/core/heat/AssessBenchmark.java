package bagclock.core.heat;

import bagclock.core.exposure.Air;
import bagclock.core.exposure.ClimateLog;
import bagclock.core.exposure.Event;
import bagclock.core.exposure.HumidityCard;
import bagclock.core.exposure.PartHistory;
import bagclock.core.exposure.SiteRules;
import bagclock.core.exposure.Timeline;
import bagclock.core.exposure.Zone;
import bagclock.core.exposure.ZoneLog;
import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.Millimetres;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.core.standard.Body;
import bagclock.core.standard.BodyKind;
import bagclock.core.standard.CarrierLimit;
import bagclock.core.standard.Edition;
import bagclock.core.standard.Level;
import bagclock.core.standard.MakerRules;
import bagclock.core.standard.Part;
import bagclock.core.standard.Rating;
import bagclock.core.standard.Standard;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One answer for a part with 100 events and 10,000 readings, a month of two zones read every nine minutes. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 10, time = 1)
@Fork(2)
public class AssessBenchmark {
    private static final Instant START = Instant.parse("2026-03-02T00:00:00Z");
    private static final int EVENTS = 100;
    private static final int READINGS_OF_A_ZONE = 5_000;
    private static final Duration STEP = Duration.ofMinutes(9);
    private static final Zone BENCH = new Zone("bench");
    private static final Zone CABINET = new Zone("cabinet");

    private final Standard standard = Standard.load(Edition.J_STD_033D);

    /** Levels with a pause and without, and a site that uses drier air. */
    @Param({"L3", "L5A"})
    public Level level;

    @Param({"false", "true"})
    public boolean drierAir;

    private Question question;

    /** Reads nothing, writes nothing: the question lies in memory. */
    @Setup
    public void ask() {
        Instant moment = START.plus(STEP.multipliedBy(READINGS_OF_A_ZONE - 1));
        ClimateLog climate =
                new ClimateLog(Map.of(BENCH, log(50, 12), CABINET, log(3, 3)), Map.of(), Optional.of(Air.of(25, 60)));
        SiteRules rules = new SiteRules(drierAir, Duration.ofHours(2), Duration.ZERO);
        question = new Question(new PartHistory(part(), timeline(), climate, rules, moment), Optional.empty());
    }

    private Part part() {
        Optional<Millimetres> edge = Optional.of(Millimetres.of("15"));
        Body body = new Body(
                BodyKind.ARRAY,
                Optional.of(Millimetres.of("1.2")),
                edge,
                edge,
                Optional.of(false),
                Optional.of(true),
                Optional.of(true));
        return new Part(
                List.of(Rating.of(level, new Celsius(260))),
                body,
                MakerRules.NONE,
                Optional.empty(),
                new CarrierLimit.None(),
                Part.Prior.NONE);
    }

    /** Opened, then out and in again: bench, cabinet, bench, ... */
    private static Timeline timeline() {
        List<Event> events = new ArrayList<>();
        HumidityCard card = new HumidityCard(Map.of(5.0, true, 10.0, true, 60.0, true));
        events.add(new Event.Opened(START, Optional.of(card), Optional.empty(), Optional.of(true), Optional.of(BENCH)));
        Duration between = STEP.multipliedBy(READINGS_OF_A_ZONE / EVENTS);
        for (int i = 1; i < EVENTS; i++) {
            Instant at = START.plus(between.multipliedBy(i));
            events.add(
                    i % 2 == 0
                            ? new Event.ToFloor(at, Optional.of(BENCH))
                            : new Event.ToDryStorage(at, Optional.of(new RelativeHumidity(5)), Optional.of(CABINET)));
        }
        return Timeline.of(events).fold(timeline -> timeline, refusals -> {
            throw new IllegalStateException(refusals.toString());
        });
    }

    private static ZoneLog log(double percent, double spread) {
        SplittableRandom random = new SplittableRandom(1);
        List<ZoneLog.Reading> readings = new ArrayList<>();
        for (int i = 0; i < READINGS_OF_A_ZONE; i++) {
            Air air = Air.of(22 + random.nextDouble() * 5, percent + random.nextDouble() * spread);
            readings.add(new ZoneLog.Reading(START.plus(STEP.multipliedBy(i)), air));
        }
        return ZoneLog.of(readings);
    }

    /** The answer from the question. */
    @Benchmark
    public Answer assess() {
        return Assess.of(standard, question);
    }
}
