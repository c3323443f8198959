package bagclock.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Quantities refuse what cannot be; ranges are the project's own decision. */
class QuantitiesTest {
    @ParameterizedTest
    @ValueSource(doubles = {-60.1, 500.1, Double.NaN, Double.POSITIVE_INFINITY})
    void aTemperatureOutOfRangeIsRefused(double degrees) {
        assertThatIllegalArgumentException().isThrownBy(() -> new Celsius(degrees));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 100.1, Double.NaN})
    void aHumidityOutOfRangeIsRefused(double percent) {
        assertThatIllegalArgumentException().isThrownBy(() -> new RelativeHumidity(percent));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-1", "100.01"})
    void aLengthOutOfRangeIsRefused(String mm) {
        assertThatIllegalArgumentException().isThrownBy(() -> Millimetres.of(mm));
    }

    @Test
    void theEndsOfTheRangesAreInside() {
        assertThat(new Celsius(-60)).isLessThan(new Celsius(500));
        assertThat(new RelativeHumidity(0)).isLessThan(new RelativeHumidity(100));
        assertThat(Millimetres.of("100").isAbove(Millimetres.of("99.9"))).isTrue();
    }

    @Test
    void equalLengthsAreEqualHoweverTheyAreWritten() {
        assertThat(Millimetres.of("1.40")).isEqualTo(Millimetres.of("1.4"));
        assertThat(Millimetres.of("1.4").isAbove(Millimetres.of("1.40"))).isFalse();
    }

    @Test
    void theHotterCoolerAndWetterOfTwo() {
        Celsius warm = new Celsius(30);
        Celsius cool = new Celsius(20);

        assertThat(Celsius.hotterOf(cool, warm)).isEqualTo(warm);
        assertThat(Celsius.hotterOf(warm, cool)).isEqualTo(warm);
        assertThat(Celsius.coolerOf(cool, warm)).isEqualTo(cool);
        assertThat(Celsius.coolerOf(warm, cool)).isEqualTo(cool);
        assertThat(RelativeHumidity.wetterOf(new RelativeHumidity(40), new RelativeHumidity(50)))
                .isEqualTo(new RelativeHumidity(50));
        assertThat(RelativeHumidity.wetterOf(new RelativeHumidity(50), new RelativeHumidity(40)))
                .isEqualTo(new RelativeHumidity(50));
    }

    /** 70.1 is 60.1 + 10 and not more, though no binary fraction says so. */
    @Test
    void aMarginIsCountedInDecimals() {
        assertThat(new Celsius(70.1).exceedsBy(new Celsius(60.1), 10)).isFalse();
        assertThat(new Celsius(70.2).exceedsBy(new Celsius(60.1), 10)).isTrue();
    }

    /**
     * Against saturation vapour pressures over water of the WMO and steam tables: 0 C 611.2 Pa, 10 C 1228 Pa, 20 C
     * 2339 Pa, 26 C 3363 Pa, 30 C 4247 Pa.
     */
    @ParameterizedTest
    @CsvSource({"20, 20, 100", "20, 10, 52.5", "30, 20, 55.1", "30, 10, 28.9", "20, 0, 26.1", "30, 26, 79.2"})
    void humidityFollowsFromTheDewPoint(double celsius, double dew, double percent) {
        assertThat(DewPoint.humidity(new Celsius(celsius), new Celsius(dew)).percent())
                .isCloseTo(percent, within(0.2));
    }

    /** Over ice below 0 C, WMO No. 8, annex 4.B (from memory); at and above 0 C it is a dew point. */
    @ParameterizedTest
    @CsvSource({
        "25, -10, 8.224",
        "25, -20, 3.268",
        "25, -30, 1.203",
        "25, -40, 0.407",
        "25, 0, 19.341",
        "20, 10, 52.561"
    })
    void humidityFollowsFromTheFrostPoint(double celsius, double frost, double percent) {
        assertThat(DewPoint.humidityByFrost(new Celsius(celsius), new Celsius(frost))
                        .percent())
                .isCloseTo(percent, within(0.0006));
    }

    @Test
    void aFrostPointAboveTheTemperatureIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DewPoint.humidityByFrost(new Celsius(-20), new Celsius(-10)));
    }

    @Test
    void aDewPointAboveTheTemperatureIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> DewPoint.humidity(new Celsius(20), new Celsius(20.1)));
    }
}
