package bagclock.core.oven;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Answers at once: takes the lots in several orders of urgency, puts each where it costs least, and keeps the best of
 * these plans.
 */
public final class Dispatch implements Planner {
    @Override
    public Found improve(Problem problem, Sketch from, Budget budget) {
        Found plan = plan(problem).orElseThrow(() -> new IllegalArgumentException("a lot has no time in any oven"));
        Decoder decoder = new Decoder(problem);
        Score before = decoder.score(from);
        boolean isWhole = from.ovens().stream()
                        .flatMap(List::stream)
                        .mapToInt(Batch::size)
                        .sum()
                == problem.lots().length;
        return isWhole && before.compareTo(plan.score()) <= 0 ? new Found(from, before, plan.bounds()) : plan;
    }

    /** A plan for all lots; empty when one of them has no time in any oven. */
    public Optional<Found> plan(Problem problem) {
        return orders(problem).stream()
                .flatMap(order -> plan(problem, order).stream())
                .min(Comparator.comparing(Found::score));
    }

    private static Optional<Found> plan(Problem problem, Comparator<Integer> order) {
        Insertion insertion = new Insertion(problem);
        Sketch sketch = Sketch.empty(problem);
        List<Integer> lots =
                IntStream.range(0, problem.lots().length).boxed().sorted(order).toList();
        for (int lot : lots) {
            Optional<Sketch> more = insertion.insert(sketch, lot);
            if (more.isEmpty()) {
                return Optional.empty();
            }
            sketch = more.get();
        }
        return Optional.of(new Found(sketch, new Decoder(problem).score(sketch), new Alone(problem).bounds()));
    }

    private static List<Comparator<Integer>> orders(Problem problem) {
        Problem.Piece[] lots = problem.lots();
        Comparator<Integer> due = Comparator.comparingInt(lot -> lots[lot].due());
        Comparator<Integer> slack =
                Comparator.comparingInt(lot -> lots[lot].due() - lots[lot].release() - shortest(lots[lot]));
        Comparator<Integer> weight =
                Comparator.comparingDouble(lot -> -(double) lots[lot].weight() / shortest(lots[lot]));
        Comparator<Integer> release = Comparator.comparingInt(lot -> lots[lot].release());
        Comparator<Integer> longest = Comparator.comparingInt(lot -> -shortest(lots[lot]));
        return List.of(
                due.thenComparing(longest),
                slack.thenComparing(weight),
                weight.thenComparing(due),
                release.thenComparing(due),
                longest.thenComparing(due));
    }

    private static int shortest(Problem.Piece lot) {
        int shortest = Problem.NEVER;
        for (int[] byTemperature : lot.least()) {
            for (int least : byTemperature) {
                shortest = least == Problem.NO ? shortest : Math.min(shortest, least);
            }
        }
        return shortest;
    }
}
