package bagclock.ovens;

import java.util.List;

/**
 * The chart of a run, drawn in the units of its view box: the band shaded, each probe a line, gaps and excursions marked
 * by shape and number.
 *
 * @param id unique on the page
 * @param legend one entry for each line
 * @param shade the band
 * @param gaps times without samples that are too long to count
 * @param counted time that counts, as a strip under the plot
 */
public record ChartLines(
        String id,
        String caption,
        String summary,
        List<Legend> legend,
        List<Line> lines,
        Box shade,
        String shadeLabel,
        List<Box> gaps,
        List<Box> counted,
        List<Mark> marks,
        List<Tick> values,
        List<Tick> times) {
    /** Width of the view box. */
    public static final int WIDTH = 960;

    /** Height of the view box. */
    public static final int HEIGHT = 300;

    /** Left edge of the plot. */
    public static final int LEFT = 64;

    /** Right edge of the plot. */
    public static final int RIGHT = 948;

    /** Upper edge of the plot; the legend stands above it. */
    public static final int TOP = 44;

    /** Lower edge of the plot. */
    public static final int BOTTOM = 244;

    /** Upper edge of the strip of time that counts; labels of times stand under it. */
    public static final int STRIP = 250;

    /** A line's sample and name. */
    public record Legend(String style, int x, String name) {}

    /** An unbroken piece of a probe's line. */
    public record Line(String style, String points) {}

    /** A rectangle. */
    public record Box(String x, String y, String width, String height) {}

    /** An excursion: a triangle that points to where it went, with its number in the table. */
    public record Mark(String path, String x, String y, String number) {}

    /** A labelled place on an axis. */
    public record Tick(String at, String label) {}

    /** The view box as SVG takes it. */
    public String viewBox() {
        return "0 0 " + WIDTH + " " + HEIGHT;
    }
}
