package bagclock.ovens;

import bagclock.platform.Page;
import java.util.List;

/** The doors to open on one day, to be printed. */
public record PlanPrintPage(
        String title, String lead, List<String> named, List<String> without, List<PlanPage.RunLine> runs)
        implements Page {
    @Override
    public String template() {
        return "ovens/planPrint.jte";
    }
}
