package bagclock.demo;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;

/**
 * By when the shop needs what waits for a bake. The rest of the queue is needed by no time in particular.
 *
 * @param weight how much an hour late counts
 */
public record Wanted(String tag, Instant by, int weight) {
    /** Who said so. */
    public static final String TOLD_BY = Team.PLANNER;

    /** Of the story that ends at a moment: some have time to spare, and one is late whatever the plan. */
    public static List<Wanted> at(Instant now) {
        return List.of(
                // Radar displays for two harbours: a bake of a night, and days until they are collected.
                on(now, "T-436", 2, 8, 1),
                on(now, "T-424", 2, 16, 1),
                on(now, "R-420", 5, 8, 1),
                // The tide gauge's level 6 sensors are placed right after their bake.
                on(now, "T-444", 3, 16, 2),
                // The sonar heads of a survey launch, which sails on the day after.
                on(now, "T-418", 5, 8, 5),
                on(now, "T-419", 5, 16, 5),
                // A series of tide gauges: its reel bears 40 C only, and so bakes for longer than there is time.
                on(now, "R-421", 6, 8, 2));
    }

    private static Wanted on(Instant now, String tag, int daysAhead, int hour, int weight) {
        Instant day = now.truncatedTo(ChronoUnit.DAYS).plus(Duration.ofDays(daysAhead));
        return new Wanted(tag, day.plus(Duration.ofHours(hour)), weight);
    }
}
