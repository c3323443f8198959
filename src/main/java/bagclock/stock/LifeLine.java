package bagclock.stock;

import java.util.List;

/**
 * The line of life as it is drawn: stays on one axis of time, used floor life under it. Lengths are in the units of the
 * drawing, 1000 wide.
 *
 * @param words the same in words, for those who do not see it
 * @param used points of the curve of used life; empty if there is none
 */
public record LifeLine(String words, List<Stay> stays, List<Heat> heats, String used, List<Tick> ticks) {
    /** A stay; {@code kind} is the class of its shape. */
    public record Stay(String kind, double x, double width, String words) {}

    /** A heat. */
    public record Heat(double x, String words) {}

    /** A mark on the axis. */
    public record Tick(double x, String words) {}
}
