package bagclock.parts;

import bagclock.platform.Choice;
import bagclock.platform.Field;
import bagclock.platform.Heading;
import bagclock.platform.Page;
import java.util.List;

/**
 * A list of part types; its state is its address.
 *
 * @param done what was just done; empty for nothing
 * @param export address of the file of what is listed
 * @param before address of the page before; empty for none
 * @param after address of the page after; empty for none
 */
public record PartsPage(
        String title,
        String lead,
        String done,
        Field text,
        Field level,
        List<Choice> levels,
        List<Heading> headings,
        List<Row> rows,
        String export,
        String before,
        String after)
        implements Page {
    /** One part type. */
    public record Row(
            String number,
            String href,
            String maker,
            String changed,
            String machine,
            String description,
            String ratings,
            String body) {}

    @Override
    public String template() {
        return "parts/parts.jte";
    }

    @Override
    public String frontDoor() {
        return "parts";
    }
}
