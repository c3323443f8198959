package bagclock.stock;

import bagclock.platform.Choice;
import bagclock.platform.Field;
import java.util.List;

/**
 * One field of a form with the way it is entered.
 *
 * @param choices for {@link Kind#CHOICES} and {@link Kind#SELECT}
 */
public record Input(Field field, Kind kind, List<Choice> choices) {
    /** How a field is entered. */
    public enum Kind {
        TEXT,
        /** Takes a scan. */
        SCANNED,
        NUMBER,
        MOMENT,
        CHOICES,
        SELECT,
        FILE,
        /** Carried along, not shown. */
        HIDDEN
    }

    static Input of(Field field, Kind kind) {
        return new Input(field, kind, List.of());
    }
}
