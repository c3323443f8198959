package bagclock.core.oven;

import java.util.Comparator;
import java.util.stream.DoubleStream;

/**
 * Seeks prices, makes a plan near what they want, and anneals that: a way around plans that small changes don't lead away
 * from. Knows a bound at the end. Not for runs whose doors are opened.
 */
public final class PricePlanner implements Planner {
    private static final double FOR_PRICES = 0.6;
    private static final double[] WARMTHS = {0.5, 0.1};

    @Override
    public Found improve(Problem problem, Sketch from, Budget budget) {
        Found before = new Found(from, new Decoder(problem).score(from), Bounds.NONE);
        if (problem.lots().length == 0 || problem.recovery() != Problem.NO) {
            return before;
        }
        PriceSearch prices = PriceSearch.of(problem, from, budget.part(FOR_PRICES));
        Found near = near(problem, prices, budget.part(1 - FOR_PRICES));
        Found better = near.score().compareTo(before.score()) < 0 ? near : before;
        return new Found(better.sketch(), better.score(), Bounds.ofLateness(prices.bound()));
    }

    /** The best that annealing finds near what prices want; each warmth has the whole budget, and a core if there is one. */
    public static Found near(Problem problem, PriceSearch prices, Budget budget) {
        Sketch plan = prices.plan();
        return DoubleStream.of(WARMTHS)
                .parallel()
                .mapToObj(warmth -> new Anneal(warmth).improve(problem, plan, budget))
                .min(Comparator.comparing(Found::score))
                .orElseThrow();
    }
}
