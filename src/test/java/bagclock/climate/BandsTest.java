package bagclock.climate;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.exposure.Air;
import bagclock.core.exposure.ZoneLog.Reading;
import bagclock.readings.HourBand;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class BandsTest {
    private static final Instant START = Instant.parse("2026-03-02T00:00:00Z");
    private static final Duration HOLDS = Duration.ofHours(2);
    private static final Plot.Range HUMIDITY = new Plot.Range(HourBand::driestPercent, HourBand::wettestPercent);
    private static final Plot.Words WORDS = new Plot.Words("h", "", "", " %", "limit");

    private static List<HourBand> minutes(int from, int to) {
        List<HourBand> bands = new ArrayList<>();
        for (int minute = from; minute < to; minute++) {
            Instant at = START.plus(Duration.ofMinutes(minute));
            bands.add(HourBand.of(new Reading(at, Air.of(22, minute == 700 ? 71 : 40 + minute % 3))));
        }
        return bands;
    }

    private static Curve draw(List<HourBand> bands) {
        return new Plot(START, START.plus(Duration.ofDays(1)), HOLDS, ZoneId.of("UTC"))
                .draw(bands, HUMIDITY, OptionalDouble.empty(), WORDS);
    }

    @Test
    void aFewReadingsAreALine() {
        Curve curve = draw(minutes(0, 100));

        assertThat(curve.lines()).hasSize(1);
        assertThat(curve.bands()).isEmpty();
    }

    @Test
    void manyReadingsAreABandThatLosesNoPeakAndNoGap() {
        List<HourBand> all = new ArrayList<>(minutes(0, 800));
        all.addAll(minutes(1000, 1440));
        Curve curve = draw(all);
        List<HourBand> fewer = Bands.atMost(100, all, START, START.plus(Duration.ofDays(1)), HOLDS);

        assertThat(curve.lines()).isEmpty();
        assertThat(curve.bands()).hasSize(2);
        assertThat(curve.gaps()).hasSize(1);
        assertThat(fewer).hasSizeBetween(80, 101);
        assertThat(HUMIDITY.most(fewer)).isEqualTo(71);
        assertThat(HUMIDITY.least(fewer)).isEqualTo(40);
    }

    @Test
    void aGapWithinOnePieceBeginsAnotherBand() {
        List<HourBand> all = new ArrayList<>(minutes(0, 730));
        all.addAll(minutes(861, 1440));

        assertThat(Bands.atMost(10, all, START, START.plus(Duration.ofDays(1)), HOLDS))
                .hasSize(11);
    }
}
