package bagclock.core.diffusion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.Millimetres;
import bagclock.core.quantity.RelativeHumidity;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Ten histories whose contents were computed apart from this code, by superposition and by a grid. */
class SoakTest {
    /** In percent relative humidity; the file prints four digits, the stated bound between the methods is 5e-4. */
    private static final double PRINTED = 1e-4;

    private static final double BOUND = 5e-4;
    private static final double SURFACE_EV = 0.055;
    private static final double OVEN_FROM_C = 100;

    /** One phase as the file writes it: hours, C, percent, D. */
    private record Phase(long hours, double celsius, double percent, double d) {
        static Phase parse(String text) {
            String[] parts = text.strip().split(" ", -1);
            return new Phase(
                    Long.parseLong(parts[0]),
                    Double.parseDouble(parts[1]),
                    Double.parseDouble(parts[2]),
                    Double.parseDouble(parts[3]));
        }

        boolean inOven() {
            return celsius >= OVEN_FROM_C;
        }

        Diffusivity diffusivity() {
            return celsius < OVEN_FROM_C && d > 1e-6 ? Diffusivity.HIGH : Diffusivity.LOW;
        }

        double level() {
            return percent * Diffusivity.surface(SURFACE_EV, new Celsius(celsius));
        }
    }

    static Stream<List<String>> histories() {
        return ReferenceFile.lines("history-reference-cases.csv");
    }

    private static List<Phase> phases(List<String> line) {
        return Stream.of(line.get(1).split("\\|", -1)).map(Phase::parse).toList();
    }

    private static Slab slab(List<String> line) {
        return new Slab(Millimetres.of(line.get(2)), SURFACE_EV);
    }

    @Test
    void thereAreTen() {
        assertThat(histories()).hasSize(10);
    }

    @ParameterizedTest
    @MethodSource("histories")
    void superpositionGivesTheReferenceValue(List<String> line) {
        Soak.Phases soak = new Soak.Phases(slab(line));
        for (Phase phase : phases(line)) {
            Duration length = Duration.ofHours(phase.hours);
            Celsius temperature = new Celsius(phase.celsius);
            RelativeHumidity humidity = new RelativeHumidity(phase.percent);
            if (phase.inOven()) {
                soak.oven(length, temperature, humidity);
            } else {
                soak.air(length, temperature, humidity);
            }
        }
        Content content = soak.soak().content(phases(line).get(0).diffusivity());
        assertThat(content.sealedFacePercent()).isCloseTo(Double.parseDouble(line.get(3)), within(PRINTED));
        assertThat(content.meanPercent()).isCloseTo(Double.parseDouble(line.get(4)), within(PRINTED));
    }

    @ParameterizedTest
    @MethodSource("histories")
    void theGridAgreesWithinTheStatedBound(List<String> line) {
        CrankNicolson grid = new CrankNicolson(Double.parseDouble(line.get(2)));
        phases(line).forEach(phase -> grid.phase(phase.d * phase.hours * 3600, phase.level()));
        assertThat(grid.sealedFace()).isCloseTo(Double.parseDouble(line.get(3)), within(BOUND));
        assertThat(grid.mean()).isCloseTo(Double.parseDouble(line.get(4)), within(BOUND));
    }

    @ParameterizedTest
    @MethodSource("histories")
    void theDiffusivityOfAPhaseIsTheListedOne(List<String> line) {
        for (Phase phase : phases(line)) {
            Celsius temperature = new Celsius(phase.celsius);
            double d = phase.inOven()
                    ? Diffusivity.LOW.inOven(temperature)
                    : phase.diffusivity().inAir(temperature);
            assertThat(d).isCloseTo(phase.d, within(phase.d * 1e-6));
        }
    }
}
