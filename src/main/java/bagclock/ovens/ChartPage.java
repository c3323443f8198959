package bagclock.ovens;

import bagclock.platform.Choice;
import bagclock.platform.Field;
import bagclock.platform.Page;
import bagclock.readings.Asked;
import java.util.List;

/**
 * The chart of a run before it is kept: what must be said about the file, what was found, what it would prove.
 *
 * @param action of the form
 * @param run address of the run
 * @param problem why it can't be weighed; empty for none
 * @param proof at most one; none as long as something is open
 * @param decides what an engineer has to decide; without a label for nothing
 */
public record ChartPage(
        String title,
        String action,
        String run,
        String lead,
        String problem,
        List<Asked> asked,
        Field probes,
        List<Choice> channels,
        Field humidity,
        List<Choice> humidityChannels,
        List<String> found,
        List<String> faults,
        List<ChartPart> proof,
        Field decides)
        implements Page {
    @Override
    public String template() {
        return "ovens/chart.jte";
    }

    @Override
    public String frontDoor() {
        return "ovens";
    }
}
