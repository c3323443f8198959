package bagclock.core.proof;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.Counts;
import bagclock.core.proof.Trace.Sample;
import bagclock.core.quantity.RelativeHumidity;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws that every proof keeps, tried on drawn logs (the project's own; less evidence never proves more). */
class ChartLawsTest {
    private static final Band BAND = new Band(90, 98);
    private static final double[] LEVELS = {20, 30, 60, 89, 90, 92, 94, 96, 98, 92, 93, 91, 95, 99};

    static LongStream seeds() {
        return Counts.seeds(200, 20_000);
    }

    private static Trace draw(String name, SplittableRandom random, double... levels) {
        List<Sample> samples = new ArrayList<>();
        Instant at = Logs.START;
        int pieces = random.nextInt(2, 9);
        for (int i = 0; i < pieces; i++) {
            double level = levels[random.nextInt(levels.length)];
            int count = random.nextInt(1, 30);
            for (int j = 0; j < count; j++) {
                samples.add(new Sample(at, level + (level == 98 ? 0 : random.nextInt(0, 2))));
                at = at.plus(Duration.ofMinutes(random.nextInt(1, 20) == 1 ? random.nextInt(5, 80) : 4));
            }
        }
        return new Trace(name, samples);
    }

    private static Chart draw(SplittableRandom random) {
        List<Trace> traces = new ArrayList<>();
        for (int i = random.nextInt(1, 4); i > 0; i--) {
            traces.add(draw("probe " + i, random, LEVELS));
        }
        boolean withHumidity = random.nextBoolean();
        return new Chart(traces, withHumidity ? Optional.of(draw("RH", random, 2, 3, 4, 4, 5, 6)) : Optional.empty());
    }

    private static ChartProof proof(Chart chart) {
        Asked asked = new Asked(BAND, Optional.of(new RelativeHumidity(5)), true);
        return ChartProof.of(chart, asked, Logs.STAY);
    }

    private static Chart with(Chart chart, int which, Trace other) {
        List<Trace> traces = new ArrayList<>(chart.temperatures());
        traces.set(which, other);
        return new Chart(traces, chart.humidity());
    }

    /** A dip that is cut out of a log is not there any more, so only samples in band are taken away. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aSampleLessNeverProvesMore(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Chart chart = draw(random);
        int which = random.nextInt(chart.temperatures().size());
        Trace trace = chart.temperatures().get(which);
        List<Sample> fewer = new ArrayList<>(trace.samples());
        int gone = random.nextInt(fewer.size());
        if (BAND.holds(fewer.get(gone).value())) {
            fewer.remove(gone);
        }

        ChartProof proof = proof(with(chart, which, new Trace(trace.name(), fewer)));
        assertThat(proof.time()).isLessThanOrEqualTo(proof(chart).time());
        assertThat(proof.isTooHot()).isEqualTo(proof(chart).isTooHot());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void oneMoreProbeOrAColderOneNeverProvesMore(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Chart chart = draw(random);
        List<Trace> more = new ArrayList<>(chart.temperatures());
        more.add(draw("one more", random, LEVELS));
        Trace colder = new Trace(
                "colder",
                more.get(0).samples().stream()
                        .map(sample -> new Sample(sample.at(), Math.min(sample.value(), 95) - 3))
                        .toList());

        Duration time = proof(chart).time();
        assertThat(proof(new Chart(more, chart.humidity())).time()).isLessThanOrEqualTo(time);
        if (!proof(chart).isTooHot()) {
            assertThat(proof(with(chart, 0, colder)).time()).isLessThanOrEqualTo(time);
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aSpellThatIsSplitChangesNothing(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Chart chart = draw(random);
        Trace trace = chart.temperatures().get(0);
        List<Sample> split = new ArrayList<>();
        for (Sample sample : trace.samples()) {
            int last = split.size() - 1;
            if (last >= 0 && isStepInBand(split.get(last), sample)) {
                split.add(new Sample(split.get(last).at().plusSeconds(random.nextInt(1, 60)), 92));
            }
            split.add(sample);
        }

        ChartProof whole = proof(chart);
        ChartProof proof = proof(with(chart, 0, new Trace(trace.name(), split)));
        assertThat(proof.counted()).isEqualTo(whole.counted());
        assertThat(proof.excursions()).isEqualTo(whole.excursions());
    }

    private static boolean isStepInBand(Sample one, Sample next) {
        Duration step = Duration.between(one.at(), next.at());
        return BAND.holds(one.value())
                && BAND.holds(next.value())
                && step.compareTo(ProbeProof.LONGEST_STEP) <= 0
                && step.compareTo(Duration.ofMinutes(1)) >= 0;
    }

    /** Another way to the same number: minute by minute. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void whatCountsLiesInBandOfEveryProbe(long seed) {
        Chart chart = draw(new SplittableRandom(seed));
        ChartProof proof = proof(chart);
        for (Spell spell : proof.counted()) {
            for (Trace trace : chart.temperatures()) {
                assertThat(trace.samples())
                        .filteredOn(sample -> !sample.at().isBefore(spell.from())
                                && !sample.at().isAfter(spell.to()))
                        .allMatch(sample -> BAND.holds(sample.value()));
            }
        }
        assertThat(proof.time())
                .isLessThanOrEqualTo(proof.coldest().orElseThrow().time());
    }
}
