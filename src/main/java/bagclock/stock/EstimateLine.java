package bagclock.stock;

import java.util.List;

/**
 * What the model says, drawn under the line of life on the same axis of time. Lengths are in the units of the drawing,
 * 1000 wide.
 *
 * @param lead the figures in one sentence, or why there are none
 * @param band the figures for both diffusivities; empty if there are none
 * @param warning where the rules may be too kind; empty if nowhere
 * @param assumptions what it rests on
 * @param between points of the shape between both diffusivities at the sealed face; empty for no drawing
 * @param worse points of the larger
 * @param mean points of the larger mean
 * @param limitY height of the limit
 */
public record EstimateLine(
        String lead,
        String band,
        String warning,
        List<String> assumptions,
        String between,
        String worse,
        String mean,
        double limitY) {}
