package bagclock.core.proof;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Time at temperature from a moment on, less interruptions. Interruptions may overlap; each moment is lost once.
 *
 * @param start from when time counts
 * @param lost spells that don't count; what lies before the start is left out
 */
public record HotTime(Instant start, List<Spell> lost) {
    /** Puts the spells in order and joins those that overlap. */
    public HotTime {
        List<Spell> apart = new ArrayList<>();
        List<Spell> ordered = lost.stream()
                .filter(spell -> spell.to().isAfter(start))
                .sorted(Comparator.comparing(Spell::from))
                .toList();
        for (Spell spell : ordered) {
            int last = apart.size() - 1;
            Instant from = spell.from().isBefore(start) ? start : spell.from();
            if (last >= 0 && !from.isAfter(apart.get(last).to())) {
                Instant to = apart.get(last).to();
                apart.set(last, new Spell(apart.get(last).from(), spell.to().isAfter(to) ? spell.to() : to));
            } else {
                apart.add(new Spell(from, spell.to()));
            }
        }
        lost = List.copyOf(apart);
    }

    /** When so much time at temperature will have passed: interruptions add to it. */
    public Instant after(Duration needed) {
        Instant ready = start.plus(needed);
        for (Spell spell : lost) {
            ready = spell.from().isBefore(ready) ? ready.plus(spell.length()) : ready;
        }
        return ready;
    }

    /** Time at temperature until a moment; at least nothing. */
    public Duration until(Instant moment) {
        if (!moment.isAfter(start)) {
            return Duration.ZERO;
        }
        return Duration.between(start, moment).minus(Spell.total(Spell.between(lost, start, moment)));
    }
}
