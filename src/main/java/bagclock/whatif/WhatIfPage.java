package bagclock.whatif;

import bagclock.platform.Choice;
import bagclock.platform.Field;
import bagclock.platform.Page;
import java.util.List;

/**
 * Three suppositions about an item or a part type, each with its answer by the rules and the estimate beside it.
 *
 * @param action the page's own address, where the form is sent
 * @param back address of what it is about
 * @param number of a part type, sent along with the form; empty for an item
 */
public record WhatIfPage(
        String title,
        String subject,
        String lead,
        String action,
        String back,
        String number,
        Fields fields,
        Told air,
        Told cabinet,
        Told bake)
        implements Page {
    /** What can be supposed. */
    public record Fields(
            Field temperature, Field humidity, Field cabinet, List<Choice> cabinets, Field until, Field bakeAt) {}

    /**
     * What follows.
     *
     * @param verdict clear, wait, bake or hold; empty for none
     * @param word the verdict's word
     * @param sentences by the rules, the first leading
     * @param estimate what the model says beside it; empty for nothing
     * @param warning where the rules may be too kind; empty for nowhere
     */
    public record Told(String verdict, String word, List<String> sentences, String estimate, String warning) {}

    @Override
    public String template() {
        return "whatif/whatIf.jte";
    }

    @Override
    public String frontDoor() {
        return "stock";
    }
}
