package bagclock.stock;

import bagclock.platform.Page;
import java.util.List;

/**
 * A stock-take of one place.
 *
 * @param place its code; empty: choose one of the places first
 * @param found everything scanned so far, for the form: separated by commas
 * @param scanned the same, newest first, each with what it means
 * @param finished whether the differences are shown
 * @param missing expected here and not found
 * @param extra found here and expected elsewhere
 * @param strange codes of nothing
 */
public record CountPage(
        String title,
        String lead,
        String place,
        String key,
        String found,
        CounterPage.Told told,
        List<CounterPage.Place> places,
        List<Line> scanned,
        boolean finished,
        List<Line> missing,
        List<Line> extra,
        List<Line> strange)
        implements Page {
    /** An item and what is to say of it. */
    public record Line(String tag, String words) {}

    @Override
    public String template() {
        return "stock/count.jte";
    }

    @Override
    public String frontDoor() {
        return "stock";
    }
}
