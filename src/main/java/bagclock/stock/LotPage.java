package bagclock.stock;

import bagclock.platform.Page;
import java.util.List;

/**
 * Where the parts of a lot went, to be printed.
 *
 * @param tag of the item that was asked about
 * @param warning uses that name no board; empty for none
 */
public record LotPage(
        String title, String tag, String lead, String warning, List<Went> went, List<Held> items, String asOf)
        implements Page {
    /** A board, or a use without one. */
    public record Went(String board, String location, String item, String workOrder, String at, String place) {}

    /** An item. */
    public record Held(String tag, String from, String quantity, String where) {}

    @Override
    public String template() {
        return "stock/lot.jte";
    }

    @Override
    public String frontDoor() {
        return "stock";
    }
}
