package bagclock.stock;

import bagclock.platform.Page;
import java.util.List;

/**
 * Everything at one place, to be moved at once.
 *
 * @param from code of the place
 * @param tags what is there, for the form: separated by commas
 * @param items the same, to read
 * @param places where to
 * @param told what became of it; empty title before
 * @param refused what was not moved, and why
 * @param moved what was moved, tag and number of its entry, for taking it back: separated by commas; empty for nothing
 */
public record TrolleyPage(
        String title,
        String lead,
        String from,
        String key,
        String tags,
        List<Item> items,
        List<CounterPage.Place> places,
        CounterPage.Told told,
        List<Item> refused,
        String moved)
        implements Page {
    /** An item and what is to say of it. */
    public record Item(String tag, String words) {}

    @Override
    public String template() {
        return "stock/trolley.jte";
    }

    @Override
    public String frontDoor() {
        return "stock";
    }
}
