package bagclock.scan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What a scan says.
 *
 * @param found in the label's order; two values for one thing are both kept
 * @param choices values that are possible where nothing could be decided, by fact
 * @param kept the scan as it may be stored: controls visible, orders and names left out; empty when these can't be told
 *     from the rest
 */
public record Reading(List<Found> found, Set<Flag> flags, Map<Fact, List<String>> choices, String kept) {
    /** Value of {@link Fact#LEVEL} on a label that says: not moisture-sensitive. */
    public static final String NOT_SENSITIVE = "none";

    /** Keeps its own copies. */
    public Reading {
        found = List.copyOf(found);
        Set<Flag> sorted = EnumSet.noneOf(Flag.class);
        sorted.addAll(flags);
        flags = Collections.unmodifiableSet(sorted);
        choices = Map.copyOf(choices);
    }

    static Reading of(List<Found> found, Set<Flag> flags, String kept) {
        return new Reading(found, flags, Map.of(), kept);
    }

    static Reading refused(Flag why) {
        return of(List.of(), EnumSet.of(why), "");
    }

    /** What may be done with it. */
    public Standing standing() {
        return flags.stream().map(Flag::standing).max(Enum::compareTo).orElse(Standing.READ);
    }

    /** The first value of a fact. */
    public Optional<Found> first(Fact fact) {
        return found.stream().filter(one -> one.fact() == fact).findFirst();
    }

    /** The value of a fact; empty when there is none or the values differ. */
    public Optional<String> only(Fact fact) {
        List<String> values = all(fact);
        return values.size() == 1 ? Optional.of(values.get(0)) : Optional.empty();
    }

    /** The different values of a fact. */
    public List<String> all(Fact fact) {
        return found.stream()
                .filter(one -> one.fact() == fact)
                .map(Found::value)
                .distinct()
                .toList();
    }

    /** The same reading with what the house's knowledge says against it. */
    public Reading against(Known known) {
        if (standing() == Standing.REFUSED) {
            return this;
        }
        Set<Flag> all = EnumSet.noneOf(Flag.class);
        all.addAll(flags);
        Optional<String> part = only(Fact.PART_NUMBER);
        if (part.isEmpty() || !known.isPart(part.get())) {
            all.add(part.isEmpty() ? Flag.PART_MISSING : Flag.PART_UNKNOWN);
        } else {
            all.addAll(against(known, part.get()));
        }
        return new Reading(found, all, choices, kept);
    }

    private Set<Flag> against(Known known, String part) {
        Set<Flag> flags = EnumSet.noneOf(Flag.class);
        only(Fact.LOT).filter(lot -> !known.isLot(part, lot)).ifPresent(lot -> flags.add(Flag.LOT_NEW));
        only(Fact.LEVEL)
                .filter(level -> !known.level(part).equals(Optional.of(level)))
                .ifPresent(level -> flags.add(Flag.LEVEL_DIFFERS));
        if (!all(Fact.PEAK).stream().allMatch(peak -> known.isPeak(part, peak))) {
            flags.add(Flag.PEAK_DIFFERS);
        }
        only(Fact.PACKAGE)
                .filter(number -> known.isPackage(part, number))
                .ifPresent(number -> flags.add(Flag.PACKAGE_SEEN));
        return flags;
    }

    /** This reading and then another code of the same label; what differs is kept and flagged. */
    public Reading with(Reading next) {
        List<Found> all = new ArrayList<>(found);
        next.found.stream().filter(one -> !all.contains(one)).forEach(all::add);
        Set<Flag> both = EnumSet.noneOf(Flag.class);
        both.addAll(flags);
        both.addAll(next.flags);
        both.addAll(Facts.conflicts(all));
        Map<Fact, List<String>> open = new EnumMap<>(Fact.class);
        open.putAll(choices);
        open.putAll(next.choices);
        return new Reading(all, both, open, (kept + "\n" + next.kept).strip());
    }
}
