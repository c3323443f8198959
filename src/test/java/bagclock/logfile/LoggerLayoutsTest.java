package bagclock.logfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

/**
 * Layouts that loggers are known to write, with other values: each test names what kind of source showed the layout.
 * Units, zones and orders that a file leaves open must be asked.
 */
@SuppressWarnings("StringConcatToTextBlock") // line ends and tabs are what is tested
class LoggerLayoutsTest {
    private static final String BOM = "\uFEFF";
    private static final Answers NONE = Answers.NONE;
    private static final Answers UTC = NONE.in(ZoneId.of("UTC"));
    private static final Answers BERLIN = NONE.in(ZoneId.of("Europe/Berlin"));

    /** Desktop export of a widely used data logger, seen in public data files. */
    @Test
    void aTitleAnOffsetInTheHeaderTwelveHoursAndFahrenheit() {
        String text = BOM + """
                "Plot Title: Cabinet A"
                "#","Date Time, GMT-07:00","Temp, °F (LGR S/N: 000000)","RH, % (LGR S/N: 000000)","Batt, V (LGR S/N: 000000)","Coupler Detached (LGR S/N: 000000)"
                1,01/13/25 01:00:00 AM,71.440,39.640,3.49,Logged
                2,01/13/25 02:00:00 AM,71.390,102.928,3.49,
                """.replace("\n", "\r\n");
        Read read = Read.of(text, NONE);

        assertThat(read.channels()).containsExactly("TEMPERATURE", "HUMIDITY");
        assertThat(read.samples())
                .containsExactly("2025-01-13T08:00:00Z 21.91 39.64", "2025-01-13T09:00:00Z 21.88 100.00");
        assertThat(read.report().clipped()).isEqualTo(1);
    }

    /** Export of the same family's telephone app, seen in public data files. */
    @Test
    void aSerialLineEventRowsAndATrailingComma() {
        String text = "Serial Number:00000000 --\n\n"
                + "Date Time - GMT +05:00,\"Temp, (*F)\",\"RH, (%)\",\"DewPt, (*F)\",Host Connect,Button Down,EOF,\n"
                + "2025-05-03 08:08:23,74.23,35.10,49.88, , , ,\r\n"
                + "2025-05-03 08:10:03, , , ,Logged, , ,\r\n";
        Read read = Read.of(text, NONE);

        assertThat(read.channels()).containsExactly("TEMPERATURE", "HUMIDITY", "DEW_POINT");
        assertThat(read.samples()).containsExactly("2025-05-03T03:08:23Z 23.46 35.10 9.93");
        assertThat(read.report().withoutValue()).isEqualTo(1);
    }

    /** The offset of that app's header contradicted the desktop export: a person's word wins over it. */
    @Test
    void whatAPersonSaysWinsOverTheHeadersOffset() {
        String text = "Date Time - GMT +05:00,\"Temp, (*F)\",\"RH, (%)\"\n2025-05-03 08:08:23,74.23,35.10\n";

        assertThat(Read.of(text, NONE.in(ZoneId.of("-05:00"))).samples())
                .containsExactly("2025-05-03T13:08:23Z 23.46 35.10");
    }

    /** An older program of the same family, seen in public data files. */
    @Test
    void tabsTenthsOfSecondsAndTwoTemperatures() {
        String text = "Date Time\tTemperature (*C) c:1\tHigh-Res Temp (*C) c:1 2\tRH (%) c:3\n"
                + "07/07/25 10:45:40.0\t26.34\t26.22\t48.3\n"
                + "07/13/25 10:45:40.5\t26.34\t26.22\t104\n";
        Read read = Read.of(text, UTC);

        assertThat(read.layout().open(NONE)).containsExactly(Question.ZONE);
        assertThat(read.channels()).containsExactly("TEMPERATURE", "TEMPERATURE", "HUMIDITY");
        assertThat(read.samples())
                .containsExactly(
                        "2025-07-07T10:45:40Z 26.34 26.22 48.30", "2025-07-13T10:45:40.500Z 26.34 26.22 100.00");
    }

    /** A logger in the shape of a memory stick: the first header cell is the user's name for it. */
    @Test
    void aUsersNameInTheHeaderAndLatinDegrees() {
        String text = "Temp store B,Time,Celsius(°C),Humidity(%rh),Dew Point(°C),Serial Number\r\n"
                + "1,29/07/2025 12:58:03,21.0,38.5,6.3,000000000\r\n2,29/07/2025 13:28:03,21.0,38.5,6.3\r\n";
        for (String degree : new String[] {"°", "º", "*", "?", ""}) {
            Read read = Read.of(text.replace("°", degree), Charset.forName("windows-1252"), UTC);

            assertThat(read.channels()).containsExactly("TEMPERATURE", "HUMIDITY", "DEW_POINT");
            assertThat(read.samples())
                    .containsExactly("2025-07-29T12:58:03Z 21.00 38.50 6.30", "2025-07-29T13:28:03Z 21.00 38.50 6.30");
        }
    }

    /** A household sensor's app. */
    @Test
    void proseInTheTimesHeaderAndAUnitInTheHeaderOnly() {
        String text = BOM + """
                Timestamp for sample frequency every 15 min min, Temperature_Celsius,Relative_Humidity
                2026-08-06 09:22:00,24.6,53.7
                2026-08-06 09:37:00,20,63.4
                """;
        Read read = Read.of(text, BERLIN);

        assertThat(read.samples())
                .containsExactly("2026-08-06T07:22:00Z 24.60 53.70", "2026-08-06T07:37:00Z 20.00 63.40");
    }

    /** Four header lines of a scientific logger; the mark of a missing value is from memory. */
    @Test
    void fourHeaderLinesAndNan() {
        String text = """
                "TOA5","Stn","CR1000","0000","OS","CPU:x.CR1","0000","Tab"
                "TIMESTAMP","RECORD","AirTC_Avg","RH"
                "TS","RN","Deg C","%"
                "","","Avg","Smp"
                "2025-11-11 15:03:45",0,24.92,41.2
                "2025-11-11 15:04:45",1,"NAN",41.2
                """;
        Read read = Read.of(text, UTC);

        assertThat(read.channels()).containsExactly("TEMPERATURE", "HUMIDITY");
        assertThat(read.samples()).containsExactly("2025-11-11T15:03:45Z 24.92 41.20", "2025-11-11T15:04:45Z - 41.20");
    }

    /** History of a house's automation: one line for each change of each sensor. */
    @Test
    void oneLineForEachChange() {
        String text = """
                entity_id,state,last_changed
                sensor.cabinet_humidity,4.8,2025-12-26T18:00:00.000Z
                sensor.cabinet_temperature,22.1,2025-12-26T18:01:00.000Z
                sensor.cabinet_humidity,unavailable,2025-12-26T18:10:00.000Z
                sensor.cabinet_humidity,4.9,2025-12-26T18:20:00.250Z
                """;
        Read read = Read.of(text, NONE.with(Channel.Unit.CELSIUS));

        assertThat(read.layout().open(NONE)).containsExactly(Question.UNIT);
        assertThat(read.layout().table().isOneValueALine()).isTrue();
        assertThat(read.report().times().gapCount()).isZero();
        assertThat(read.layout().channels().stream().map(Channel::name))
                .containsExactly("sensor.cabinet_humidity", "sensor.cabinet_temperature");
        assertThat(read.samples())
                .containsExactly(
                        "2025-12-26T18:00:00Z 4.80 -",
                        "2025-12-26T18:01:00Z - 22.10",
                        "2025-12-26T18:20:00.250Z 4.90 -");
    }

    /** Spreadsheet style of German-speaking countries. */
    @Test
    void semicolonsDecimalCommasAndDateAndTimeApart() {
        String text = "Datum;Uhrzeit;Temperatur °C;Feuchte;\r\n03.11.2025;09:15:00;22,4;38,7;\r\n";
        Read read = Read.of(text, Charset.forName("windows-1252"), BERLIN);

        assertThat(Read.layout(text.replace(" °C", "")).open(BERLIN)).containsExactly(Question.UNIT);
        assertThat(read.samples()).containsExactly("2025-11-03T08:15:00Z 22.40 38.70");
    }

    /** Open map of sensors: one file for each quantity, which the file does not name. */
    @Test
    void oneFileForEachQuantity() {
        String text = "\"createdAt\",\"value\"\n\"2025-02-07T00:01:38.561Z\",\"19.38\"\n";
        Answers.Names names = new Answers.Names(java.util.Optional.of("value"), java.util.Optional.empty());

        assertThat(Read.layout(text).open(NONE)).containsExactly(Question.CHANNELS, Question.UNIT);
        assertThat(Read.of(text, NONE.with(Channel.Unit.CELSIUS).with(names)).samples())
                .containsExactly("2025-02-07T00:01:38.561Z 19.38");
    }

    /** Script on a small device; the same layout, not sorted and with offsets, from a survey's tool. */
    @Test
    void noUnitNoZoneAndTwoTemperatures() {
        String text = "Time,Temp from Hum-Sensor,Temp from Pres-Sensor\n2025-03-30 19:06:02, 23.651, 23.912\n";
        String unsorted = "Time,Temp C\n2025-03-30 19:06:02+02:00,23.6\n2025-03-30 18:06:02+02:00,23.1\n"
                + "2025-03-30 18:36:02+02:00,23.2\n";

        assertThat(Read.layout(text).open(NONE)).containsExactly(Question.UNIT, Question.ZONE);
        assertThat(Read.of(text, BERLIN.with(Channel.Unit.CELSIUS)).channels())
                .containsExactly("TEMPERATURE", "TEMPERATURE");
        assertThat(Read.of(unsorted, NONE).samples().get(2)).isEqualTo("2025-03-30T16:36:02Z 23.20");
        assertThat(Read.of(unsorted, NONE).report().times().backwards()).isEqualTo(1);
    }

    /** Logger of a machine's controller: seven header lines, date and time apart. */
    @Test
    void sevenHeaderLines() {
        String text = """
                LOG00
                No.1
                Date,Time,D1,D2
                ,,Temp,Humid
                ,,DT10,DT12
                ,,DEC,DEC
                ,,C,%
                2025/01/21,14:55:30,22.5,41
                2025/01/21,14:56:30,22.6,42
                """;
        Read read = Read.of(text, UTC);

        assertThat(read.channels()).containsExactly("TEMPERATURE", "HUMIDITY");
        assertThat(read.samples())
                .containsExactly("2025-01-21T14:55:30Z 22.50 41.00", "2025-01-21T14:56:30Z 22.60 42.00");
    }

    /** Columns that stand beside the two that count in exports of weather stations and telephone apps; from memory. */
    @Test
    void whatOnlySoundsLikeTemperatureOrHumidityIsNeither() {
        String text = """
                Time,Relay,Elapsed (hr),Relative pressure (hPa),Absolute humidity (g/m³),VPD (kPa),Wet bulb temp (°C),temperature_C,rh_percent
                2025-01-21T14:55:30Z,1,0.25,1013,8.1,1.2,14.2,22.5,41
                2025-01-21T14:56:30Z,0,0.27,1013,8.2,1.2,14.3,22.6,42
                """;
        Read read = Read.of(text, NONE);

        assertThat(read.channels()).containsExactly("TEMPERATURE", "HUMIDITY");
        assertThat(read.samples())
                .containsExactly("2025-01-21T14:55:30Z 22.50 41.00", "2025-01-21T14:56:30Z 22.60 42.00");
        assertThat(read.faults()).isEmpty();
    }

    /** A maker's board writes times in whichever way its user chose. */
    @Test
    void timesInManyWays() {
        assertThat(first("1737471330", NONE)).isEqualTo("2025-01-21T14:55:30Z");
        assertThat(first("1737471330250", NONE)).isEqualTo("2025-01-21T14:55:30.250Z");
        assertThat(first("01-21-2025 14:55:30", UTC)).isEqualTo("2025-01-21T14:55:30Z");
        assertThat(first("21-01-2025 14:55:30", UTC)).isEqualTo("2025-01-21T14:55:30Z");
        assertThat(first("2025-01-21T14:55:30", UTC)).isEqualTo("2025-01-21T14:55:30Z");
        assertThat(first("2025-01-21T14:55:30.5+01:00", NONE)).isEqualTo("2025-01-21T13:55:30.500Z");
        assertThat(first("2025-W04-2T14:55:30", UTC)).isEqualTo("2025-01-21T14:55:30Z");
    }

    private static String first(String time, Answers answers) {
        return Read.of("time,temperature_C\n" + time + ",22.5\n", answers)
                .samples()
                .get(0)
                .split(" ")[0];
    }

    /** Milliseconds since the logger's start have no date in them. */
    @Test
    void millisecondsSinceTheStartAreNoTime() throws Exception {
        byte[] text = "time,temperature_C\n600000,22.5\n660000,22.5\n".getBytes(StandardCharsets.UTF_8);

        assertThat(LayoutFinder.find(LogSource.of(text))).isEmpty();
    }

    /** On request only: else any number could be a date. */
    @Test
    void aSpreadsheetsDays() {
        String text = "Time;Temp °C\n45678,5;22,5\n45678,75;22,6\n";

        assertThat(Read.layout(text).open(UTC)).containsExactly(Question.SPREADSHEET_DAYS);
        assertThat(Read.of(text, UTC.withSpreadsheetDays()).samples())
                .containsExactly("2025-01-21T12:00:00Z 22.50", "2025-01-21T18:00:00Z 22.60");
    }

    @Test
    void utf16WithItsMarkAndOldLineEnds() {
        String text = "Time\tTemp °C\r2025-01-21 14:55:30\t22,5\r2025-01-21 14:56:30\t22.6\r";

        assertThat(Read.of((BOM + text).getBytes(StandardCharsets.UTF_16LE), UTC)
                        .samples())
                .containsExactly("2025-01-21T14:55:30Z 22.50", "2025-01-21T14:56:30Z 22.60");
        assertThat(Read.of(text, StandardCharsets.UTF_16, UTC).samples()).hasSize(2);
    }
}
