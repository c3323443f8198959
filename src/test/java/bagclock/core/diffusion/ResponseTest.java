package bagclock.core.diffusion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The series against values of Crank, The Mathematics of Diffusion (1975), page 48; the file names its sources. */
class ResponseTest {
    private static final double PRINTED = 1e-6;

    static Stream<List<String>> values() {
        return ReferenceFile.lines("fick-reference-values.csv");
    }

    @Test
    void thereAreThirtyThree() {
        assertThat(values()).hasSize(33);
    }

    @ParameterizedTest
    @MethodSource("values")
    void theSeriesGivesTheReferenceValue(List<String> line) {
        double fourier = Double.parseDouble(line.get(1));
        double digits = line.get(0).equals("by_fourier") ? PRINTED : 2e-6;
        if (!line.get(2).isEmpty()) {
            assertThat(Response.mean(fourier)).isCloseTo(Double.parseDouble(line.get(2)), within(digits));
            assertThat(Response.MEAN.at(fourier)).isCloseTo(Double.parseDouble(line.get(2)), within(digits));
        }
        if (!line.get(3).isEmpty()) {
            assertThat(Response.sealedFace(fourier)).isCloseTo(Double.parseDouble(line.get(3)), within(digits));
            assertThat(Response.FACE.at(fourier)).isCloseTo(Double.parseDouble(line.get(3)), within(digits));
        }
    }

    @ParameterizedTest
    @MethodSource("values")
    void theGridGivesTheReferenceValueAlsoHalfWay(List<String> line) {
        CrankNicolson grid = new CrankNicolson(1).phase(Double.parseDouble(line.get(1)), 1);
        assertColumn(line, 2, grid.mean());
        assertColumn(line, 3, grid.sealedFace());
        assertColumn(line, 4, grid.halfDepth());
    }

    private static void assertColumn(List<String> line, int column, double value) {
        if (!line.get(column).isEmpty()) {
            assertThat(value).isCloseTo(Double.parseDouble(line.get(column)), within(1e-4));
        }
    }

    /** A value that was computed elsewhere to 15 digits: 0.562233541762138 at Fo 0.25. */
    @Test
    void theMeanAgreesWithAnOutsideValue() {
        assertThat(Response.mean(0.25)).isCloseTo(0.562233541762138, within(1e-14));
    }

    @Test
    void whatIsReadOffLiesWithinAMillionthOfTheSeries() {
        SplittableRandom random = new SplittableRandom(1);
        for (int i = 0; i < 20_000; i++) {
            double fourier = Math.pow(10, random.nextDouble() * 6 - 4);
            assertThat(Response.FACE.at(fourier)).isCloseTo(Response.sealedFace(fourier), within(1e-6));
            assertThat(Response.MEAN.at(fourier)).isCloseTo(Response.mean(fourier), within(1e-6));
        }
    }
}
