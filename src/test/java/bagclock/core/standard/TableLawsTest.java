package bagclock.core.standard;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Bounds that every cell must keep, whatever its digits: physics runs one way. */
class TableLawsTest {
    private static final Standard STANDARD = Standard.load(Edition.J_STD_033D);
    private static final int[] TEMPERATURES = {20, 25, 30, 35};
    private static final int[] HUMIDITIES = {5, 10, 20, 30, 40, 50, 60, 70, 80, 90};
    private static final List<Level> LEVELS =
            Arrays.stream(Level.values()).filter(Level::hasFloorLife).toList();

    static Stream<Level> levels() {
        return LEVELS.stream();
    }

    private static Life derated(DeratingClass thickness, Level level, int celsius, int percent) {
        return STANDARD.derated(thickness, level, new Celsius(celsius), new RelativeHumidity(percent))
                .orElseThrow()
                .value();
    }

    @ParameterizedTest
    @MethodSource("levels")
    void wetterIsNeverLonger(Level level) {
        for (DeratingClass thickness : DeratingClass.values()) {
            for (int celsius : TEMPERATURES) {
                assertThat(Arrays.stream(HUMIDITIES).mapToObj(percent -> derated(thickness, level, celsius, percent)))
                        .isSortedAccordingTo(Collections.reverseOrder());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("levels")
    void warmerIsNeverLonger(Level level) {
        for (DeratingClass thickness : DeratingClass.values()) {
            for (int percent : HUMIDITIES) {
                assertThat(Arrays.stream(TEMPERATURES).mapToObj(celsius -> derated(thickness, level, celsius, percent)))
                        .isSortedAccordingTo(Collections.reverseOrder());
            }
        }
    }

    /** Up to a year: level 2 is capped there, where 2a may be unlimited. */
    @ParameterizedTest
    @EnumSource
    void aStricterLevelIsNeverLonger(DeratingClass thickness) {
        Life year = STANDARD.floorLife(Level.L2).value();
        for (int celsius : TEMPERATURES) {
            for (int percent : HUMIDITIES) {
                assertThat(LEVELS.stream()
                                .map(level -> Life.shorterOf(year, derated(thickness, level, celsius, percent))))
                        .isSortedAccordingTo(Collections.reverseOrder());
            }
        }
        assertThat(LEVELS.stream().map(level -> STANDARD.floorLife(level).value()))
                .isSortedAccordingTo(Collections.reverseOrder());
    }

    /** The two tables of the standard meet here: 7-1 is built around the floor life of 5-1. */
    @ParameterizedTest
    @MethodSource("levels")
    void theCellAt30C60PercentIsTheFloorLife(Level level) {
        for (DeratingClass thickness : DeratingClass.values()) {
            assertThat(derated(thickness, level, 30, 60))
                    .isEqualTo(STANDARD.floorLife(level).value());
        }
    }

    @ParameterizedTest
    @MethodSource("levels")
    void theShortestCellIsTheWarmestAndWettest(Level level) {
        for (DeratingClass thickness : DeratingClass.values()) {
            assertThat(STANDARD.shortestDerated(thickness, level).orElseThrow().value())
                    .isEqualTo(derated(thickness, level, 35, 90));
        }
    }

    @ParameterizedTest
    @MethodSource("levels")
    void aBakeIsNeverShorterWhenCoolerOrLaterOrThicker(Level level) {
        for (BakeColumn column : BakeColumn.values()) {
            for (BakeRow row : BakeRow.values()) {
                assertThat(Stream.of(125, 90, 40).map(celsius -> bake(row, level, celsius, column)))
                        .isSorted();
            }
            for (int celsius : new int[] {125, 90, 40}) {
                assertThat(Arrays.stream(BakeRow.values()).map(row -> bake(row, level, celsius, column)))
                        .isSorted();
            }
        }
        for (BakeRow row : BakeRow.values()) {
            for (int celsius : new int[] {125, 90, 40}) {
                assertThat(bake(row, level, celsius, BakeColumn.OVER_72H))
                        .isGreaterThanOrEqualTo(bake(row, level, celsius, BakeColumn.WITHIN_72H));
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void aStricterLevelNeverBakesShorter(BakeRow row) {
        for (BakeColumn column : BakeColumn.values()) {
            for (int celsius : new int[] {125, 90, 40}) {
                assertThat(LEVELS.stream().map(level -> bake(row, level, celsius, column)))
                        .isSorted();
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void theLargeRowIsNeverShorterThanAnyOther(BakeRow row) {
        List<Duration> all = new ArrayList<>();
        LEVELS.forEach(level -> all.add(bake(row, level, 125, BakeColumn.OVER_72H)));
        assertThat(all)
                .allSatisfy(time -> assertThat(time)
                        .isLessThanOrEqualTo(STANDARD.largeArrayBake().value()));
    }

    private static Duration bake(BakeRow row, Level level, int celsius, BakeColumn column) {
        return STANDARD.bake(row, level, celsius, column).value();
    }
}
