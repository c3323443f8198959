package bagclock.climate;

import bagclock.readings.HourBand;
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
 * Draws one quantity between two moments: a line where each reading is drawn, a band from the lowest to the highest where
 * many share a place. A reading holds for a while; a longer silence is a gap, never a line.
 */
final class Plot {
    /** Drawn at most, more than the width has dots for would not be seen. */
    static final int MOST_DRAWN = 884;

    private static final int ROOM_FOR_LABEL = 44;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMM yyyy", Locale.ENGLISH);
    private static final double[] STEPS = {1, 2, 5, 10, 20, 50, 100, 200};
    private static final int MOST_STEPS = 5;
    private static final int MOST_DAYS = 8;
    private static final int MOST_WEEKS = 8;

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

    /** The lowest and the highest of one quantity. */
    record Range(ToDoubleFunction<HourBand> least, ToDoubleFunction<HourBand> most) {
        double least(List<HourBand> bands) {
            return bands.stream().mapToDouble(least).min().orElse(0);
        }

        double most(List<HourBand> bands) {
            return bands.stream().mapToDouble(most).max().orElse(1);
        }

        boolean isPoint(HourBand band) {
            return least.applyAsDouble(band) == most.applyAsDouble(band);
        }
    }

    /** The curve; {@code limit} is drawn across if there is one. */
    Curve draw(List<HourBand> all, Range range, OptionalDouble limit, Words words) {
        List<HourBand> bands = Bands.atMost(MOST_DRAWN, all, from, to, holdsFor);
        double least = range.least(bands);
        double most = range.most(bands);
        Scale scale = Scale.of(Math.min(least, limit.orElse(least)), Math.max(most, limit.orElse(most)));
        List<Curve.Mark> limits = limit.isPresent()
                ? List.of(new Curve.Mark(number(scale.y(limit.getAsDouble())), words.limit()))
                : List.of();
        boolean isLine = bands.stream().allMatch(range::isPoint);
        List<List<HourBand>> pieces = pieces(bands);
        return new Curve(
                words.id(),
                words.caption(),
                words.summary(),
                isLine
                        ? pieces.stream()
                                .map(piece -> line(piece, range.least(), scale))
                                .toList()
                        : List.of(),
                isLine
                        ? List.of()
                        : pieces.stream()
                                .map(piece -> area(piece, range, scale))
                                .toList(),
                gaps(bands),
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

    /** What lies between gaps. */
    private List<List<HourBand>> pieces(List<HourBand> bands) {
        List<List<HourBand>> pieces = new ArrayList<>();
        for (int i = 0; i < bands.size(); i++) {
            if (i == 0 || Bands.isGap(bands.get(i - 1), bands.get(i), holdsFor)) {
                pieces.add(new ArrayList<>());
            }
            pieces.get(pieces.size() - 1).add(bands.get(i));
        }
        return pieces;
    }

    private String line(List<HourBand> piece, ToDoubleFunction<HourBand> value, Scale scale) {
        StringBuilder line = new StringBuilder();
        for (HourBand band : piece) {
            point(line, x(band.firstAt()), scale.y(value.applyAsDouble(band)));
        }
        return line.toString();
    }

    /** Along the highest values and back along the lowest. */
    private String area(List<HourBand> piece, Range range, Scale scale) {
        StringBuilder area = new StringBuilder();
        for (HourBand band : piece) {
            double y = scale.y(range.most().applyAsDouble(band));
            point(area, x(band.firstAt()), y);
            point(area, x(band.lastAt()), y);
        }
        for (int i = piece.size() - 1; i >= 0; i--) {
            double y = scale.y(range.least().applyAsDouble(piece.get(i)));
            point(area, x(piece.get(i).lastAt()), y);
            point(area, x(piece.get(i).firstAt()), y);
        }
        return area.toString();
    }

    private static void point(StringBuilder points, double x, double y) {
        points.append(points.isEmpty() ? "" : " ").append(number(x)).append(',').append(number(y));
    }

    private List<Curve.Gap> gaps(List<HourBand> bands) {
        List<Curve.Gap> gaps = new ArrayList<>();
        Instant last = from;
        for (HourBand band : bands) {
            gap(last, band.firstAt(), gaps);
            last = band.lastAt();
        }
        gap(last, to, gaps);
        return gaps;
    }

    private void gap(Instant start, Instant end, List<Curve.Gap> gaps) {
        if (Duration.between(start, end).compareTo(holdsFor) > 0) {
            gaps.add(new Curve.Gap(number(x(start)), number(x(end) - x(start))));
        }
    }

    /** Midnights, in the site's zone: of each day, each Monday, or each first of a month; the edge cuts no label. */
    private List<Curve.Mark> days() {
        long span = Duration.between(from, to).toDays();
        List<Curve.Mark> days = new ArrayList<>();
        LocalDate day = from.atZone(zone).toLocalDate().plusDays(1);
        while (day.atStartOfDay(zone).toInstant().isBefore(to)) {
            String label = label(day, span);
            if (!label.isEmpty()) {
                double x = x(day.atStartOfDay(zone).toInstant());
                days.add(new Curve.Mark(number(x), x > Curve.RIGHT - ROOM_FOR_LABEL ? "" : label));
            }
            day = day.plusDays(1);
        }
        return days;
    }

    private static String label(LocalDate day, long span) {
        if (span <= MOST_DAYS) {
            return DAY.format(day);
        } else if (span <= MOST_WEEKS * 7) {
            return day.getDayOfWeek() == java.time.DayOfWeek.MONDAY ? DATE.format(day) : "";
        }
        boolean every = span <= 200 || day.getMonthValue() % 2 == 1;
        return day.getDayOfMonth() == 1 && every ? MONTH.format(day) : "";
    }

    private static String number(double value) {
        double tenths = Math.round(value * 10) / 10.0;
        return tenths == Math.rint(tenths) ? Long.toString((long) tenths) : Double.toString(tenths);
    }
}
