package bagclock.stock;

import bagclock.platform.Page;
import java.util.List;

/**
 * Labels whose level is not the part type's.
 *
 * @param mayAct whether the visitor may settle one
 */
public record LevelPage(String title, List<Line> lines, boolean mayAct) implements Page {
    /**
     * One label.
     *
     * @param outcome which level counts now
     */
    public record Line(
            String tag,
            String labelNumber,
            String partNumber,
            String labelLevel,
            String knownLevel,
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
