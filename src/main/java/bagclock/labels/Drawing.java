package bagclock.labels;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Something to print, in millimetres from its upper left corner. */
public record Drawing(double width, double height, List<Line> lines, List<Box> boxes) {
    private static final double THOUSAND = 1000;

    /** Keeps its own copies. */
    public Drawing {
        lines = List.copyOf(lines);
        boxes = List.copyOf(boxes);
    }

    /**
     * One line of text.
     *
     * @param y of its base line
     * @param size of the type: the height of its em
     * @param width what it takes up
     */
    public record Line(String text, double x, double y, double size, double width) {
        /** Rounds to a thousandth of a millimetre. */
        public Line {
            x = rounded(x);
            y = rounded(y);
            size = rounded(size);
            width = rounded(width);
        }
    }

    /** A black rectangle. */
    public record Box(double x, double y, double width, double height) {}

    /** Every box as one path of a scalable drawing. */
    public String path() {
        return boxes.stream()
                .map(box -> String.format(
                        Locale.ROOT,
                        "M%.3f %.3fh%.3fv%.3fh%.3fz",
                        box.x(),
                        box.y(),
                        box.width(),
                        box.height(),
                        -box.width()))
                .collect(Collectors.joining());
    }

    /** Width or height with its unit, such as {@code 50.8mm}. */
    public static String millimetres(double length) {
        return rounded(length) + "mm";
    }

    private static double rounded(double length) {
        return Math.round(length * THOUSAND) / THOUSAND;
    }
}
