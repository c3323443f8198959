package bagclock.parts;

import bagclock.platform.Choice;
import bagclock.platform.Field;
import bagclock.platform.Page;
import java.util.List;

/**
 * The form of a part type.
 *
 * @param number of the part type that is altered; empty for a new one
 * @param basedOn version that the form rests on; 0 for a new one
 * @param seen the doubts that this page shows, for the next request
 * @param refusal why nothing was kept; empty for no reason
 * @param act words of the button
 */
public record PartFormPage(
        String title,
        String back,
        String action,
        String number,
        int basedOn,
        String seen,
        String refusal,
        List<Group> groups,
        String act)
        implements Page {
    /** Fields that belong together. */
    public record Group(String title, String hint, List<Line> lines) {}

    /**
     * One field.
     *
     * @param doubts what is doubtful about it
     */
    public record Line(Field field, Kind kind, List<Choice> choices, List<String> doubts) {}

    /** How a field is entered. */
    public enum Kind {
        WORDS,
        NUMBER,
        LINES,
        CHOICE
    }

    @Override
    public String template() {
        return "parts/form.jte";
    }

    @Override
    public String frontDoor() {
        return "parts";
    }
}
