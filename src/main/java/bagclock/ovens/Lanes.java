package bagclock.ovens;

import java.util.List;

/**
 * The ovens on one axis of time, in the units of the drawing.
 *
 * @param words the same in words, for those who do not see it
 * @param nowX where the line of this moment stands
 */
public record Lanes(
        String words, String nowX, String fromMs, String minutesPerUnit, List<Lane> lanes, List<Tick> ticks) {
    /** Width of the drawing. */
    public static final int WIDTH = 1200;

    /** Where time begins; names of ovens stand before it. */
    public static final int LEFT = 176;

    /** Height of one lane. */
    public static final int LANE = 64;

    /** Height of the axis over the lanes. */
    public static final int TOP = 30;

    /** One oven. */
    public record Lane(String code, String name, int y, List<Block> blocks) {}

    /**
     * A run, or a time out of service.
     *
     * @param kind class of its shape: running, planned, frozen, out
     * @param late word beside the mark of a late lot; empty if none is late
     * @param form id of the form that moves it; empty if it can't be moved
     * @param href where it is told in words
     */
    public record Block(
            String kind,
            String x,
            String width,
            String label,
            String under,
            String late,
            String title,
            String form,
            String href) {}

    /** A mark on the axis. */
    public record Tick(String x, String words) {}

    /** Keeps its own copies. */
    public Lanes {
        lanes = List.copyOf(lanes);
        ticks = List.copyOf(ticks);
    }

    /** The view box as SVG takes it. */
    public String viewBox() {
        return "0 0 " + WIDTH + " " + height();
    }

    /** Height of the drawing. */
    public int height() {
        return TOP + LANE * lanes.size() + 20;
    }
}
