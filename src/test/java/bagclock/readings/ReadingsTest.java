package bagclock.readings;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.Reason;
import bagclock.core.exposure.Air;
import bagclock.core.exposure.Zone;
import bagclock.core.exposure.ZoneLog.Reading;
import bagclock.platform.OnBothDatabases;
import bagclock.readings.Kept.BadLine;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReadingsTest extends OnBothDatabases {
    private static final Zone BENCH = new Zone("Z-BENCH");
    private static final Duration GAP = Duration.ofHours(2);
    private static final Instant START = Instant.parse("2026-03-02T00:00:00Z");
    private static final Instant NOW = START.plus(Duration.ofDays(40));

    private final Readings readings = new Readings();

    private Taken add(Reading... fresh) {
        List<ZoneReading> lines = new ArrayList<>();
        for (Reading reading : fresh) {
            lines.add(new ZoneReading(BENCH, reading, lines.size() + 1));
        }
        return database.inTransaction(tx -> readings.add(tx, lines, new Source("logger", NOW), GAP));
    }

    private static Reading at(double hours, double celsius, double percent) {
        return new Reading(START.plusMillis((long) (hours * 3_600_000)), Air.of(celsius, percent));
    }

    private AirTime until(double hours) {
        return database.read(tx -> readings.airTime(tx, BENCH, at(hours, 0, 0).at(), GAP));
    }

    private static int cell(double celsius, double percent) {
        return AirTime.counterOf(Air.of(celsius, percent));
    }

    @Test
    void theHarsherOfBothEndsCountsAndAGapIsUnread() {
        add(at(0, 22, 40), at(1, 28, 35), at(5, 22, 40));

        assertThat(until(1).ms(cell(28, 40))).isEqualTo(3_600_000);
        assertThat(until(5).ms(cell(28, 40))).isEqualTo(3 * 3_600_000);
        assertThat(until(5).ms(AirTime.UNREAD)).isEqualTo(2 * 3_600_000);
        assertThat(until(30)).isEqualTo(until(5));
        assertThat(until(-2).ms(AirTime.UNREAD)).isEqualTo(-2 * 3_600_000);
    }

    @Test
    void outsideTheTableAndAbove3060AreCounted() {
        add(at(0, 36, 50), at(1, 22, 65), at(2, 22, 65), at(3, 22, 40));

        assertThat(until(3).ms(AirTime.OUTSIDE)).isEqualTo(3_600_000);
        assertThat(until(3).above3060Ms()).isEqualTo(3 * 3_600_000);
    }

    @Test
    void aLateReadingRebuildsOnlyItsDays() {
        List<Reading> hourly = new ArrayList<>();
        for (int hour = 0; hour < 24 * 30; hour++) {
            hourly.add(at(hour, 22, 40));
        }
        assertThat(add(hourly.toArray(Reading[]::new)).changes().get(0).daysRebuilt())
                .isEqualTo(30);

        Taken late = add(at(24 * 10 + 5.5, 33, 70));

        assertThat(late.changes().get(0).daysRebuilt()).isEqualTo(1);
        assertThat(late.changes().get(0).before()).contains(at(24 * 10 + 5, 22, 40));
        assertThat(late.changes().get(0).after()).contains(at(24 * 10 + 6, 22, 40));
        assertThat(until(24 * 30).ms(cell(33, 70))).isEqualTo(3_600_000);
        assertThat(add(at(24 * 12 - 0.5, 22, 40)).changes().get(0).daysRebuilt())
                .isEqualTo(2);
    }

    @Test
    void lateReadingsOfSeveralDaysRebuildOnlyTheirDays() {
        List<Reading> hourly = new ArrayList<>();
        for (int hour = 0; hour < 24 * 30; hour++) {
            hourly.add(at(hour, 22, 40));
        }
        add(hourly.toArray(Reading[]::new));

        Taken late = add(at(24 * 3 + 5.5, 33, 70), at(24 * 3 + 6.5, 33, 70), at(24 * 20 + 5.5, 33, 70));

        assertThat(late.changes().get(0).daysRebuilt()).isEqualTo(2);
        assertThat(until(24 * 30).ms(cell(33, 70))).isEqualTo(3 * 3_600_000);
    }

    @Test
    void hoursKeepTheLowestAndHighestOfWhatWasRead() {
        add(at(0.1, 22, 40), at(0.5, 24, 38), at(0.9, 23, 44), at(3.2, 21, 50));
        List<HourBand> hours = database.read(tx -> readings.hours(tx, BENCH, START, START.plus(Duration.ofDays(1))));

        assertThat(hours)
                .containsExactly(
                        new HourBand(at(0.1, 0, 0).at(), at(0.9, 0, 0).at(), 22, 24, 38, 44),
                        new HourBand(at(3.2, 0, 0).at(), at(3.2, 0, 0).at(), 21, 21, 50, 50));
    }

    @Test
    void whatAFileBroughtIsTakenBackAndNothingElse() {
        add(at(0, 22, 40), at(2, 22, 40));
        List<ZoneReading> lines =
                List.of(new ZoneReading(BENCH, at(1, 33, 70), 1), new ZoneReading(BENCH, at(2, 22, 40), 2));
        Source source = new Source("clerk", NOW, java.util.Optional.of("file-1"));
        database.withTransaction(tx -> readings.add(tx, lines, source, GAP));
        assertThat(until(2).ms(cell(33, 70))).isEqualTo(2 * 3_600_000);

        TakenBack file =
                new TakenBack(BENCH, "file-1", 2, at(1, 0, 0).at(), at(2, 0, 0).at());
        long count = database.inTransaction(tx -> readings.takeBack(tx, file, GAP));

        assertThat(count).isEqualTo(1);
        assertThat(until(2).ms(cell(22, 40))).isEqualTo(2 * 3_600_000);
        List<HourBand> hours = database.read(tx -> readings.hours(tx, BENCH, START, NOW));
        assertThat(hours).hasSize(2);
    }

    @Test
    void blocksAreTheSameInWhateverOrderReadingsCome() {
        SplittableRandom random = new SplittableRandom(5);
        List<Reading> all = new ArrayList<>();
        for (double hour = 0; hour < 200; hour += 0.2 + random.nextDouble() * 3) {
            all.add(at(hour, 20 + random.nextInt(17), 20 + random.nextInt(60)));
        }
        List<Reading> mixed = new ArrayList<>(all);
        java.util.Collections.shuffle(mixed, new java.util.Random(7));
        mixed.forEach(this::add);

        AirTime expected = DayBlocks.of(all, GAP, START, NOW).values().stream().reduce(AirTime.NONE, AirTime::plus);
        assertThat(until(1000)).isEqualTo(expected);
    }

    @Test
    void theSameReadingTwiceIsOneAndAnotherOfItsTimeIsRefused() {
        add(at(1, 22, 40));
        Kept again = add(at(1, 22, 40), at(2, 22, 40)).kept();
        Kept other = add(at(1, 23, 40), at(24 * 50, 22, 40)).kept();

        Instant reset = Instant.parse("1980-01-01T00:00:00Z");
        Kept old = add(new Reading(reset, Air.of(22, 40)), new Reading(Instant.MIN, Air.of(22, 40)))
                .kept();

        assertThat(old.refused()).hasSize(2).allMatch(bad -> bad.refusal().reason() == Reason.READING_TOO_OLD);
        assertThat(again).isEqualTo(new Kept(1, 1, List.of()));
        assertThat(other.added()).isZero();
        assertThat(other.refused().stream().map(bad -> bad.refusal().reason()))
                .containsExactly(Reason.READING_DIFFERS, Reason.HAPPENED_IN_FUTURE);
    }

    @Test
    void badLinesAreNamedAndGoodOnesKept() {
        String text = """
                zone,time,temperature,humidity
                Z-BENCH,2026-03-02T01:00:00Z,22.5,40
                Z-BENCH,2026-03-02 03:00,22.5,41
                Z-NONE,2026-03-02T01:00:00Z,22.5,40
                Z-BENCH,yesterday,22.5,40
                Z-BENCH,2026-03-02T04:00:00Z,warm,140
                """;
        ReadingsFile file = ReadingsFile.read(text, Set.of(BENCH), ZoneId.of("Europe/Berlin"));

        assertThat(file.good().stream().map(line -> line.reading().at()))
                .containsExactly(Instant.parse("2026-03-02T01:00:00Z"), Instant.parse("2026-03-02T02:00:00Z"));
        assertThat(file.bad()).extracting(BadLine::line).containsExactly(4L, 5L, 6L, 6L);
        assertThat(file.bad()).extracting(BadLine::column).containsExactly("zone", "time", "temperature", "humidity");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Z-BENCH,2026-03-02T01:00:00Z,22,5,40", "Z-BENCH,2026-03-02T01:00:00Z,22"})
    void aLineOfOtherLengthIsNamedAndTheNextIsRead(String line) {
        String text = "zone,time,temperature,humidity\n" + line + "\nZ-BENCH,2026-03-02T02:00:00Z,22.5,41\n";
        ReadingsFile file = ReadingsFile.read(text, Set.of(BENCH), ZoneId.of("UTC"));

        assertThat(file.good().stream().map(good -> good.reading().at()))
                .containsExactly(Instant.parse("2026-03-02T02:00:00Z"));
        assertThat(file.bad()).singleElement().satisfies(bad -> {
            assertThat(bad.line()).isEqualTo(2);
            assertThat(bad.refusal().reason()).isEqualTo(Reason.LINE_OF_OTHER_LENGTH);
        });
    }

    @Test
    void aDecimalCommaIsReadInAFileWithSemicolons() {
        String text = "humidity;temperature;time;zone\n40,5;22,5;2026-03-02T01:00:00Z;Z-BENCH\n";

        assertThat(ReadingsFile.read(text, Set.of(BENCH), ZoneId.of("UTC")).good())
                .containsExactly(new ZoneReading(BENCH, new Reading(START.plusSeconds(3600), Air.of(22.5, 40.5)), 2));
    }

    @Test
    void aFileWithoutAColumnIsRefusedByItsName() {
        ReadingsFile file = ReadingsFile.read("zone,time,temperature\nZ-BENCH,x,y\n", Set.of(BENCH), ZoneId.of("UTC"));

        assertThat(file.good()).isEmpty();
        assertThat(file.bad()).extracting(BadLine::column).containsExactly("humidity");
    }
}
