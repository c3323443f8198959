package bagclock.ovens;

import bagclock.platform.Page;
import java.util.List;

/** Runs that ended, and how their hours are known. */
public record RunsPage(String title, String lead, List<Row> rows) implements Page {
    /**
     * One item of a run, or a whole board.
     *
     * @param tagHref of the page of the item or board
     * @param proof what its chart proved, in a word; or that there was none
     * @param href of the page of the run
     */
    public record Row(
            String tag,
            String tagHref,
            String href,
            String oven,
            String in,
            String out,
            String setPoint,
            String hours,
            String needed,
            String proof) {}

    @Override
    public String template() {
        return "ovens/runs.jte";
    }

    @Override
    public String frontDoor() {
        return "ovens";
    }
}
