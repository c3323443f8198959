package bagclock.core.oven;

import bagclock.core.oven.Fault.Law;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * Planned runs against the shop as it has become. What was planned and can't be is always named: a run that should stay is
 * never dropped in silence.
 *
 * @param kept runs that should stay and can, without the lots that they lost
 * @param free the others that still can be as planned, likewise
 * @param letGo what can't be as planned
 */
public record Held(List<Run> kept, List<Run> free, List<LetGo> letGo) {
    /**
     * A planned run that can't be as planned, or can be without some of its lots only.
     *
     * @param lots those of its lots that it holds no longer
     * @param faults why, at least one. {@link Law#KNOWN}: the lot waits for no bake, or the oven is gone; {@link Law#ONCE}:
     *     the lot is in another oven; {@link Law#NOT_BEFORE_NOW}: the run should have begun, and nobody loaded it
     */
    public record LetGo(Run run, List<String> lots, List<Fault> faults) {
        /** Keeps its own copies. */
        public LetGo {
            lots = List.copyOf(lots);
            faults = List.copyOf(faults);
        }

        /** Whether it could still begin, late. */
        public boolean isOverdue() {
            return faults.stream().allMatch(fault -> fault.law() == Law.NOT_BEFORE_NOW);
        }

        /** Whether the run itself stays, without these lots. */
        public boolean isLessLots() {
            return lots.size() < run.lots().size()
                    && faults.stream().allMatch(fault -> fault.law() == Law.ONCE || isGone(fault));
        }

        /** Whether a fault says that a lot waits for no bake. */
        public boolean isGone(Fault fault) {
            return fault.law() == Law.KNOWN && run.lots().containsAll(fault.parts());
        }
    }

    /** Keeps its own copies. */
    public Held {
        kept = List.copyOf(kept);
        free = List.copyOf(free);
        letGo = List.copyOf(letGo);
    }

    /**
     * Those that should stay have their place first. A run that is over, or in its oven already, is neither kept nor named.
     *
     * @param shop with what runs, and with every lot that waits
     * @param stays whether a run should stay as it is
     */
    public static Held of(Shop shop, Plan planned, Predicate<Run> stays) {
        Sorting sorting = new Sorting(shop, planned);
        planned.runs().stream().filter(stays).forEach(sorting::take);
        int kept = sorting.there.size();
        planned.runs().stream().filter(stays.negate()).forEach(sorting::take);
        List<Run> there = sorting.there;
        return new Held(there.subList(shop.frozen().size(), kept), there.subList(kept, there.size()), sorting.letGo);
    }

    /** Whether a run could stand beside others; empty if nothing speaks against it. */
    public static List<Fault> against(Shop shop, List<Run> others, Run run) {
        return against(shop, others, List.of(run));
    }

    private static List<Fault> against(Shop shop, List<Run> others, List<Run> runs) {
        List<Lot> its = shop.lots().stream()
                .filter(lot -> runs.stream().anyMatch(run -> run.lots().contains(lot.tag())))
                .toList();
        List<Run> together = new ArrayList<>(others);
        together.addAll(runs);
        Shop beside = new Shop(shop.now(), shop.ovens(), its, others, shop.customs());
        return PlanCheck.faults(beside, new Plan(together)).stream().distinct().toList();
    }

    /** What was found so far. */
    private static final class Sorting {
        private final Shop shop;
        private final Set<String> waiting;
        private final List<Run> there;
        private final List<LetGo> letGo = new ArrayList<>();
        private final Set<String> asPlanned;

        Sorting(Shop shop, Plan planned) {
            this.shop = shop;
            this.waiting = shop.free().stream().map(Lot::tag).collect(Collectors.toSet());
            this.there = new ArrayList<>(shop.frozen());
            this.asPlanned = planned.runs().stream().collect(Collectors.groupingBy(Run::oven)).entrySet().stream()
                    .filter(oven -> canAllStay(oven.getValue()))
                    .map(Map.Entry::getKey)
                    .collect(Collectors.toSet());
        }

        /** A run alone may need a longer change-over than after the one before it: where all can stay, none is judged alone. */
        private boolean canAllStay(List<Run> runs) {
            List<Run> ahead = runs.stream().filter(run -> rest(run).isPresent()).toList();
            List<Run> rests = ahead.stream().flatMap(run -> rest(run).stream()).toList();
            return ahead.stream().noneMatch(run -> run.startAt().isBefore(shop.now()))
                    && against(shop, shop.frozen(), rests).isEmpty();
        }

        /** What is left of a run that is not over; empty if none of its lots waits. */
        private Optional<Run> rest(Run run) {
            List<Run.Stay> left = run.stays().stream()
                    .filter(stay -> waiting.contains(stay.lot()))
                    .toList();
            boolean isOver = left.isEmpty() || !run.endAt().isAfter(shop.now());
            return isOver ? Optional.empty() : Optional.of(new Run(run.oven(), run.temperature(), left));
        }

        private void take(Run run) {
            if (!run.startAt().isBefore(shop.now())) {
                lost(run);
            }
            rest(run).ifPresent(rest -> {
                List<Fault> faults = faults(run, rest);
                if (faults.isEmpty()) {
                    there.add(rest);
                } else {
                    letGo.add(new LetGo(run, rest.lots(), faults));
                }
            });
        }

        private List<Fault> faults(Run run, Run rest) {
            if (run.startAt().isBefore(shop.now())) {
                return List.of(Fault.of(Law.NOT_BEFORE_NOW, run.oven()));
            }
            return asPlanned.contains(run.oven()) ? List.of() : against(shop, there, rest);
        }

        /** Lots that wait no more: gone, or in another oven. */
        private void lost(Run run) {
            List<Fault> faults = new ArrayList<>();
            for (String lot : run.lots()) {
                List<String> ovens = shop.frozen().stream()
                        .filter(other -> other.lots().contains(lot))
                        .map(Run::oven)
                        .toList();
                if (ovens.isEmpty() && !waiting.contains(lot)) {
                    faults.add(Fault.of(Law.KNOWN, lot));
                } else if (!ovens.isEmpty() && !ovens.contains(run.oven())) {
                    faults.add(Fault.of(Law.ONCE, lot, ovens.get(0)));
                }
            }
            if (!faults.isEmpty()) {
                List<String> lots =
                        faults.stream().map(fault -> fault.parts().get(0)).toList();
                letGo.add(new LetGo(run, lots, faults));
            }
        }
    }
}
