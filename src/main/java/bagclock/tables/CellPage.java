package bagclock.tables;

import bagclock.platform.Page;
import java.util.List;

/**
 * One cell: where it was read, and every comparison of it.
 *
 * @param doubts neighbours that its value contradicts, in words
 * @param takeBack whether a comparison counts that can be taken back
 */
public record CellPage(
        String title,
        String sheet,
        String sheetHref,
        String printed,
        String value,
        String shipped,
        String status,
        String source,
        List<String> doubts,
        List<Comparison> comparisons,
        boolean takeBack,
        String action,
        String number,
        int basedOn)
        implements Page {
    /** One comparison. */
    public record Comparison(String version, String value, String by, String on, String copy, String entered) {}

    @Override
    public String template() {
        return "tables/cell.jte";
    }

    @Override
    public String frontDoor() {
        return "tables";
    }
}
