package bagclock.stock;

import bagclock.core.estimate.Beside;
import bagclock.core.estimate.Estimate;
import bagclock.core.estimate.Estimate.Point;
import bagclock.platform.EstimateTexts;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/** Draws what the model says beside the tables. */
final class EstimateLines {
    private static final double TOP = 8;
    private static final double HEIGHT = 92;

    /** Shares that the drawing reaches up to: at least a little above the limit, at most this far. */
    private static final double LEAST_SHARE = 1.25;

    private static final double MOST_SHARE = 3;

    private final EstimateTexts texts;

    EstimateLines(Words words) {
        this.texts = new EstimateTexts(words.texts());
    }

    EstimateLine line(Beside beside, TimeAxis axis) {
        String warning = texts.warning(beside).orElse("");
        return beside.estimate()
                .map(estimate -> drawn(beside, estimate, warning, axis))
                .orElseGet(() -> new EstimateLine(texts.lead(beside), "", warning, List.of(), "", "", "", TOP));
    }

    private EstimateLine drawn(Beside beside, Estimate estimate, String warning, TimeAxis axis) {
        double share = Math.min(
                MOST_SHARE,
                estimate.curve().stream()
                        .mapToDouble(point -> point.sealedFace().worse())
                        .reduce(LEAST_SHARE, Math::max));
        List<Point> there = estimate.curve();
        List<Point> back = new ArrayList<>(there);
        Collections.reverse(back);
        String between = points(there, p -> p.sealedFace().low(), share, axis)
                + " "
                + points(back, p -> p.sealedFace().high(), share, axis);
        return new EstimateLine(
                texts.lead(beside),
                texts.band(estimate),
                warning,
                texts.assumptions(estimate, axis.now()),
                between,
                points(there, p -> p.sealedFace().worse(), share, axis),
                points(there, p -> p.mean().worse(), share, axis),
                y(1, share));
    }

    private static String points(List<Point> curve, ToDoubleFunction<Point> value, double most, TimeAxis axis) {
        StringBuilder points = new StringBuilder();
        for (Point point : curve) {
            points.append(
                    String.format(Locale.ROOT, "%.1f,%.1f ", axis.x(point.at()), y(value.applyAsDouble(point), most)));
        }
        return points.toString().strip();
    }

    private static double y(double share, double most) {
        return Math.round((TOP + HEIGHT * (1 - Math.min(share, most) / most)) * 10) / 10.0;
    }
}
