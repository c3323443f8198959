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
 * @param plan the load beside the published plan
 */
public record LoadPage(
        String title,
        String key,
        String added,
        List<String> refusals,
        Beside plan,
        Field oven,
        List<Choice> ovens,
        Field setPoint,
        Field humidity,
        Field at,
        Field items,
        List<Choice> itemChoices,
        Field more)
        implements Page {
    /**
     * What the published plan says of the load.
     *
     * @param planned what is as planned, in a sentence; empty for nothing
     * @param off what is not, in words
     * @param asks whether it must be confirmed before it is loaded
     */
    public record Beside(String planned, List<String> off, boolean asks) {
        static final Beside NOTHING = new Beside("", List.of(), false);
    }

    /** With what the published plan says. */
    LoadPage beside(Beside compared) {
        return new LoadPage(
                title, key, added, refusals, compared, oven, ovens, setPoint, humidity, at, items, itemChoices, more);
    }

    /** With what was just scanned, and with chosen items that do not wait in the queue. */
    LoadPage adding(String words, List<Choice> others) {
        List<Choice> all = Stream.concat(itemChoices.stream(), others.stream()).toList();
        return new LoadPage(title, key, words, refusals, plan, oven, ovens, setPoint, humidity, at, items, all, more);
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
