package bagclock.core.proof;

import java.util.List;
import java.util.Optional;

/**
 * The samples of one run.
 *
 * @param temperatures of every probe that counts, in degrees Celsius
 * @param humidity in %RH; empty if the chart holds none
 */
public record Chart(List<Trace> temperatures, Optional<Trace> humidity) {
    /** Keeps its own copy. */
    public Chart {
        temperatures = List.copyOf(temperatures);
    }
}
