package bagclock.ovens;

import bagclock.platform.Choice;
import bagclock.platform.Field;
import bagclock.platform.Page;
import java.util.List;
import java.util.stream.Stream;

/**
 * Loading an oven.
 *
 * @param key makes a second sending harmless
 * @param added what was just scanned and may go in, in words; empty for nothing
 * @param refusals what may not go in, in words
 */
public record LoadPage(
        String title,
        String key,
        String added,
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
    /** With what was just scanned, and with chosen items that do not wait in the queue. */
    LoadPage adding(String words, List<Choice> others) {
        List<Choice> all = Stream.concat(itemChoices.stream(), others.stream()).toList();
        return new LoadPage(title, key, words, refusals, oven, ovens, setPoint, humidity, at, items, all, more);
    }

    @Override
    public String template() {
        return "ovens/load.jte";
    }

    @Override
    public String frontDoor() {
        return "ovens";
    }
}
