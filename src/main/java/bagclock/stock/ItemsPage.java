package bagclock.stock;

import bagclock.platform.Choice;
import bagclock.platform.Field;
import bagclock.platform.Heading;
import bagclock.platform.Page;
import java.util.List;

/**
 * A list of items; its state is its address.
 *
 * @param before address of the page before; empty for none
 * @param after address of the page after; empty for none
 */
public record ItemsPage(
        String title,
        String lead,
        Field text,
        Field place,
        List<Choice> places,
        Field within,
        List<Choice> withins,
        List<Heading> headings,
        List<Row> rows,
        String before,
        String after)
        implements Page {
    /** One item. */
    public record Row(
            String tag,
            String part,
            String level,
            String quantity,
            String where,
            String clock,
            String life,
            String ends) {}

    @Override
    public String template() {
        return "stock/items.jte";
    }

    @Override
    public String frontDoor() {
        return "stock";
    }
}
