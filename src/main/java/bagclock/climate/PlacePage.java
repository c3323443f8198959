package bagclock.climate;

import bagclock.platform.Choice;
import bagclock.platform.Field;
import bagclock.platform.Page;
import java.util.List;

/**
 * The form of a zone or a cabinet.
 *
 * @param action where it is sent
 * @param basedOn the version that is changed; 0 for a new place
 * @param fields in order
 * @param loggedChoices of the field {@code logged}
 */
public record PlacePage(
        String title,
        String lead,
        String action,
        String kind,
        int basedOn,
        List<Field> fields,
        Field logged,
        List<Choice> loggedChoices,
        List<Field> limits,
        Field classField,
        List<Choice> classes)
        implements Page {
    @Override
    public String template() {
        return "climate/place.jte";
    }

    @Override
    public String frontDoor() {
        return "climate";
    }
}
