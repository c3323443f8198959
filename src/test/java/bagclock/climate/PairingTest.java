package bagclock.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bagclock.core.exposure.Air;
import bagclock.core.exposure.ZoneLog.Reading;
import bagclock.logfile.Channel.Kind;
import bagclock.readings.LoggerProfile.BelowZero;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Temperatures and humidities of two files put together; times are minutes. */
class PairingTest {
    private static final Duration HOLD = Duration.ofHours(2);

    private final List<Reading> readings = new ArrayList<>();

    private static Series series(int apartMinutes, double... minutesAndValues) {
        List<Series.Sample> samples = new ArrayList<>();
        for (int i = 0; i < minutesAndValues.length; i += 2) {
            double value = minutesAndValues[i + 1];
            samples.add(new Series.Sample(i / 2 + 2, Math.round(minutesAndValues[i] * 60_000), value, value));
        }
        return Series.of(samples, Duration.ofMinutes(apartMinutes));
    }

    private Pairing.Found pair(Series temperatures, Series humidities) {
        return pair(HumidityOf.of(Kind.HUMIDITY, BelowZero.UNKNOWN), temperatures, humidities);
    }

    private Pairing.Found pair(HumidityOf kind, Series temperatures, Series humidities) {
        return new Pairing(kind, HOLD, (line, reading) -> readings.add(reading)).of(temperatures, humidities);
    }

    private static Reading at(double minute, double celsius, double percent) {
        return new Reading(Instant.ofEpochMilli(Math.round(minute * 60_000)), Air.of(celsius, percent));
    }

    @Test
    void valuesOfTheSameTimesArePairedAsTheyAre() {
        Pairing.Found found = pair(series(10, 5, 21, 0, 20, 10, 22), series(10, 0, 40, 5, 41, 10, 42));

        assertThat(readings).containsExactly(at(0, 20, 40), at(5, 21, 41), at(10, 22, 42));
        assertThat(found.paired()).isEqualTo(3);
        assertThat(found.spells()).isEmpty();
        assertThat(found.span().orElseThrow().last()).isEqualTo(Instant.ofEpochMilli(600_000));
    }

    @Test
    void betweenTwoTimesTheHarsherOfBothCountsAndNeverAMean() {
        Pairing.Found found = pair(series(10, 0, 20, 5, 30, 10, 22), series(10, 2, 40, 7, 50, 12, 41));

        assertThat(readings).containsExactly(at(2, 30, 40), at(5, 30, 50), at(7, 30, 50), at(10, 22, 50));
        assertThat(found.temperaturesAlone()).isEqualTo(1);
        assertThat(found.humiditiesAlone()).isEqualTo(1);
    }

    @Test
    void ofDifferentIntervalsNoPeakIsLost() {
        pair(series(120, 0, 20, 60, 21), series(20, 0, 40, 10, 40, 20, 75, 30, 40, 40, 40, 50, 40, 60, 40));

        assertThat(readings).hasSize(7).contains(at(20, 21, 75), at(60, 21, 40));
    }

    @Test
    void inAGapNothingIsPairedButTheNextReadingIsNoMilderThanWhatStoodAlone() {
        Pairing.Found found = pair(series(10, 0, 20, 5, 36, 50, 21, 90, 20, 95, 20), series(10, 0, 40, 90, 41, 95, 42));

        assertThat(readings).containsExactly(at(0, 20, 40), at(90, 36, 41), at(95, 20, 42));
        assertThat(found.spells())
                .containsExactly(new Pairing.Spell(
                        Kind.TEMPERATURE, Instant.ofEpochMilli(300_000), Instant.ofEpochMilli(3_000_000), 2));
    }

    @Test
    void whatStoodAloneAfterTheReadingCeasedToHoldIsNamedOnly() {
        pair(series(10, 0, 20, 121, 36, 200, 20), series(10, 0, 40, 200, 41));

        assertThat(readings).containsExactly(at(0, 20, 40), at(200, 20, 41));
    }

    @Test
    void behindTheLastReadingAPeakCountsInIt() {
        Pairing.Found found = pair(series(10, -5, 39, 0, 20, 5, 20), series(10, 0, 40, 5, 41, 10, 70));

        assertThat(readings).containsExactly(at(0, 20, 40), at(5, 20, 70));
        assertThat(found.temperaturesAlone()).isEqualTo(1);
        assertThat(found.humiditiesAlone()).isEqualTo(1);
    }

    @Test
    void ofTwoValuesAtOneTimeTheHarsherCounts() {
        pair(series(10, 0, 20, 0, 23), series(10, 0, 45, 0, 40));

        assertThat(readings).containsExactly(at(0, 23, 45));
    }

    @Test
    void withoutACommonTimeThereIsNoReading() {
        Pairing.Found found = pair(series(10, 0, 20, 5, 20), series(10, 100, 40));

        assertThat(readings).isEmpty();
        assertThat(found.span()).isEmpty();
        assertThat(found.temperaturesAlone()).isEqualTo(2);
        assertThat(pair(series(10), series(10)).paired()).isZero();
    }

    /** 25 C with a dew point of 10 C is 38.80 %RH: WMO No. 8, annex 4.B. The colder temperature gives the wetter air. */
    @Test
    void aDewPointCountsWithTheColderOfBothTemperatures() {
        HumidityOf dew = HumidityOf.of(Kind.DEW_POINT, BelowZero.UNKNOWN);
        pair(dew, series(10, 0, 25, 5, 27), series(10, 0, 10, 2, 10, 5, 30));

        assertThat(readings).hasSize(2);
        assertThat(readings.get(1).at()).isEqualTo(Instant.ofEpochMilli(120_000));
        assertThat(readings.get(1).air().temperature().degrees()).isEqualTo(27);
        assertThat(readings.get(1).air().humidity().percent()).isCloseTo(38.80, within(0.02));
    }

    /** At every moment that counts as read, what counts is no milder than what either file says of it. */
    @Test
    void noReadingIsMilderThanItsNeighboursInEitherFile() {
        SplittableRandom random = new SplittableRandom(11);
        for (int round = 0; round < 200; round++) {
            readings.clear();
            Series temperatures = random(random, 10 + random.nextInt(20), 15, 40);
            Series humidities = random(random, 10 + random.nextInt(20), 5, 90);
            pair(temperatures, humidities);

            for (int i = 0; i + 1 < readings.size(); i++) {
                Air counts = readings.get(i).air().harsherOf(readings.get(i + 1).air());
                long from = readings.get(i).at().toEpochMilli();
                long to = Math.min(readings.get(i + 1).at().toEpochMilli(), from + HOLD.toMillis());
                assertThat(inside(temperatures, from, to))
                        .allMatch(value -> value <= counts.temperature().degrees());
                assertThat(inside(humidities, from, to))
                        .allMatch(value -> value <= counts.humidity().percent());
            }
        }
    }

    private static Series random(SplittableRandom random, int size, double least, double most) {
        double[] samples = new double[2 * size];
        double minute = 0;
        for (int i = 0; i < size; i++) {
            minute += random.nextInt(8) == 0 ? random.nextInt(300) : 1 + random.nextInt(9);
            samples[2 * i] = minute;
            samples[2 * i + 1] = random.nextDouble(least, most);
        }
        return series(20, samples);
    }

    private static Stream<Double> inside(Series series, long fromMs, long toMs) {
        return series.samples().stream()
                .filter(sample -> sample.atMs() >= fromMs && sample.atMs() <= toMs)
                .map(Series.Sample::highest);
    }
}
