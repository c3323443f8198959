package bagclock.labels;

import bagclock.platform.Choice;
import bagclock.platform.Field;
import bagclock.platform.Page;
import java.util.List;

/**
 * The site's choice of sizes and codes, and whether the wall display is shown.
 *
 * @param basedOn the version that the form rests on
 * @param since who decided last and when; empty for nobody
 */
public record CustomsPage(
        String title,
        boolean done,
        int basedOn,
        String since,
        Field item,
        Field bag,
        List<Choice> labels,
        Field sheet,
        List<Choice> sheets,
        Field code,
        List<Choice> codes,
        Field wall,
        List<Choice> walls)
        implements Page {
    @Override
    public String template() {
        return "labels/customs.jte";
    }
}
