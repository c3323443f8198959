package bagclock.core.oven;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Runs by time, then by oven. Whether they are lawful says {@link PlanCheck}. */
public record Plan(List<Run> runs) {
    /** Sorts a copy. */
    public Plan {
        runs = runs.stream()
                .sorted(Comparator.comparing(Run::startAt).thenComparing(Run::oven))
                .toList();
    }

    /** The stay of a lot. */
    public Optional<Run.Stay> stay(String lot) {
        return runs.stream()
                .flatMap(run -> run.stays().stream())
                .filter(stay -> stay.lot().equals(lot))
                .findFirst();
    }

    /** The run that a lot is in. */
    public Optional<Run> runOf(String lot) {
        return runs.stream().filter(run -> run.lots().contains(lot)).findFirst();
    }
}
