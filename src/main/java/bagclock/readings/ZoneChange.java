package bagclock.readings;

import bagclock.core.exposure.Zone;
import bagclock.core.exposure.ZoneLog.Reading;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What new readings changed in one zone: how the time between {@code before} and {@code after} counts, nothing else.
 *
 * @param before the last reading before the new ones
 * @param added the new ones, ascending; readings that were there already may lie between them
 * @param after the next reading after them
 * @param daysRebuilt how many day blocks were made anew
 */
public record ZoneChange(
        Zone zone, Optional<Reading> before, List<Reading> added, Optional<Reading> after, int daysRebuilt) {
    /** Keeps its own copy. */
    public ZoneChange {
        added = List.copyOf(added);
    }

    /** The new ones and their neighbours, ascending. */
    public List<Reading> all() {
        return Stream.of(before.stream(), added.stream(), after.stream())
                .flatMap(part -> part)
                .toList();
    }

    /** Whether the new ones go on after all others, and no reading ceased to hold before the next came. */
    public boolean continuesWithin(Duration gap) {
        List<Reading> all = new ArrayList<>(all());
        boolean goesOn = before.isPresent() && after.isEmpty();
        for (int i = 0; goesOn && i + 1 < all.size(); i++) {
            goesOn = Duration.between(all.get(i).at(), all.get(i + 1).at()).compareTo(gap) <= 0;
        }
        return goesOn;
    }
}
