package bagclock.core.oven;

import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Everything that a plan is made for.
 *
 * @param now nothing new starts before it
 * @param lots those in frozen runs too
 * @param frozen runs that stay as they are: started, pinned or close
 */
public record Shop(Instant now, List<Oven> ovens, List<Lot> lots, List<Run> frozen, Customs customs) {
    /**
     * The site's choices.
     *
     * @param attended when somebody is there to open a door; empty: always. After the last of them: always
     * @param doorRecovery what one opening of the door adds to every lot that stays in; empty: no run is opened
     * @param aim what counts
     */
    public record Customs(List<Span> attended, Optional<Duration> doorRecovery, Aim aim) {
        /** Doors open at any time, no run is opened, the usual stages. */
        public static final Customs USUAL = new Customs(List.of(), Optional.empty(), Aim.STAGES);

        /** Keeps its own copy. */
        public Customs {
            attended = List.copyOf(attended);
        }
    }

    /** Keeps its own copies. */
    public Shop {
        ovens = List.copyOf(ovens);
        lots = List.copyOf(lots);
        frozen = List.copyOf(frozen);
    }

    /** Lots whose place is still to be found. */
    public List<Lot> free() {
        Set<String> held = new HashSet<>();
        frozen.forEach(run -> held.addAll(run.lots()));
        return lots.stream().filter(lot -> !held.contains(lot.tag())).toList();
    }

    /** The ovens by their codes. */
    Map<String, Oven> ovensByCode() {
        return ovens.stream().collect(Collectors.toMap(Oven::code, Function.identity()));
    }
}
