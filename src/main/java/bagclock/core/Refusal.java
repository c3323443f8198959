package bagclock.core;

import java.util.List;

/**
 * A refusal that the person asking can mend: the reason and its typed parts, without words.
 *
 * @param parts instants, durations and names in the order that {@link Reason} documents
 */
public record Refusal(Reason reason, List<Object> parts) {
    /** Keeps its own copy of the parts. */
    public Refusal {
        parts = List.copyOf(parts);
    }

    /** Short form for a reason and its parts. */
    public static Refusal of(Reason reason, Object... parts) {
        return new Refusal(reason, List.of(parts));
    }
}
