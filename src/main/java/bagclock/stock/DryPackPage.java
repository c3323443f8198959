package bagclock.stock;

import bagclock.platform.Page;
import java.util.List;

/**
 * Dry packing: what must be true before the bag is closed, and what the clerk confirms by closing it.
 *
 * @param checks each with whether it holds
 * @param ready whether nothing stands in the way
 * @param refusals what the desk said, in words
 */
public record DryPackPage(
        String title,
        String tag,
        String key,
        List<Check> checks,
        boolean ready,
        List<String> refusals,
        List<Input> inputs)
        implements Page {
    /**
     * One thing that must be true, or must be known.
     *
     * @param href where it is mended; empty for nowhere
     */
    public record Check(boolean holds, String words, String href) {}

    @Override
    public String template() {
        return "stock/dryPack.jte";
    }

    @Override
    public String frontDoor() {
        return "stock";
    }
}
