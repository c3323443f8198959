package bagclock.ovens;

import bagclock.platform.Field;
import bagclock.platform.Page;
import java.util.List;
import java.util.Set;

/**
 * The form of an oven.
 *
 * @param basedOn the version that is changed; 0 for a new oven
 */
public record OvenPage(String title, String action, int basedOn, List<Field> texts, List<Field> numbers)
        implements Page {
    /** Names of fields that may be left empty. */
    public Set<String> optional() {
        return Set.of("holds", "coolDown", "turnaround", "change");
    }

    @Override
    public String template() {
        return "ovens/oven.jte";
    }

    @Override
    public String frontDoor() {
        return "ovens";
    }
}
