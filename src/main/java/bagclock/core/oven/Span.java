package bagclock.core.oven;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;

/** A stretch of time that is not empty. */
public record Span(Instant startInclusive, Instant endExclusive) {
    /** Refuses with {@link IllegalArgumentException} a span that ends before or when it starts. */
    public Span {
        if (!startInclusive.isBefore(endExclusive)) {
            throw new IllegalArgumentException("a span must not be empty: " + startInclusive + " to " + endExclusive);
        }
    }

    /** Whether both share some time. */
    public boolean overlaps(Span other) {
        return startInclusive.isBefore(other.endExclusive) && other.startInclusive.isBefore(endExclusive);
    }

    /** Whether the moment lies in it; its end counts, since a door may be opened at the last minute. */
    boolean reaches(Instant moment) {
        return !moment.isBefore(startInclusive) && !moment.isAfter(endExclusive);
    }

    /** Whether any two of them share some time. */
    public static boolean anyOverlap(List<Span> spans) {
        List<Span> sorted = spans.stream()
                .sorted(Comparator.comparing(Span::startInclusive))
                .toList();
        for (int i = 1; i < sorted.size(); i++) {
            if (sorted.get(i - 1).overlaps(sorted.get(i))) {
                return true;
            }
        }
        return false;
    }
}
