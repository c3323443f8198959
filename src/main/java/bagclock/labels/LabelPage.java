package bagclock.labels;

import bagclock.platform.Page;
import java.util.List;

/**
 * Labels or sheets as they come out of the printer.
 *
 * @param done what was just written down, in words; empty for nothing
 * @param size names the style sheet with the paper's size
 * @param pdf address of the same as a file
 * @param others other sizes, or other labels
 * @param back where to go on
 */
public record LabelPage(
        String title,
        String lead,
        String done,
        String size,
        String pdf,
        List<Link> others,
        Link back,
        List<Print> prints)
        implements Page {
    /** A link; {@code here} when it leads to this very page. */
    public record Link(String href, String label, boolean here) {}

    /** One label. */
    public record Print(String words, Drawing drawing) {}

    @Override
    public String template() {
        return "labels/label.jte";
    }
}
