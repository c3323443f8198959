package bagclock.readings;

import bagclock.platform.Choice;
import bagclock.platform.Field;
import java.util.List;

/**
 * One thing that a person must say, or may change, about a file.
 *
 * @param choices none for a field to type in
 */
public record Asked(Field field, List<Choice> choices) {
    /** Keeps its own copy. */
    public Asked {
        choices = List.copyOf(choices);
    }
}
