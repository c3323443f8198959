package bagclock.ovens;

import bagclock.platform.Field;
import bagclock.platform.Page;
import java.util.List;

/**
 * A run that ended.
 *
 * @param refused what a chart could not correct, in words
 * @param offPlan what was not as planned when it went in, in words
 * @param undecided that the load was too hot and an engineer has not decided, in words; empty if it is not so
 * @param proof what its chart proves; at most one
 * @param canBeTakenBack whether the proof came after the end
 * @param chart the field of a chart's file
 */
public record EndedPage(
        String title,
        String action,
        String facts,
        List<String> refused,
        List<String> offPlan,
        String undecided,
        List<RunsPage.Row> rows,
        List<ChartPart> proof,
        boolean canBeTakenBack,
        Field chart)
        implements Page {
    @Override
    public String template() {
        return "ovens/ended.jte";
    }

    @Override
    public String frontDoor() {
        return "ovens";
    }
}
