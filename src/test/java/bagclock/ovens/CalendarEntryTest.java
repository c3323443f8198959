package bagclock.ovens;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.oven.Run;
import bagclock.core.quantity.Celsius;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A run in calendars, from plan to plan: RFC 5545, 3.8.4.7 (UID), 3.8.7.4 (SEQUENCE), 3.8.1.11 (STATUS). */
class CalendarEntryTest {
    private static final Instant NOW = Instant.parse("2026-03-12T08:00:00Z");
    private static final Instant LATER = NOW.plus(Duration.ofHours(1));

    private static Run run(String oven, int startsInH, String... lots) {
        Instant start = NOW.plus(Duration.ofHours(startsInH));
        Instant end = start.plus(Duration.ofHours(9));
        return new Run(
                oven,
                new Celsius(125),
                Stream.of(lots).map(lot -> new Run.Stay(lot, start, end)).toList());
    }

    private static List<CalendarEntry> first(Run... runs) {
        return CalendarEntry.follow(List.of(), List.of(runs), "P1", NOW);
    }

    private static List<CalendarEntry> then(List<CalendarEntry> before, Run... runs) {
        return CalendarEntry.follow(before, List.of(runs), "P2", LATER);
    }

    @Test
    void whatIsNewHasANameAndNoChange() {
        assertThat(first(run("O1", 2, "A"), run("O2", 2, "B")))
                .containsExactly(
                        new CalendarEntry("P1-0", 0, NOW, false, run("O1", 2, "A")),
                        new CalendarEntry("P1-1", 0, NOW, false, run("O2", 2, "B")));
    }

    @Test
    void whatStaysIsNotTouched() {
        List<CalendarEntry> before = first(run("O1", 2, "A", "B"));
        assertThat(then(before, run("O1", 2, "B", "A")))
                .singleElement()
                .satisfies(entry -> assertThat(entry.changedAt()).isEqualTo(NOW))
                .satisfies(entry -> assertThat(entry.sequence()).isZero());
    }

    @Test
    void whatIsMovedKeepsItsName() {
        List<CalendarEntry> before = first(run("O1", 2, "A", "B"), run("O1", 20, "C"));
        Run moved = run("O2", 7, "A", "B");
        Run more = run("O1", 20, "C", "D");

        assertThat(then(before, moved, more))
                .containsExactlyInAnyOrder(
                        new CalendarEntry("P1-0", 1, LATER, false, moved),
                        new CalendarEntry("P1-1", 1, LATER, false, more));
    }

    @Test
    void ofARunThatIsDividedTheLargerPartKeepsTheName() {
        List<CalendarEntry> before = first(run("O1", 2, "A", "B", "C"));
        Run small = run("O1", 2, "A");
        Run large = run("O2", 3, "B", "C");

        assertThat(then(before, small, large))
                .containsExactlyInAnyOrder(
                        new CalendarEntry("P1-0", 1, LATER, false, large),
                        new CalendarEntry("P2-0", 0, LATER, false, small));
    }

    @Test
    void whatIsNotPlannedAnyMoreIsCancelledUnlessItHasBegun() {
        List<CalendarEntry> before = first(run("O1", 0, "A"), run("O2", 5, "B"));

        assertThat(then(before)).containsExactly(new CalendarEntry("P1-1", 1, LATER, true, run("O2", 5, "B")));
    }
}
