package bagclock.boards;

import bagclock.platform.Field;
import bagclock.platform.Page;
import java.util.List;

/**
 * The import of a parts list.
 *
 * @param refusal why nothing was kept; empty before anything was sent
 * @param bad lines that can't be read
 * @param more how many more there are; empty for none
 * @param unknown part types that the house does not know
 * @param offer words of the button that keeps the good ones; empty if there is nothing to keep
 */
public record PartsPage(
        String title,
        String number,
        int basedOn,
        Field text,
        String refusal,
        List<Bad> bad,
        String more,
        List<String> unknown,
        String offer)
        implements Page {
    /** A line that can't be read. */
    public record Bad(String line, String column, String why) {}

    @Override
    public String template() {
        return "boards/parts.jte";
    }

    @Override
    public String frontDoor() {
        return "bench";
    }
}
