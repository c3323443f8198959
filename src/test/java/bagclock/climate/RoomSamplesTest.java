package bagclock.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bagclock.core.exposure.Air;
import bagclock.core.exposure.Zone;
import bagclock.core.exposure.ZoneLog.Reading;
import bagclock.logfile.Answers;
import bagclock.logfile.Channel;
import bagclock.logfile.LogSource;
import bagclock.readings.LoggerProfile.BelowZero;
import bagclock.readings.ZoneReading;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;

class RoomSamplesTest {
    private static final Answers UTC = Answers.NONE.in(ZoneId.of("UTC")).with(Channel.Unit.CELSIUS);

    private static Preview preview(String text, BelowZero below) {
        return Preview.of(LogSource.of(text.getBytes(StandardCharsets.UTF_8)), UTC, below)
                .orElseThrow();
    }

    private static double percent(double dewPoint, BelowZero below) {
        String text = "Time,Temp °C,Dew point °C\n2026-03-01 10:00,25," + dewPoint + "\n";
        return preview(text, below).first().get(0).air().humidity().percent();
    }

    /** WMO No. 8, annex 4.B over water; the coefficients over ice are from memory. */
    @Test
    void dewAndFrostPointsStandForHumidity() {
        assertThat(percent(10, BelowZero.UNKNOWN)).isCloseTo(38.80, within(0.02));
        assertThat(percent(-20, BelowZero.UNKNOWN)).isCloseTo(3.99, within(0.02));
        assertThat(percent(-20, BelowZero.DEW_POINT)).isCloseTo(3.99, within(0.02));
        assertThat(percent(-20, BelowZero.FROST_POINT)).isCloseTo(3.27, within(0.02));
        assertThat(percent(-40, BelowZero.DEW_POINT)).isCloseTo(0.60, within(0.01));
        assertThat(percent(-40, BelowZero.FROST_POINT)).isCloseTo(0.41, within(0.01));
        assertThat(percent(10, BelowZero.FROST_POINT)).isCloseTo(38.80, within(0.02));
    }

    @Test
    void humidityGoesBeforeADewPointAndADewPointAboveTheTemperatureIsNoValue() {
        String both = "Time,Temp °C,RH %,Dew point °C\n2026-03-01 10:00,25,40,10\n";
        String wrong = "Time,Temp °C,Dew point °C\n2026-03-01 10:00,25,26\n2026-03-01 10:01,25,25.1\n";

        assertThat(preview(both, BelowZero.UNKNOWN).first().get(0).air()).isEqualTo(Air.of(25, 40));
        assertThat(preview(wrong, BelowZero.UNKNOWN).incomplete()).isEqualTo(1);
        assertThat(preview(wrong, BelowZero.UNKNOWN).first().get(0).air()).isEqualTo(Air.of(25, 100));
    }

    @Test
    void aFileOfChangesHoldsValuesForAnHour() {
        String text = """
                entity_id,state,last_changed
                sensor.room_humidity,44,2026-03-01T10:30:00Z
                sensor.room_temperature,22,2026-03-01T10:00:00Z
                sensor.room_humidity,45,2026-03-01T11:00:00Z
                sensor.room_humidity,46,2026-03-01T11:00:01Z
                sensor.room_temperature,23,2026-03-01T11:10:00Z
                """;
        Preview preview = preview(text, BelowZero.UNKNOWN);

        assertThat(preview.first())
                .containsExactly(
                        new Reading(Instant.parse("2026-03-01T10:30:00Z"), Air.of(22, 44)),
                        new Reading(Instant.parse("2026-03-01T11:00:00Z"), Air.of(22, 45)),
                        new Reading(Instant.parse("2026-03-01T11:10:00Z"), Air.of(23, 46)));
        assertThat(preview.incomplete()).isEqualTo(2);
    }

    /** As the history of a house's automation says it. */
    @Test
    void whatASensorSaidBeforeItWasGoneHoldsNoLonger() {
        String text = """
                entity_id,state,last_changed
                sensor.room_humidity,4.8,2026-03-01T10:00:00Z
                sensor.room_temperature,22,2026-03-01T10:01:00Z
                sensor.room_humidity,unavailable,2026-03-01T10:10:00Z
                sensor.room_temperature,23,2026-03-01T10:20:00Z
                sensor.room_humidity,61,2026-03-01T10:30:00Z
                """;
        Preview preview = preview(text, BelowZero.UNKNOWN);

        assertThat(preview.first())
                .containsExactly(
                        new Reading(Instant.parse("2026-03-01T10:01:00Z"), Air.of(22, 4.8)),
                        new Reading(Instant.parse("2026-03-01T10:30:00Z"), Air.of(23, 61)));
        assertThat(preview.incomplete()).isEqualTo(2);
    }

    @Test
    void twoReadingsOfOneTimeAreKeptSideBySide() {
        Instant at = Instant.parse("2026-03-01T10:00:00Z");
        List<ZoneReading> lines =
                List.of(line(at, 22, 1), line(at, 23, 2), line(at, 22, 3), line(at.minusSeconds(1), 21, 4));

        assertThat(Import.apart(lines))
                .extracting(line -> line.reading().at().toString(), ZoneReading::line)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("2026-03-01T09:59:59Z", 4L),
                        org.assertj.core.groups.Tuple.tuple("2026-03-01T10:00:00Z", 1L),
                        org.assertj.core.groups.Tuple.tuple("2026-03-01T10:00:00.001Z", 2L),
                        org.assertj.core.groups.Tuple.tuple("2026-03-01T10:00:00Z", 3L));
    }

    private static ZoneReading line(Instant at, double celsius, long line) {
        return new ZoneReading(new Zone("Z"), new Reading(at, Air.of(celsius, 40)), line);
    }
}
