package bagclock.core.oven;

import bagclock.core.quantity.Celsius;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;

/**
 * One filling of an oven at one temperature.
 *
 * @param stays at least one; who goes in when and comes out when
 */
public record Run(String oven, Celsius temperature, List<Stay> stays) {
    /** One lot in it, from closing the door behind it to opening it again. */
    public record Stay(String lot, Instant inAt, Instant outAt) {}

    /** Refuses with {@link IllegalArgumentException} a run of nothing; keeps its own copy. */
    public Run {
        stays = List.copyOf(stays);
        if (stays.isEmpty()) {
            throw new IllegalArgumentException("a run needs a lot");
        }
    }

    /** When its first lot goes in. */
    public Instant startAt() {
        return stays.stream().map(Stay::inAt).min(Comparator.naturalOrder()).orElseThrow();
    }

    /** When its last lot comes out. */
    public Instant endAt() {
        return stays.stream().map(Stay::outAt).max(Comparator.naturalOrder()).orElseThrow();
    }

    /** Whether a lot joins it or leaves it while it goes on. */
    public boolean isStaggered() {
        return stays.stream().anyMatch(stay -> joins(stay) || leaves(stay));
    }

    /** Whether one of its lots goes in after its first. */
    public boolean joins(Stay stay) {
        return stay.inAt().isAfter(startAt());
    }

    /** Whether one of its lots comes out before its last. */
    public boolean leaves(Stay stay) {
        return stay.outAt().isBefore(endAt());
    }

    /** Its lots. */
    public List<String> lots() {
        return stays.stream().map(Stay::lot).toList();
    }
}
