package bagclock.ovens;

import bagclock.platform.Field;
import bagclock.platform.Page;
import java.util.List;

/**
 * The site's choices for plans, and its own band for charts.
 *
 * @param hours when doors are opened
 * @param weekends whether at weekends too
 */
public record PlanRulesPage(String title, List<Field> hours, boolean weekends, List<Field> others, List<Field> band)
        implements Page {
    @Override
    public String template() {
        return "ovens/planRules.jte";
    }

    @Override
    public String frontDoor() {
        return "ovens";
    }
}
