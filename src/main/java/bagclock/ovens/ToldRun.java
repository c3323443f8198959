package bagclock.ovens;

import java.util.List;
import java.util.Optional;

/**
 * A run that ended before anybody looked at the pages of the ovens, and its chart.
 *
 * @param tags what was in it; all out by now
 * @param who says so
 */
public record ToldRun(List<String> tags, String who, Optional<ChartText> chart) {
    /** What the recorder of an oven wrote, as text; its header says which channels are in the load. */
    public record ChartText(String fileName, String text) {}
}
