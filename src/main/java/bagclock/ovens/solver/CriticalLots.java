package bagclock.ovens.solver;

import bagclock.core.oven.Decoder;
import bagclock.core.oven.Problem;
import bagclock.core.oven.Sketch;
import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * The lots that make a plan late. Without the others a plan can only be less late, so a bound for some is one for all:
 * weak, but there is one where the whole is too large.
 */
final class CriticalLots {
    private final Problem problem;
    private final int[] order;

    /** By the plan: those that are latest there, by weight, then those with the least time to spare. */
    CriticalLots(Problem problem, Sketch plan) {
        this.problem = problem;
        Decoder decoder = new Decoder(problem);
        decoder.score(plan);
        this.order = IntStream.range(0, problem.lots().length)
                .boxed()
                .sorted(Comparator.comparingLong((Integer lot) -> -lateness(lot, decoder))
                        .thenComparingLong(lot -> problem.lots()[lot].due() - decoder.outAt(lot)))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    private long lateness(int lot, Decoder decoder) {
        Problem.Piece piece = problem.lots()[lot];
        return piece.weight() * Math.max(0, decoder.outAt(lot) - piece.due());
    }

    /**
     * Whether leaving lots out makes nothing later: lateness is all that counts, and no change between two temperatures is
     * longer than by way of a third.
     */
    static boolean areEasier(Problem problem) {
        return problem.aim().isStaged()
                && Arrays.stream(problem.ovens()).map(Problem.Terms::change).allMatch(CriticalLots::hasNoShortCut);
    }

    private static boolean hasNoShortCut(int[][] change) {
        for (int[] from : change) {
            for (int by = 0; by < from.length; by++) {
                for (int to = 0; to < from.length; to++) {
                    if (from[to] > from[by] + change[by + 1][to]) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    /** The problem with only the first of them. */
    Problem first(int count) {
        int[] kept = IntStream.of(order).limit(count).sorted().toArray();
        Problem.Anchor anchor = problem.anchor();
        return new Problem(
                problem.temperatures(),
                problem.ovens(),
                IntStream.of(kept).mapToObj(lot -> problem.lots()[lot]).toArray(Problem.Piece[]::new),
                problem.attended(),
                problem.recovery(),
                problem.aim(),
                new Problem.Anchor(pick(anchor.oven(), kept), pick(anchor.start(), kept), anchor.price()));
    }

    private static int[] pick(int[] values, int[] kept) {
        return IntStream.of(kept).map(lot -> values[lot]).toArray();
    }
}
