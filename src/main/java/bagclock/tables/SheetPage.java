package bagclock.tables;

import bagclock.platform.Field;
import bagclock.platform.Page;
import java.util.List;
import java.util.Optional;

/**
 * One table as in print; with a form when it is being compared.
 *
 * @param printed where it stands in the standard
 * @param unit what its values are
 * @param doubts corrected values that contradict a neighbour, in words
 */
public record SheetPage(
        String title,
        String address,
        String printed,
        String unit,
        String done,
        List<String> doubts,
        List<Grid> grids,
        Optional<Form> form)
        implements Page {
    /** One grid. */
    public record Grid(String name, String compare, List<String> columns, List<Row> rows) {}

    /** One row. */
    public record Row(String name, String tick, List<Cell> cells) {}

    /**
     * One cell.
     *
     * @param number its number in the table
     * @param was the value that the form was made with
     * @param entered what stands in the field
     * @param label names the cell for its field
     * @param error why it was refused; empty when it was not
     */
    public record Cell(
            String number,
            String href,
            String value,
            String status,
            String mark,
            String was,
            String entered,
            boolean ticked,
            String label,
            String error) {}

    /**
     * The form of a comparison.
     *
     * @param refusal why nothing was kept; empty for no reason
     */
    public record Form(String action, int basedOn, String refusal, String grid, Field by, Field on, Field copy) {}

    @Override
    public String template() {
        return "tables/sheet.jte";
    }

    @Override
    public String frontDoor() {
        return "tables";
    }
}
