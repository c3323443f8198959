package bagclock.stock;

import bagclock.platform.Page;
import java.util.List;

/**
 * Labels whose level or peak is not the part type's.
 *
 * @param mayAct whether the visitor may settle one
 */
public record LevelPage(String title, List<Line> lines, boolean mayAct) implements Page {
    /**
     * One label.
     *
     * @param label level and peak as the label has them, as far as they differ
     * @param known the part type's
     * @param outcome which counts now
     */
    public record Line(
            String tag,
            String labelNumber,
            String partNumber,
            String label,
            String known,
            String outcome,
            String machine,
            String at,
            boolean open) {}

    @Override
    public String template() {
        return "stock/levels.jte";
    }

    @Override
    public String frontDoor() {
        return "levels";
    }
}
