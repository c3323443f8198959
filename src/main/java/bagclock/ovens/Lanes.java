package bagclock.ovens;

import java.util.List;

/**
 * The ovens on one axis of time, in the units of the drawing.
 *
 * @param words the same in words, for those who do not see it
 * @param nowX where the line of this moment stands
 */
public record Lanes(String words, String nowX, String minutesPerUnit, List<Lane> lanes, List<Tick> ticks) {
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
     * @param kind class of its shape: done, running, planned, frozen, out
     * @param ramps heating up, cooling down
     * @param form id of the form that moves it; empty if it can't be moved
     */
    public record Block(String kind, String x, String width, List<Ramp> ramps, Words words, String form) {
        /** Keeps its own copy. */
        public Block {
            ramps = List.copyOf(ramps);
        }
    }

    /** A part of a run in which it comes to temperature, or from it. */
    public record Ramp(String from, String to) {}

    /**
     * The words of a block.
     *
     * @param label empty where there is no room
     * @param under likewise
     * @param late beside the mark of late lots; empty if none is late
     * @param title all of it, for who points at it
     */
    public record Words(String label, String under, String late, String title) {}

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
