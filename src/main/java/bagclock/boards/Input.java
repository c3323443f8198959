package bagclock.boards;

import bagclock.platform.Choice;
import bagclock.platform.Field;
import java.util.List;

/**
 * One field of a form with the way it is entered.
 *
 * @param choices for {@link Kind#CHOICES}, {@link Kind#BOX} and {@link Kind#SELECT}
 */
public record Input(Field field, Kind kind, List<Choice> choices) {
    /** How a field is entered. */
    public enum Kind {
        TEXT,
        /** Takes a scan. */
        SCANNED,
        NUMBER,
        LINES,
        DATE,
        MOMENT,
        CHOICES,
        BOX,
        SELECT
    }

    static Input of(Kind kind, Field field) {
        return new Input(field, kind, List.of());
    }
}
