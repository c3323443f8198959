package bagclock.stock;

import bagclock.platform.Page;
import java.util.List;

/**
 * The form of one act.
 *
 * @param tag the item that it is about; empty at a receipt
 * @param action where it is sent
 * @param corrects the entry that it replaces; empty for none
 * @param key makes a second sending harmless
 * @param refusals what the desk said, in words
 */
public record ActPage(
        String title,
        String lead,
        String tag,
        String action,
        String corrects,
        String key,
        List<String> refusals,
        List<Input> inputs)
        implements Page {
    @Override
    public String template() {
        return "stock/act.jte";
    }

    @Override
    public String frontDoor() {
        return "stock";
    }
}
