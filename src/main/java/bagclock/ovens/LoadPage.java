package bagclock.ovens;

import bagclock.platform.Choice;
import bagclock.platform.Field;
import bagclock.platform.Page;
import java.util.List;

/**
 * Loading an oven.
 *
 * @param key makes a second sending harmless
 * @param refusals what may not go in, in words
 */
public record LoadPage(
        String title,
        String key,
        List<String> refusals,
        Field oven,
        List<Choice> ovens,
        Field setPoint,
        Field humidity,
        Field at,
        Field items,
        List<Choice> itemChoices,
        Field more)
        implements Page {
    @Override
    public String template() {
        return "ovens/load.jte";
    }

    @Override
    public String frontDoor() {
        return "ovens";
    }
}
