package bagclock.parts;

import bagclock.platform.Field;
import bagclock.platform.Page;
import java.util.List;

/**
 * Part types from a file: first what it would do, then the button that does it.
 *
 * @param refusal why nothing was kept; empty for no reason
 * @param summary what would happen; empty before a file was read
 * @param unknown columns that nothing is known of, in words; empty for none
 * @param bad lines that can't be kept
 * @param moreBad how many more there are, in words; empty for none
 * @param doubts what is doubtful about lines that can be kept
 * @param changes what would happen, line by line
 * @param plan which versions the preview rests on
 * @param offer words of the button that keeps the good lines; empty when there is nothing to offer
 */
public record PartsImportPage(
        String title,
        Field text,
        String refusal,
        String summary,
        String unknown,
        List<BadLine> bad,
        String moreBad,
        List<Line> doubts,
        String moreDoubts,
        List<Line> changes,
        String moreChanges,
        String plan,
        String offer,
        List<Explained> columns)
        implements Page {
    /** A line that can't be kept. */
    public record BadLine(String line, String column, String why) {}

    /** A line that can be kept. */
    public record Line(String line, String number, String what) {}

    /** A column that a file may have. */
    public record Explained(String column, String label, String hint) {}

    @Override
    public String template() {
        return "parts/import.jte";
    }

    @Override
    public String frontDoor() {
        return "parts";
    }
}
