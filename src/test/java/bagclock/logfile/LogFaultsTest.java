package bagclock.logfile;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.logfile.LogFault.Kind;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

/** What goes wrong in files of loggers; faults that public data files and projects' error reports show. */
@SuppressWarnings("StringConcatToTextBlock") // each line stands for itself
class LogFaultsTest {
    private static final String HEAD = "Time,Temp °C,RH %\n";
    private static final Answers UTC = Answers.NONE.in(ZoneId.of("UTC"));
    private static final Answers BERLIN = Answers.NONE.in(ZoneId.of("Europe/Berlin"));

    private static Read read(Answers answers, String... lines) {
        return Read.of(HEAD + String.join("\n", lines) + "\n", answers);
    }

    /** A decimal comma in a file with commas, as an import of power meters' data met it. */
    @Test
    void aDecimalCommaInAFileWithCommasIsNeverMisread() {
        Read read = read(UTC, "2025-01-01 10:00,22.4,40", "2025-01-01 10:01,22,4,40", "2025-01-01 10:02,\"22,4\",40");

        assertThat(read.samples())
                .containsExactly("2025-01-01T10:00:00Z 22.40 40.00", "2025-01-01T10:02:00Z 22.40 40.00");
        assertThat(read.report().faults())
                .containsExactly(new LogFault(3, "", Kind.TOO_MANY_CELLS, "2025-01-01 10:01 | 22 | 4 | 40"));
    }

    /** A thousands mark, as an import of energy monitors' data met it. */
    @Test
    void thousandsMarksAreRefused() {
        Read read = read(
                UTC, "2025-01-01 10:00,22.4,40", "2025-01-01 10:01,\"1,022\",40", "2025-01-01 10:02,\"1.022,5\",40");

        assertThat(read.samples().get(1)).isEqualTo("2025-01-01T10:01:00Z - 40.00");
        assertThat(read.faults()).containsExactly(Kind.NUMBER_UNREADABLE, Kind.NUMBER_UNREADABLE);
    }

    @Test
    void marksOfASilentSensorAreMissingValues() {
        for (String mark :
                new String[] {"", "NAN", "NaN", "-", "---", "unavailable", "Err", "-99", "-999", "-999.00"}) {
            Read read = read(UTC, "2025-01-01 10:00,22.4,40", "2025-01-01 10:01," + mark + "," + mark);

            assertThat(read.samples()).as(mark).hasSize(1);
            assertThat(read.report().withoutValue()).isEqualTo(1);
            assertThat(read.faults()).isEmpty();
        }
    }

    @Test
    void whatNoSensorCanMeanIsFlaggedAndNotUsed() {
        Read read = read(
                UTC,
                "2025-01-01 10:00,86,40",
                "2025-01-01 10:01,22,105",
                "2025-01-01 10:02,22,105.5",
                "2025-01-01 10:03,-41,-1");

        assertThat(read.samples())
                .containsExactly(
                        "2025-01-01T10:00:00Z - 40.00",
                        "2025-01-01T10:01:00Z 22.00 100.00",
                        "2025-01-01T10:02:00Z 22.00 -");
        assertThat(read.faults())
                .containsExactly(Kind.OUT_OF_RANGE, Kind.OUT_OF_RANGE, Kind.OUT_OF_RANGE, Kind.OUT_OF_RANGE);
        assertThat(read.report().clipped()).isEqualTo(1);
    }

    @Test
    void aLineThatIsNoTimeIsNamed() {
        Read read = read(
                UTC, "2025-01-01 10:00,22,40", "2025-02-30 10:00,22,40", "end of file,,", "2025-01-01 25:00,22,40");

        assertThat(read.report().faults())
                .extracting(LogFault::line, LogFault::kind)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(3L, Kind.TIME_UNREADABLE),
                        org.assertj.core.groups.Tuple.tuple(4L, Kind.TIME_UNREADABLE),
                        org.assertj.core.groups.Tuple.tuple(5L, Kind.TIME_UNREADABLE));
    }

    @Test
    void theOrderOfDayAndMonthIsFoundInTheWholeFileOrAsked() {
        String text = "Time;Temp °C\n03/04/2025 10:00;22\n" + "04/04/2025 10:00;22\n".repeat(100);

        assertThat(Read.layout(text).open(UTC)).containsExactly(Question.DAY_ORDER);
        assertThat(Read.of(text, UTC.with(DayOrder.DAY_FIRST)).samples().get(0)).startsWith("2025-04-03T10:00");
        assertThat(Read.of(text, UTC.with(DayOrder.MONTH_FIRST)).samples().get(0))
                .startsWith("2025-03-04T10:00");
        assertThat(Read.of(text + "13/04/2025 10:00;22\n", UTC).samples().get(0))
                .startsWith("2025-04-03T10:00");
        assertThat(Read.of(text + "04/13/2025 10:00;22\n", UTC).samples().get(0))
                .startsWith("2025-03-04T10:00");
        assertThat(Read.layout(text + "13/04/2025 10:00;22\n04/13/2025 10:00;22\n")
                        .open(UTC))
                .containsExactly(Question.DAY_ORDER);
    }

    /** Local time without a zone: in autumn one hour is there twice. */
    @Test
    void theDoubledHourIsToldApartByTheOrderOfTheLines() {
        String[] lines = {
            "2025-10-26 01:30,22,40", "2025-10-26 02:00,22,40", "2025-10-26 02:30,22,40",
            "2025-10-26 02:00,22,40", "2025-10-26 02:30,22,40", "2025-10-26 03:00,22,40"
        };
        Read read = read(BERLIN, lines);
        java.util.Collections.reverse(java.util.Arrays.asList(lines));

        assertThat(read.samples().stream().map(line -> line.substring(11, 16)))
                .containsExactly("23:30", "00:00", "00:30", "01:00", "01:30", "02:00");
        assertThat(read.report().unclear()).isEmpty();
        assertThat(read(BERLIN, lines).samples().stream().map(line -> line.substring(11, 16)))
                .containsExactly("02:00", "01:30", "01:00", "00:30", "00:00", "23:30");
    }

    @Test
    void aDoubledHourThatIsThereOnceIsAsked() {
        String[] lines = {"2025-10-26 01:30,22,40", "2025-10-26 02:30,22,40", "2025-10-26 03:30,22,40"};

        assertThat(read(BERLIN, lines).report().unclear()).containsExactly(Question.DOUBLE_HOUR);
        assertThat(read(BERLIN.withSecondOfBoth(false), lines).samples().get(1)).startsWith("2025-10-26T00:30");
        assertThat(read(BERLIN.withSecondOfBoth(true), lines).samples().get(1)).startsWith("2025-10-26T01:30");
        assertThat(read(BERLIN.withSecondOfBoth(true), lines).report().unclear())
                .isEmpty();
    }

    /** Local time without a zone: in spring one hour is missing. */
    @Test
    void aTimeThatSpringSkipsIsMovedOnAndFlagged() {
        Read read = read(BERLIN, "2025-03-30 01:30,22,40", "2025-03-30 02:30,22,40", "2025-03-30 04:00,22,40");

        assertThat(read.samples().stream().map(line -> line.substring(11, 16)))
                .containsExactly("00:30", "01:30", "02:00");
        assertThat(read.report().faults()).containsExactly(new LogFault(3, "", Kind.TIME_SKIPPED, "2025-03-30T02:30"));
    }

    /** An offset in the header holds over a change of the clocks: the file shows no gap. */
    @Test
    void anOffsetInTheHeaderHoldsForTheWholeFile() {
        String text =
                "\"Date Time, GMT+01:00\",\"Temp, °C\"\n2025-03-30 01:30,22\n2025-03-30 02:30,22\n2025-03-30 03:30,22\n";

        assertThat(Read.of(text, Answers.NONE).samples().stream().map(line -> line.substring(11, 16)))
                .containsExactly("00:30", "01:30", "02:30");
    }

    @Test
    void gapsAreLongerThanThreeStepsAndAQuarterOfAnHour() {
        Read minutes = read(
                UTC,
                "2025-01-01 10:00,22,40",
                "2025-01-01 10:01,22,40",
                "2025-01-01 10:16,22,40",
                "2025-01-01 10:17,22,40",
                "2025-01-01 10:33,22,40");
        Read hours = read(
                UTC,
                "2025-01-01 10:00,22,40",
                "2025-01-01 11:00,22,40",
                "2025-01-01 14:00,22,40",
                "2025-01-01 15:00,22,40",
                "2025-01-01 18:01,22,40");

        assertThat(minutes.report().times().gaps())
                .containsExactly(new LogReport.Gap(
                        Instant.parse("2025-01-01T10:17:00Z"), Instant.parse("2025-01-01T10:33:00Z")));
        assertThat(minutes.report().times().step()).isEqualTo(Duration.ofMinutes(1));
        assertThat(hours.report().times().gapCount()).isEqualTo(1);
    }

    @Test
    void repeatedAndUnsortedTimesAreCounted() {
        Read read = read(
                UTC,
                "2025-01-01 10:00,22,40",
                "2025-01-01 10:00,22,40",
                "2025-01-01 10:05,22,40",
                "2025-01-01 10:03,22,40",
                "2025-01-01 10:06,22,40");

        assertThat(read.report().times().repeated()).isEqualTo(1);
        assertThat(read.report().times().backwards()).isEqualTo(1);
        assertThat(read.report().span())
                .contains(new LogReport.Span(
                        Instant.parse("2025-01-01T10:00:00Z"), Instant.parse("2025-01-01T10:06:00Z")));
    }

    @Test
    void aFileWithoutTimesHasNoLayout() throws IOException {
        assertThat(LayoutFinder.find(LogSource.of(new byte[0]))).isEmpty();
        assertThat(LayoutFinder.find(LogSource.of(
                        "some words\nand more, with a comma\n".getBytes(java.nio.charset.StandardCharsets.UTF_8))))
                .isEmpty();
        assertThat(LayoutFinder.find(LogSource.of(new byte[] {(byte) 0x89, 'P', 'N', 'G', 0, 0, 1, 2, 3})))
                .isEmpty();
    }

    /** A year of minutes is read without being held. */
    @Test
    void anHourOfSecondsIsReadLineByLine() {
        StringBuilder text = new StringBuilder(HEAD);
        for (int i = 0; i < 3600; i++) {
            text.append("2025-01-01 10:%02d:%02d,22.5,40.1\n".formatted(i / 60, i % 60));
        }
        Read read = Read.of(text.toString(), UTC);

        assertThat(read.report().samples()).isEqualTo(3600);
        assertThat(read.report().times().step()).isEqualTo(Duration.ofSeconds(1));
    }
}
