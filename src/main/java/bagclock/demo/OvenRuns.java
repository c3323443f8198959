package bagclock.demo;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The runs that ended in the ovens: one whose recorder's file was kept, and one without proof. */
public final class OvenRuns {
    /** Who made the plan that is published. */
    public static final String PLANNED_BY = Team.PLANNER;

    private static final Duration STEP = Duration.ofMinutes(5);
    private static final double ROOM_C = 22;
    private static final double HOT_C = 126.4;
    private static final double RISE_C_PER_STEP = 21;

    private OvenRuns() {}

    /**
     * One of them.
     *
     * @param chart the text of its recorder's file; empty without one
     */
    public record Ended(List<String> tags, String who, Optional<String> chart) {}

    /** Those of a story that ends at a moment. */
    public static List<Ended> at(Instant now) {
        Instant end = now.truncatedTo(ChronoUnit.MINUTES);
        return List.of(
                new Ended(List.of("T-434", "T-435"), Team.PLANNER, Optional.of(chart(end))),
                new Ended(List.of("T-436"), Team.PLANNER, Optional.empty()));
    }

    /** Two probes that warm up and stay a little above 125 C until the door is opened. */
    private static String chart(Instant end) {
        Instant from = end.minus(Duration.parse("P5DT18H")).plusSeconds(60);
        Instant to = end.minus(Duration.parse("P3DT17H"));
        StringBuilder text = new StringBuilder("Time,Tray top \u00b0C,Tray back \u00b0C\n");
        int step = 0;
        for (Instant at = from; !at.isAfter(to); at = at.plus(STEP)) {
            double top = Math.min(HOT_C, ROOM_C + RISE_C_PER_STEP * step);
            double back = Math.min(HOT_C - 0.6, ROOM_C + RISE_C_PER_STEP * Math.max(0, step - 1));
            double wave = 0.4 * Math.sin(step / 7.0);
            text.append(String.format(Locale.ROOT, "%s,%.1f,%.1f\n", at, top + wave, back + wave));
            step++;
        }
        return text.toString();
    }
}
