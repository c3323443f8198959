package bagclock.ovens;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A horizontal axis of time, of minutes or of weeks; marks stand at whole hours or midnights of the site. */
record TimeAxis(Instant from, Instant to, double left, double right, ZoneId zone) {
    private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final int MOST_TICKS = 9;
    private static final int DAY_H = 24;
    private static final int[] STEPS_H = {1, 2, 3, 6, 12, 24, 48, 168, 336};

    /** A mark. */
    record Tick(double x, String label) {}

    double x(Instant at) {
        long length = Math.max(1, Duration.between(from, to).toMillis());
        double share = (double) Duration.between(from, at).toMillis() / length;
        return left + Math.max(0, Math.min(1, share)) * (right - left);
    }

    List<Tick> ticks() {
        int step = step();
        List<Tick> ticks = new ArrayList<>();
        ZonedDateTime at = LocalDate.ofInstant(from, zone).atStartOfDay(zone);
        while (!at.toInstant().isAfter(to)) {
            if (!at.toInstant().isBefore(from)) {
                ticks.add(new Tick(x(at.toInstant()), (at.getHour() == 0 ? DAY : HOUR).format(at)));
            }
            at = step < DAY_H ? at.plusHours(step) : at.plusDays(step / DAY_H);
        }
        return ticks;
    }

    private int step() {
        long hours = Duration.between(from, to).toHours();
        for (int step : STEPS_H) {
            if (hours / step <= MOST_TICKS) {
                return step;
            }
        }
        return STEPS_H[STEPS_H.length - 1];
    }
}
