package bagclock.core.estimate;

import bagclock.core.diffusion.Content;
import bagclock.core.diffusion.Diffusivity;
import bagclock.core.diffusion.Slab;
import bagclock.core.diffusion.Soak;
import bagclock.core.exposure.Air;
import bagclock.core.exposure.ClimateLog;
import bagclock.core.exposure.Event;
import bagclock.core.exposure.PartHistory;
import bagclock.core.exposure.SiteRules;
import bagclock.core.exposure.Timeline;
import bagclock.core.exposure.Zone;
import bagclock.core.exposure.ZoneLog;
import bagclock.core.quantity.Millimetres;
import bagclock.core.standard.Body;
import bagclock.core.standard.BodyKind;
import bagclock.core.standard.Edition;
import bagclock.core.standard.Level;
import bagclock.core.standard.Part;
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
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One part in a room that was read every minute for a year. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class EstimateBenchmark {
    private static final Instant START = Instant.parse("2026-01-01T00:00:00Z");
    private static final Duration STEP = Duration.ofMinutes(1);
    private static final int READINGS = 365 * 24 * 60;
    private static final Zone ROOM = new Zone("room");

    private final Standard standard = Standard.load(Edition.J_STD_033D);
    private final List<Air> airs = new ArrayList<>();
    private PartHistory history;

    /** Temperatures and humidities as a logger gives them, to a tenth. */
    @Setup
    public void read() {
        SplittableRandom random = new SplittableRandom(1);
        List<ZoneLog.Reading> readings = new ArrayList<>();
        for (int i = 0; i < READINGS; i++) {
            Air air = Air.of(20 + random.nextInt(60) / 10.0, 35 + random.nextInt(200) / 10.0);
            airs.add(air);
            readings.add(new ZoneLog.Reading(START.plus(STEP.multipliedBy(i)), air));
        }
        List<Event> events = List.of(new Event.ToFloor(START, Optional.of(ROOM)));
        Timeline timeline = Timeline.of(events).fold(one -> one, refusals -> Timeline.EMPTY);
        history = new PartHistory(
                Part.of(Level.L3, Body.of(BodyKind.LEADLESS, "3.4")),
                timeline,
                new ClimateLog(Map.of(ROOM, ZoneLog.of(readings)), Map.of(), Optional.empty()),
                SiteRules.USUAL,
                START.plus(STEP.multipliedBy(READINGS)));
    }

    /** The model alone: both diffusivities, mean and sealed face, at the end of the year. */
    @Benchmark
    public List<Content> model() {
        Soak.Phases phases = new Soak.Phases(new Slab(Millimetres.of("1.22"), 0.1));
        airs.forEach(air -> phases.air(STEP, air.temperature(), air.humidity()));
        Soak soak = phases.soak();
        return List.of(soak.content(Diffusivity.LOW), soak.content(Diffusivity.HIGH));
    }

    /** All that the item's page asks for: the history folded by the rules, the curve, the warning. */
    @Benchmark
    public Beside beside() {
        return Estimates.of(standard, history);
    }
}
