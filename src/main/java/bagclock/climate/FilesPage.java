package bagclock.climate;

import bagclock.platform.Choice;
import bagclock.platform.Field;
import bagclock.platform.Page;
import java.util.List;

/**
 * Files of loggers: the newest, and the form for one more.
 *
 * @param places that take readings
 * @param known names of loggers, to choose from
 */
public record FilesPage(
        String title, Field logger, Field place, List<Choice> places, Field file, List<String> known, List<Line> files)
        implements Page {
    /** One file. */
    public record Line(String id, String name, String logger, String place, String uploaded, String state) {}

    @Override
    public String template() {
        return "climate/files.jte";
    }

    @Override
    public String frontDoor() {
        return "climate";
    }
}
