package bagclock.tables;

import bagclock.platform.Field;
import bagclock.platform.Page;
import java.util.List;

/**
 * A site's comparisons from a file: first what it would do, then the button that does it.
 *
 * @param refusal why nothing was kept; empty for no reason
 * @param summary what would happen; empty before a file was read
 * @param unknown columns that nothing is known of, in words; empty for none
 * @param bad lines that can't be kept
 * @param changes cells that would get another value than they have now
 * @param more how many lines are not shown, in words; empty for none
 * @param offer words of the button that keeps the good lines; empty when there is nothing to offer
 */
public record ConfirmationsPage(
        String title,
        Field text,
        String refusal,
        String summary,
        String unknown,
        List<Line> bad,
        List<Line> changes,
        String more,
        int basedOn,
        String offer)
        implements Page {
    /** One line and what is said of it. */
    public record Line(String line, String where, String what) {}

    @Override
    public String template() {
        return "tables/import.jte";
    }

    @Override
    public String frontDoor() {
        return "tables";
    }
}
