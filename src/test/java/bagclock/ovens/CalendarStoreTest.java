package bagclock.ovens;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.oven.Bounds;
import bagclock.core.oven.Plan;
import bagclock.core.oven.Run;
import bagclock.core.oven.Score;
import bagclock.core.quantity.Celsius;
import bagclock.ovens.StoredPlan.Search;
import bagclock.platform.OnBothDatabases;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What calendars are told when one plan after the other is published. */
class CalendarStoreTest extends OnBothDatabases {
    private static final Instant NOW = Instant.parse("2026-03-12T08:00:00Z");

    private static Run run(String oven, int startsInH, String lot) {
        Instant start = NOW.plus(Duration.ofHours(startsInH));
        return new Run(oven, new Celsius(125), List.of(new Run.Stay(lot, start, start.plus(Duration.ofHours(9)))));
    }

    private void publish(String id, Optional<String> basedOn, Run... runs) {
        PlanStore plans = new PlanStore(database, (tx, topic) -> {});
        StoredPlan draft = new StoredPlan(
                id,
                basedOn,
                NOW,
                Optional.empty(),
                Search.DONE,
                new Score(0, 0, runs.length, 0),
                Bounds.NONE,
                new Plan(List.of(runs)),
                Set.of(),
                List.of());
        plans.add(draft, "planner");
        assertThat(plans.isOpen(id)).isTrue();
        assertThat(plans.publish(draft, "planner", NOW)).isTrue();
        assertThat(plans.isOpen(id)).isFalse();
    }

    private List<CalendarEntry> entries() {
        return new CalendarStore(database).entries(NOW);
    }

    @Test
    void eachRunHasOneEntryWhateverPlanItIsIn() {
        Run first = run("O1", 2, "A");
        Run second = run("O2", 3, "B");
        publish("P1", Optional.empty(), first, second);
        assertThat(entries())
                .containsExactly(
                        new CalendarEntry("P1-0", 0, NOW, false, first),
                        new CalendarEntry("P1-1", 0, NOW, false, second));

        Run moved = run("O2", 1, "A");
        Run more = run("O1", 4, "C");
        publish("P2", Optional.of("P1"), moved, more);
        assertThat(entries())
                .containsExactly(
                        new CalendarEntry("P1-0", 1, NOW, false, moved),
                        new CalendarEntry("P1-1", 1, NOW, true, second),
                        new CalendarEntry("P2-1", 0, NOW, false, more));

        publish("P3", Optional.of("P2"), more, moved);
        assertThat(entries()).extracting(CalendarEntry::sequence).containsExactly(1, 1, 0);
        assertThat(new CalendarStore(database).entries(NOW.plus(Duration.ofHours(12))))
                .extracting(CalendarEntry::uid)
                .containsExactly("P2-1");
    }
}
