package bagclock.stock;

import bagclock.platform.Page;
import java.util.List;

/**
 * One stock-take as it was kept.
 *
 * @param lead when and by whom
 * @param groups found, missing, unexpected, strange
 */
public record StockTakePage(String title, String lead, String id, List<Group> groups) implements Page {
    /**
     * Codes of one standing.
     *
     * @param items whether each is an item of the house
     */
    public record Group(String title, boolean items, List<CountPage.Line> lines) {}

    @Override
    public String template() {
        return "stock/stockTake.jte";
    }

    @Override
    public String frontDoor() {
        return "stock";
    }
}
