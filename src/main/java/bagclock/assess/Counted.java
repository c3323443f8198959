package bagclock.assess;

import bagclock.core.heat.Assumption;
import bagclock.core.heat.Assumption.Fact;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Facts that the contract counts as nought where they are left out, and names. */
final class Counted {
    private static final String NOUGHT = "0";

    private Counted() {}

    static List<Assumption> inHeat(Optional<Fields> heat) {
        boolean missing = heat.filter(fields -> !fields.has("minutes")).isPresent();
        return missing ? List.of(new Assumption(Fact.HEAT_LENGTH, NOUGHT)) : List.of();
    }

    static List<Assumption> inPart(Fields part) {
        List<Assumption> found = new ArrayList<>();
        for (Fact fact : List.of(Fact.BAKED_HOURS, Fact.BAKES, Fact.PASSES)) {
            if (!part.has(fact.field())) {
                found.add(new Assumption(fact, NOUGHT));
            }
        }
        return found;
    }
}
