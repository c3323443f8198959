package bagclock.climate;

import bagclock.platform.Field;
import bagclock.platform.Page;
import java.util.List;

/**
 * Readings from a file.
 *
 * @param bad lines that can't be read
 * @param offer words of the button that keeps the good ones; empty when there is nothing to offer
 * @param more how many bad lines are not shown, in words; empty for none
 */
public record ImportPage(
        String title, Field text, String refusal, List<BadLine> bad, String more, String offer, String zones)
        implements Page {
    /** A line that can't be read. */
    public record BadLine(String line, String column, String why) {}

    @Override
    public String template() {
        return "climate/import.jte";
    }

    @Override
    public String frontDoor() {
        return "climate";
    }
}
