package bagclock.core.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Air and its readings. J-STD-020, table 5-1: floor life holds at or below 30 C / 60 %RH. */
class AirTest {
    private static final Instant START = Instant.parse("2026-03-02T00:00:00Z");

    @ParameterizedTest
    @CsvSource({"30, 60, false", "30.1, 20, true", "20, 60.1, true", "31, 70, true"})
    void aboveTheLimitIsWarmerOrWetter(double celsius, double percent, boolean above) {
        assertThat(Air.of(celsius, percent).isAbove3060()).isEqualTo(above);
    }

    @Test
    void theHarsherOfBothTakesEachValueByItself() {
        assertThat(Air.of(25, 40).harsherOf(Air.of(20, 50))).isEqualTo(Air.of(25, 50));
        assertThat(Air.of(25, 50).harsherOf(Air.of(20, 40))).isEqualTo(Air.of(25, 50));
        assertThat(Air.of(20, 40).harsherOf(Air.of(25, 50))).isEqualTo(Air.of(25, 50));
    }

    @Test
    void readingsAscendInTime() {
        ZoneLog.Reading first = new ZoneLog.Reading(START, Air.of(20, 40));
        ZoneLog.Reading earlier = new ZoneLog.Reading(START.minusMillis(1), Air.of(20, 40));

        assertThatIllegalArgumentException().isThrownBy(() -> ZoneLog.of(List.of(first, first)));
        assertThatIllegalArgumentException().isThrownBy(() -> ZoneLog.of(List.of(first, earlier)));
        assertThat(ZoneLog.of(List.of(earlier, first)).size()).isEqualTo(2);
    }

    @Test
    void aLogUpToAMomentKeepsTheReadingsUpToIt() {
        ZoneLog log = ZoneLog.of(List.of(
                new ZoneLog.Reading(START, Air.of(20, 40)),
                new ZoneLog.Reading(START.plusMillis(10), Air.of(22, 30)),
                new ZoneLog.Reading(START.plusMillis(20), Air.of(21, 60))));
        long start = START.toEpochMilli();

        assertThat(log.upTo(start + 10).size()).isEqualTo(2);
        assertThat(log.upTo(start - 1).size()).isZero();
        assertThat(log.upTo(start + 20)).isSameAs(log);
        assertThat(log.harshestSince(start + 10)).contains(Air.of(22, 60));
        assertThat(log.harshestSince(start)).contains(Air.of(22, 60));
        assertThat(log.harshestSince(start + 11)).contains(Air.of(21, 60));
        assertThat(log.harshestSince(start + 21)).isEmpty();
    }

    /** A zone's own worst case goes before the site's. */
    @Test
    void aZonesOwnWorstCaseGoesBeforeTheSites() {
        Zone store = new Zone("store");
        ClimateLog climate = new ClimateLog(Map.of(), Map.of(store, Air.of(20, 30)), Optional.of(Air.of(25, 50)));

        assertThat(climate.declaredFor(Optional.of(store))).contains(Air.of(20, 30));
        assertThat(climate.declaredFor(Optional.of(new Zone("bench")))).contains(Air.of(25, 50));
        assertThat(climate.declaredFor(Optional.empty())).contains(Air.of(25, 50));
        assertThat(ClimateLog.declared(Air.of(1, 2)).worstCase()).contains(Air.of(1, 2));
        assertThat(ClimateLog.NONE.declaredFor(Optional.of(store))).isEmpty();
    }
}
