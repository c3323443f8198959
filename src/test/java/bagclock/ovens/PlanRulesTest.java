package bagclock.ovens;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.oven.Span;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The hours in which doors are opened, as a plan takes them. */
class PlanRulesTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/Berlin");
    // The clock goes forward on Sunday, 29 March 2026 at 01:00 UTC (Directive 2000/84/EC, article 2).
    private static final Instant FRIDAY = Instant.parse("2026-03-27T12:00:00Z");

    private static List<Span> attended(boolean weekends, Instant reach) {
        PlanRules rules = new PlanRules(7 * 60 + 30, 18 * 60, weekends, 60, 30, 15, 15, 60, 20, -1, -1);
        return rules.customs(FRIDAY, ZONE, reach).attended();
    }

    @Test
    void theyAreThoseOfTheClockOnTheWall() {
        assertThat(attended(true, FRIDAY).subList(0, 3))
                .containsExactly(
                        span("2026-03-27T06:30:00Z", "2026-03-27T17:00:00Z"),
                        span("2026-03-28T06:30:00Z", "2026-03-28T17:00:00Z"),
                        span("2026-03-29T05:30:00Z", "2026-03-29T16:00:00Z"));
    }

    @Test
    void withoutWeekendsMondayFollowsFriday() {
        assertThat(attended(false, FRIDAY).get(1)).isEqualTo(span("2026-03-30T05:30:00Z", "2026-03-30T16:00:00Z"));
    }

    @Test
    void theyReachBeyondTheLongestBake() {
        Instant reach = FRIDAY.plus(Duration.ofDays(2 * 79));
        List<Span> days = attended(true, reach);

        assertThat(days.get(days.size() - 1).endExclusive()).isAfter(reach.plus(Duration.ofDays(69)));
        assertThat(attended(true, FRIDAY.plus(Duration.ofDays(40_000)))).hasSize(1_000);
    }

    private static Span span(String from, String to) {
        return new Span(Instant.parse(from), Instant.parse(to));
    }
}
