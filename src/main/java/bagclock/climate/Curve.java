package bagclock.climate;

import java.util.List;

/**
 * A drawing of one quantity over time, in the units of its view box.
 *
 * @param id unique on the page
 * @param caption what it shows, in words
 * @param lines points of each unbroken piece, as SVG takes them
 * @param bands outline of each unbroken piece, where many readings share a place; then there are no lines
 * @param gaps times without readings
 * @param limits what is drawn across
 */
public record Curve(
        String id,
        String caption,
        String summary,
        List<String> lines,
        List<String> bands,
        List<Gap> gaps,
        List<Mark> limits,
        List<Mark> values,
        List<Mark> times) {
    /** Width of the view box. */
    public static final int WIDTH = 960;

    /** Height of the view box. */
    public static final int HEIGHT = 240;

    /** Left edge of the plot; labels of values stand before it. */
    public static final int LEFT = 64;

    /** Lower edge of the plot; labels of times stand under it. */
    public static final int BOTTOM = 204;

    /** Upper edge of the plot. */
    public static final int TOP = 12;

    /** Right edge of the plot. */
    public static final int RIGHT = 948;

    /** A time without readings. */
    public record Gap(String x, String width) {}

    /** A labelled place on an axis. */
    public record Mark(String at, String label) {}

    /** Keeps its own copies. */
    public Curve {
        lines = List.copyOf(lines);
        bands = List.copyOf(bands);
        gaps = List.copyOf(gaps);
        limits = List.copyOf(limits);
        values = List.copyOf(values);
        times = List.copyOf(times);
    }

    /** The view box as SVG takes it. */
    public String viewBox() {
        return "0 0 " + WIDTH + " " + HEIGHT;
    }
}
