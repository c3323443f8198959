package bagclock.ovens;

import bagclock.platform.Choice;
import bagclock.platform.Field;
import bagclock.platform.Page;
import java.util.List;

/**
 * One load in an oven: what is in it, coming to temperature, unloading.
 *
 * @param ready when it will be ready, in a sentence
 * @param offPlan what was not as planned when it went in, in words
 * @param proof what its chart proves; at most one
 * @param chart the field of a chart's file
 * @param missing what an early unload leaves undone, in words; empty if nothing, or not asked yet
 */
public record RunPage(
        String title,
        String action,
        String key,
        String ready,
        String facts,
        List<String> offPlan,
        List<Line> lines,
        List<ChartPart> proof,
        Field chart,
        Field atTemperatureAt,
        Breaks breaks,
        List<String> missing,
        Unloading unloading)
        implements Page {
    /** Interruptions noted so far, and the fields of another one. */
    public record Breaks(List<Break> lines, Field kind, List<Choice> kinds, Field from, Field to) {}

    /** One interruption in words. */
    public record Break(int number, String line) {}

    /** One item in it. */
    public record Line(String tag, String part, String quantity, String needed, String ready) {}

    /**
     * The fields of unloading.
     *
     * @param fromChart where the hours come from, in a sentence; empty: they are asked
     * @param decides what an engineer has to decide before it is noted; without a label for nothing
     */
    public record Unloading(
            String fromChart,
            Field decides,
            Field at,
            Field hours,
            Field items,
            List<Choice> itemChoices,
            Field to,
            List<Choice> places) {}

    @Override
    public String template() {
        return "ovens/run.jte";
    }

    @Override
    public String frontDoor() {
        return "ovens";
    }
}
