package bagclock.readings;

import java.util.List;

/** What became of some readings, and what they changed. */
public record Taken(Kept kept, List<ZoneChange> changes) {
    /** Keeps its own copy. */
    public Taken {
        changes = List.copyOf(changes);
    }
}
