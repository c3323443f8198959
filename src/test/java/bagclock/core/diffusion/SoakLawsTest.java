package bagclock.core.diffusion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bagclock.Counts;
import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.Millimetres;
import bagclock.core.quantity.RelativeHumidity;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every history; the seed draws the case. */
class SoakLawsTest {
    /** Of what is read off, for each phase, in percent relative humidity. */
    private static final double ROUNDING = 1e-3;

    /** Between the two methods, as a share of the wettest level; the jump at each phase costs the grid most. */
    private static final double METHODS = 2e-4;

    private static final int QUICK = 60;
    private static final int FULL = 2_000;

    /** A phase of a drawn history. */
    private record Phase(Duration length, Celsius temperature, RelativeHumidity humidity, boolean oven) {
        void addTo(Soak.Phases soak) {
            if (oven) {
                soak.oven(length, temperature, humidity);
            } else {
                soak.air(length, temperature, humidity);
            }
        }

        double level(Slab slab) {
            return humidity.percent() * Diffusivity.surface(slab.surfaceEnergyEv(), temperature);
        }

        double tau(Diffusivity diffusivity) {
            double d = oven ? diffusivity.inOven(temperature) : diffusivity.inAir(temperature);
            return d * length.toMillis() / 1000;
        }
    }

    private record Case(Slab slab, List<Phase> phases, Diffusivity diffusivity) {
        static Case draw(long seed) {
            SplittableRandom random = new SplittableRandom(seed);
            String depth = String.valueOf((20 + random.nextInt(180)) / 100.0);
            Slab slab = new Slab(Millimetres.of(depth), random.nextInt(13) / 100.0);
            List<Phase> phases = new ArrayList<>();
            for (int i = 0; i < 1 + random.nextInt(7); i++) {
                boolean oven = random.nextInt(5) == 0;
                double celsius = oven ? 40 + random.nextInt(86) : 15 + random.nextInt(21);
                double percent = oven ? random.nextInt(6) : random.nextInt(91);
                Duration length = Duration.ofMinutes(1 + random.nextInt(oven ? 3_000 : 30_000));
                phases.add(new Phase(length, new Celsius(celsius), new RelativeHumidity(percent), oven));
            }
            return new Case(slab, phases, random.nextBoolean() ? Diffusivity.LOW : Diffusivity.HIGH);
        }

        Soak soak() {
            Soak.Phases soak = new Soak.Phases(slab);
            phases.forEach(phase -> phase.addTo(soak));
            return soak.soak();
        }

        Content content() {
            return soak().content(diffusivity);
        }

        double wettest() {
            return phases.stream().mapToDouble(phase -> phase.level(slab)).max().orElseThrow();
        }
    }

    static LongStream seeds() {
        return Counts.seeds(QUICK, FULL);
    }

    private static void assertSame(Content one, Content other) {
        assertThat(one.meanPercent()).isCloseTo(other.meanPercent(), within(ROUNDING));
        assertThat(one.sealedFacePercent()).isCloseTo(other.sealedFacePercent(), within(ROUNDING));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theContentIsNeverNegativeNorAboveTheWettestSpell(long seed) {
        Case drawn = Case.draw(seed);
        Content content = drawn.content();
        double most = drawn.wettest() + ROUNDING;
        assertThat(content.meanPercent()).isBetween(0.0, most);
        assertThat(content.sealedFacePercent()).isBetween(0.0, most);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aLongTimeReachesEquilibrium(long seed) {
        Case drawn = Case.draw(seed);
        Phase last = new Phase(Duration.ofDays(20_000), new Celsius(30), new RelativeHumidity(seed % 91), false);
        Soak.Phases soak = new Soak.Phases(drawn.slab());
        drawn.phases().forEach(phase -> phase.addTo(soak));
        last.addTo(soak);
        double level = last.level(drawn.slab());
        assertSame(soak.soak().content(drawn.diffusivity()), new Content(level, level));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void splittingAPhaseChangesNothing(long seed) {
        Case drawn = Case.draw(seed);
        List<Phase> split = new ArrayList<>();
        for (Phase phase : drawn.phases()) {
            Duration part = phase.length().dividedBy(3);
            split.add(new Phase(part, phase.temperature(), phase.humidity(), phase.oven()));
            split.add(new Phase(Duration.ZERO, new Celsius(33), new RelativeHumidity(88), false));
            split.add(new Phase(phase.length().minus(part), phase.temperature(), phase.humidity(), phase.oven()));
        }
        assertSame(new Case(drawn.slab(), split, drawn.diffusivity()).content(), drawn.content());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aLookOnTheWayIsTheContentOfTheHistorySoFar(long seed) {
        Case drawn = Case.draw(seed);
        Soak whole = drawn.soak();
        Duration since = whole.length().dividedBy(2);
        Soak.Phases soFar = new Soak.Phases(drawn.slab());
        Duration left = since;
        for (Phase phase : drawn.phases()) {
            Duration part = phase.length().compareTo(left) < 0 ? phase.length() : left;
            new Phase(part, phase.temperature(), phase.humidity(), phase.oven()).addTo(soFar);
            left = left.minus(part);
        }
        assertSame(whole.contentAfter(since, drawn.diffusivity()), soFar.soak().content(drawn.diffusivity()));
        assertSame(whole.contentAfter(whole.length(), drawn.diffusivity()), drawn.content());
        assertSame(whole.contentAfter(Duration.ZERO, drawn.diffusivity()), new Content(0, 0));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void bothMethodsAgree(long seed) {
        Case drawn = Case.draw(seed);
        CrankNicolson grid = new CrankNicolson(drawn.slab().depth().value().doubleValue());
        drawn.phases().forEach(phase -> grid.phase(phase.tau(drawn.diffusivity()), phase.level(drawn.slab())));
        double bound = drawn.wettest() * METHODS + ROUNDING;
        assertThat(grid.mean()).isCloseTo(drawn.content().meanPercent(), within(bound));
        assertThat(grid.sealedFace()).isCloseTo(drawn.content().sealedFacePercent(), within(bound));
    }
}
