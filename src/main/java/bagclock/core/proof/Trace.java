package bagclock.core.proof;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;

/**
 * What one probe wrote.
 *
 * @param name as the file calls it
 * @param samples ascending; of two at one time both count
 */
public record Trace(String name, List<Sample> samples) {
    /** One value: degrees Celsius, or %RH. */
    public record Sample(Instant at, double value) {}

    /** Puts the samples in order. */
    public Trace {
        samples = samples.stream().sorted(Comparator.comparing(Sample::at)).toList();
    }

    /** What was written from one moment to another, both included. */
    Trace within(Instant from, Instant to) {
        return new Trace(
                name,
                samples.stream()
                        .filter(one -> !one.at().isBefore(from) && !one.at().isAfter(to))
                        .toList());
    }
}
