package bagclock.core.oven;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What is baked together: it goes in and comes out as one.
 *
 * @param programmes the allowed ones; the first that fits an oven at a temperature and is shortest counts there
 * @param ovens the only ovens that it may go to; empty: any
 * @param wish from when it can, by when it should
 */
public record Lot(String tag, int positions, List<Programme> programmes, Set<String> ovens, Wish wish) {
    /**
     * When a lot can go in and should be out.
     *
     * @param neededBy empty: by no time in particular
     * @param weight how much an hour late counts, at least 1
     */
    public record Wish(Instant readyFrom, Optional<Instant> neededBy, int weight) {
        /** Refuses with {@link IllegalArgumentException} a weight below 1. */
        public Wish {
            if (weight < 1) {
                throw new IllegalArgumentException("a weight must be at least 1, was " + weight);
            }
        }
    }

    /** Keeps its own copies. */
    public Lot {
        programmes = List.copyOf(programmes);
        ovens = Set.copyOf(ovens);
    }

    /** Whether it may go to an oven, by its own word and by its positions. */
    public boolean mayGoTo(Oven oven) {
        return positions <= oven.positions() && (ovens.isEmpty() || ovens.contains(oven.code()));
    }

    /** The same lot, needed by another time. */
    public Lot neededBy(Optional<Instant> time) {
        return new Lot(tag, positions, programmes, ovens, new Wish(wish.readyFrom(), time, wish.weight()));
    }
}
