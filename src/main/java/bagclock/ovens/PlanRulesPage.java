package bagclock.ovens;

import bagclock.platform.Field;
import bagclock.platform.Page;
import java.util.List;

/**
 * The site's choices for plans, and its own band for charts.
 *
 * @param weekends whether doors are opened at weekends
 */
public record PlanRulesPage(String title, List<Field> numbers, boolean weekends, List<Field> band) implements Page {
    @Override
    public String template() {
        return "ovens/planRules.jte";
    }

    @Override
    public String frontDoor() {
        return "ovens";
    }
}
