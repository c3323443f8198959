package bagclock.core.proof;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** A stretch of time; {@code to} is never before {@code from}. */
public record Spell(Instant from, Instant to) {
    /** How long it lasted. */
    public Duration length() {
        return Duration.between(from, to);
    }

    boolean overlaps(Spell other) {
        return from.isBefore(other.to) && other.from.isBefore(to);
    }

    /** All of them together; they must not overlap. */
    static Duration total(List<Spell> spells) {
        return spells.stream().map(Spell::length).reduce(Duration.ZERO, Duration::plus);
    }

    /** The time that lies in a spell of both; each list ascending and without overlaps, as the result. */
    static List<Spell> both(List<Spell> one, List<Spell> other) {
        List<Spell> both = new ArrayList<>();
        int i = 0;
        int j = 0;
        while (i < one.size() && j < other.size()) {
            Instant from = later(one.get(i).from(), other.get(j).from());
            Instant to = earlier(one.get(i).to(), other.get(j).to());
            if (from.isBefore(to)) {
                both.add(new Spell(from, to));
            }
            if (one.get(i).to().isBefore(other.get(j).to())) {
                i++;
            } else {
                j++;
            }
        }
        return both;
    }

    /** The parts of spells that lie between two moments. */
    static List<Spell> between(List<Spell> spells, Instant from, Instant to) {
        return from.isBefore(to) ? both(spells, List.of(new Spell(from, to))) : List.of();
    }

    private static Instant later(Instant one, Instant other) {
        return one.isAfter(other) ? one : other;
    }

    private static Instant earlier(Instant one, Instant other) {
        return one.isBefore(other) ? one : other;
    }
}
