package bagclock.ovens;

import bagclock.core.proof.Band;
import bagclock.core.proof.Excursion;
import bagclock.core.proof.ProbeProof;
import bagclock.core.proof.Spell;
import bagclock.core.proof.Trace;
import bagclock.core.proof.Trace.Sample;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Draws what probes wrote. Where many samples share a dot, the lowest and the highest are drawn. */
final class ChartDrawing {
    private static final List<String> STYLES = List.of("", "second", "third", "fourth");
    private static final double[] STEPS = {0.5, 1, 2, 5, 10, 20, 50, 100};
    private static final int MOST_STEPS = 6;
    private static final int LEGEND_STEP = 220;
    private static final int STRIP_HEIGHT = 10;

    private final TimeAxis axis;
    private final Band band;
    private final double low;
    private final double high;
    private final double step;

    /**
     * A drawing that holds the band and every sample.
     *
     * @param axis from {@link ChartLines#LEFT} to {@link ChartLines#RIGHT}
     */
    ChartDrawing(TimeAxis axis, Band band, List<ProbeProof> probes) {
        this.axis = axis;
        this.band = band;
        double least = probes.stream()
                .flatMap(probe -> probe.lowest().stream().boxed())
                .reduce(band.least(), Math::min);
        double most = probes.stream()
                .flatMap(probe -> probe.highest().stream().boxed())
                .reduce(band.most(), Math::max);
        this.step = step(most - least);
        this.low = Math.floor(least / step) * step;
        this.high = Math.max(low + step, Math.ceil(most / step) * step);
    }

    private static double step(double range) {
        for (double step : STEPS) {
            if (range / step <= MOST_STEPS) {
                return step;
            }
        }
        return STEPS[STEPS.length - 1];
    }

    /** Words around a drawing. */
    record Words(String id, String caption, String summary, String unit, String band) {}

    /** An excursion with its number in the table. */
    record Numbered(int number, Excursion excursion) {}

    ChartLines draw(List<ProbeProof> probes, List<Spell> counted, List<Numbered> marks, Words words) {
        List<ChartLines.Line> lines = new ArrayList<>();
        List<ChartLines.Legend> legend = new ArrayList<>();
        List<ChartLines.Box> gaps = new ArrayList<>();
        for (int i = 0; i < probes.size(); i++) {
            String style = STYLES.get(i % STYLES.size());
            Trace trace = probes.get(i).trace();
            lines(trace).forEach(points -> lines.add(new ChartLines.Line(style, points)));
            legend.add(new ChartLines.Legend(style, ChartLines.LEFT + i * LEGEND_STEP, trace.name()));
            probes.get(i).gaps().forEach(gap -> gaps.add(box(gap, ChartLines.TOP, ChartLines.BOTTOM)));
        }
        return new ChartLines(
                words.id(),
                words.caption(),
                words.summary(),
                legend,
                lines,
                shade(),
                words.band(),
                gaps,
                counted.stream()
                        .map(spell -> box(spell, ChartLines.STRIP, ChartLines.STRIP + STRIP_HEIGHT))
                        .toList(),
                marks.stream().map(this::mark).toList(),
                values(words.unit()),
                axis.ticks().stream()
                        .map(tick -> new ChartLines.Tick(number(tick.x()), tick.label()))
                        .toList());
    }

    private double y(double value) {
        double share = (value - low) / (high - low);
        return ChartLines.BOTTOM - share * (ChartLines.BOTTOM - ChartLines.TOP);
    }

    private ChartLines.Box shade() {
        return new ChartLines.Box(
                number(ChartLines.LEFT),
                number(y(band.most())),
                number((double) ChartLines.RIGHT - ChartLines.LEFT),
                number(y(band.least()) - y(band.most())));
    }

    private ChartLines.Box box(Spell spell, double top, double bottom) {
        double x = axis.x(spell.from());
        return new ChartLines.Box(
                number(x), number(top), number(Math.max(1, axis.x(spell.to()) - x)), number(bottom - top));
    }

    /** The pieces of a line between gaps. */
    private List<String> lines(Trace trace) {
        List<String> lines = new ArrayList<>();
        List<Sample> piece = new ArrayList<>();
        Optional<Sample> last = Optional.empty();
        for (Sample sample : trace.samples()) {
            boolean isGap = last.filter(
                            before -> Duration.between(before.at(), sample.at()).compareTo(ProbeProof.LONGEST_STEP) > 0)
                    .isPresent();
            if (isGap) {
                lines.add(points(piece));
                piece.clear();
            }
            piece.add(sample);
            last = Optional.of(sample);
        }
        lines.add(points(piece));
        lines.removeIf(String::isEmpty);
        return lines;
    }

    /** Of the samples that share a dot only the lowest and the highest. */
    private String points(List<Sample> piece) {
        StringBuilder points = new StringBuilder();
        int start = 0;
        while (start < piece.size()) {
            long dot = Math.round(axis.x(piece.get(start).at()));
            int end = start;
            int lowest = start;
            int highest = start;
            while (end < piece.size() && Math.round(axis.x(piece.get(end).at())) == dot) {
                lowest = piece.get(end).value() < piece.get(lowest).value() ? end : lowest;
                highest = piece.get(end).value() > piece.get(highest).value() ? end : highest;
                end++;
            }
            point(points, piece.get(Math.min(lowest, highest)));
            if (lowest != highest) {
                point(points, piece.get(Math.max(lowest, highest)));
            }
            start = end;
        }
        return points.toString();
    }

    private void point(StringBuilder points, Sample sample) {
        points.append(points.isEmpty() ? "" : " ")
                .append(number(axis.x(sample.at())))
                .append(',')
                .append(number(y(sample.value())));
    }

    /** Up for what was too hot or too humid, down for what was too cold. */
    private ChartLines.Mark mark(Numbered numbered) {
        Excursion excursion = numbered.excursion();
        Spell spell = excursion.spell();
        double x = axis.x(spell.from().plus(spell.length().dividedBy(2)));
        boolean isBelow = excursion.kind() == Excursion.Kind.BELOW;
        double tip = Math.max(ChartLines.TOP + 12.0, Math.min(ChartLines.BOTTOM - 12.0, y(excursion.extreme())));
        double foot = isBelow ? tip - 10 : tip + 10;
        String path = "M" + number(x) + " " + number(tip) + "L" + number(x - 6) + " " + number(foot) + "H"
                + number(x + 6) + "Z";
        return new ChartLines.Mark(
                path, number(x + 9), number(tip + (isBelow ? 0 : 10)), Integer.toString(numbered.number()));
    }

    private List<ChartLines.Tick> values(String unit) {
        List<ChartLines.Tick> ticks = new ArrayList<>();
        for (double value = low; value <= high + step / 2; value += step) {
            ticks.add(new ChartLines.Tick(number(y(value)), number(value) + unit));
        }
        return ticks;
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.1f", value);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }
}
