package bagclock.stock;

import bagclock.platform.Page;
import java.util.List;
import java.util.Optional;

/**
 * The form of one act.
 *
 * @param tag the item that it is about; empty at a receipt
 * @param action where it is sent
 * @param corrects the entry that it replaces; empty for none
 * @param key makes a second sending harmless
 * @param refusals what the desk said, in words
 * @param label at a receipt: what was read from the label
 */
public record ActPage(
        String title,
        String lead,
        String tag,
        String action,
        String corrects,
        String key,
        List<String> refusals,
        List<Input> inputs,
        Optional<LabelPart> label)
        implements Page {
    /**
     * What a label said.
     *
     * @param scan the codes so far, one a line; empty for none
     * @param lines what was read, and where
     * @param doubts what is odd about it
     */
    public record LabelPart(String scan, boolean asks, List<String> lines, List<String> doubts) {
        static final LabelPart NONE = new LabelPart("", false, List.of(), List.of());
    }

    @Override
    public String template() {
        return "stock/act.jte";
    }

    @Override
    public String frontDoor() {
        return "stock";
    }
}
