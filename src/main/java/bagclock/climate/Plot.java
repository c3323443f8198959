package bagclock.climate;

import bagclock.core.exposure.ZoneLog.Reading;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * Draws readings of one quantity between two moments. A reading holds for a while; a longer silence is a gap, never a
 * line.
 */
final class Plot {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final double[] STEPS = {1, 2, 5, 10, 20, 50, 100, 200};
    private static final int MOST_STEPS = 5;

    private final Instant from;
    private final Instant to;
    private final Duration holdsFor;
    private final ZoneId zone;

    Plot(Instant from, Instant to, Duration holdsFor, ZoneId zone) {
        this.from = from;
        this.to = to;
        this.holdsFor = holdsFor;
        this.zone = zone;
    }

    /** Words around a drawing. */
    record Words(String id, String caption, String summary, String unit, String limit) {}

    /** The curve; {@code limit} is drawn across if there is one. */
    Curve draw(List<Reading> readings, ToDoubleFunction<Reading> value, OptionalDouble limit, Words words) {
        double least = readings.stream().mapToDouble(value).min().orElse(0);
        double most = readings.stream().mapToDouble(value).max().orElse(1);
        Scale scale = Scale.of(Math.min(least, limit.orElse(least)), Math.max(most, limit.orElse(most)));
        List<Curve.Mark> limits = limit.isPresent()
                ? List.of(new Curve.Mark(number(scale.y(limit.getAsDouble())), words.limit()))
                : List.of();
        return new Curve(
                words.id(),
                words.caption(),
                words.summary(),
                lines(readings, value, scale),
                gaps(readings),
                limits,
                scale.marks(words.unit()),
                days());
    }

    /** From value to height; marks stand at whole steps. */
    private record Scale(double low, int steps, double step) {
        static Scale of(double least, double most) {
            for (double step : STEPS) {
                double low = Math.floor(least / step) * step;
                int steps = Math.max(1, (int) Math.ceil((most - low) / step));
                if (steps <= MOST_STEPS) {
                    return new Scale(low, steps, step);
                }
            }
            throw new IllegalArgumentException("from " + least + " to " + most);
        }

        double y(double value) {
            double height = (double) Curve.BOTTOM - Curve.TOP;
            return Curve.BOTTOM - (value - low) / (steps * step) * height;
        }

        List<Curve.Mark> marks(String unit) {
            List<Curve.Mark> marks = new ArrayList<>();
            for (int i = 0; i <= steps; i++) {
                double value = low + i * step;
                marks.add(new Curve.Mark(number(y(value)), number(value) + unit));
            }
            return marks;
        }
    }

    private double x(Instant at) {
        double share = (double) Duration.between(from, at).toMillis()
                / Duration.between(from, to).toMillis();
        return Curve.LEFT + share * (Curve.RIGHT - Curve.LEFT);
    }

    private List<String> lines(List<Reading> readings, ToDoubleFunction<Reading> value, Scale scale) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < readings.size(); i++) {
            Reading reading = readings.get(i);
            if (i > 0 && isGap(readings.get(i - 1).at(), reading.at())) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ")
                    .append(number(x(reading.at())))
                    .append(',')
                    .append(number(scale.y(value.applyAsDouble(reading))));
        }
        if (!line.isEmpty()) {
            lines.add(line.toString());
        }
        return lines;
    }

    private List<Curve.Gap> gaps(List<Reading> readings) {
        List<Curve.Gap> gaps = new ArrayList<>();
        Instant last = from;
        for (Reading reading : readings) {
            gap(last, reading.at(), gaps);
            last = reading.at();
        }
        gap(last, to, gaps);
        return gaps;
    }

    private void gap(Instant start, Instant end, List<Curve.Gap> gaps) {
        if (isGap(start, end)) {
            gaps.add(new Curve.Gap(number(x(start)), number(x(end) - x(start))));
        }
    }

    private boolean isGap(Instant start, Instant end) {
        return Duration.between(start, end).compareTo(holdsFor) > 0;
    }

    /** Midnights, in the site's zone. */
    private List<Curve.Mark> days() {
        List<Curve.Mark> days = new ArrayList<>();
        LocalDate day = from.atZone(zone).toLocalDate().plusDays(1);
        while (day.atStartOfDay(zone).toInstant().isBefore(to)) {
            days.add(new Curve.Mark(number(x(day.atStartOfDay(zone).toInstant())), DAY.format(day)));
            day = day.plusDays(1);
        }
        return days;
    }

    private static String number(double value) {
        double tenths = Math.round(value * 10) / 10.0;
        return tenths == Math.rint(tenths) ? Long.toString((long) tenths) : Double.toString(tenths);
    }
}
