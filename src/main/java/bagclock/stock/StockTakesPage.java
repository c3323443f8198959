package bagclock.stock;

import bagclock.platform.Page;
import java.util.List;

/** The newest stock-takes that were kept, newest first. */
public record StockTakesPage(String title, List<Line> lines) implements Page {
    /** One stock-take: where, when, by whom, and how many codes of each kind. */
    public record Line(
            String id,
            String place,
            String machine,
            String at,
            String who,
            int found,
            int missing,
            int unexpected,
            int strange) {}

    @Override
    public String template() {
        return "stock/stockTakes.jte";
    }

    @Override
    public String frontDoor() {
        return "stock";
    }
}
