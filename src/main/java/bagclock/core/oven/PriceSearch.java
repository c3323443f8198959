package bagclock.core.oven;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Bounds what any plan costs: that each lot is baked once is left to prices. A lot that too many ovens want pays less, one
 * that nobody wants pays more; for every choice of prices {@link PricedLots} gives a bound, and the best choice is sought
 * by the volume algorithm (Barahona and Anbil, Mathematical Programming 87, 2000; from memory, its numbers are our own).
 * Bounds lateness, or the sum of all prices where the aim has no stages; not for runs whose doors are opened.
 */
public final class PriceSearch {
    private static final int ROUGH_CELLS = 1_000;
    private static final int MOST_CELLS = 20_000;

    /** One for each cell of each length of run; 8 bytes each. */
    private static final int MOST_NUMBERS = 20_000_000;

    private static final double FIRST_STEP = 0.1;
    private static final double NEXT_STEP = 0.05;
    private static final double LAST_STEP = 1e-4;
    private static final double LONGEST_STEP = 2;
    private static final double LONGER = 1.3;
    private static final double SHORTER = 0.85;
    private static final int PATIENCE = 4;
    private static final double MOST_WEIGHT = 0.2;
    private static final double LEAST_WEIGHT = 0.02;
    private static final double ROUNDING = 1e-3;

    private final Problem problem;
    private final Sketch from;
    private final Cells cells;
    private final PricedLots priced;
    private final List<PricedOven> ovens;
    private final long known;
    private final boolean[] canBeLast;
    private double[] prices;
    private double best;

    /** Nobody pays. */
    PriceSearch(Problem problem, Sketch from, int mostCells) {
        Decoder decoder = new Decoder(problem);
        this.problem = problem;
        this.from = from;
        this.known = decoder.score(from).late();
        this.cells = new Cells(problem, lastMinute(problem, decoder), mostCells);
        this.priced = new PricedLots(problem, cells, known);
        this.ovens = IntStream.range(0, problem.ovens().length)
                .parallel()
                .mapToObj(oven -> new PricedOven(priced, oven))
                .toList();
        this.prices = new double[problem.lots().length];
        this.canBeLast = new boolean[prices.length];
        for (int lot = 0; lot < prices.length; lot++) {
            canBeLast[lot] = canBeLast(lot);
        }
    }

    /**
     * Seeks prices for a while, first on a rough grid where a fine one is large; ends early when nothing more is to be had.
     *
     * @param from a plan: only what is as good counts
     */
    public static PriceSearch of(Problem problem, Sketch from, Budget budget) {
        PriceSearch rough = new PriceSearch(problem, from, ROUGH_CELLS);
        if (rough.cells.isExact()) {
            rough.run(FIRST_STEP, budget);
            return rough;
        }
        Budget half = budget.part(0.5);
        rough.run(FIRST_STEP, half);
        PriceSearch fine = new PriceSearch(problem, from, Math.min(MOST_CELLS, MOST_NUMBERS / runs(rough)));
        fine.prices = rough.prices;
        fine.run(NEXT_STEP, half);
        return fine;
    }

    private static int runs(PriceSearch search) {
        return search.ovens.stream().mapToInt(oven -> oven.runs().size()).sum();
    }

    /** A minute after which little happens in a good plan; what happens there counts only roughly. */
    private static int lastMinute(Problem problem, Decoder decoder) {
        int last = 1;
        for (int lot = 0; lot < problem.lots().length; lot++) {
            last = Math.max(last, decoder.outAt(lot));
        }
        for (Problem.Terms oven : problem.ovens()) {
            for (int time : oven.blocked()) {
                last = Problem.isNever(time) ? last : Math.max(last, time);
            }
        }
        return last;
    }

    /** What no plan costs less than; of plans that cost no more than the known one. */
    public long bound() {
        return Math.max(0, (long) Math.ceil(best - ROUNDING));
    }

    /**
     * A plan near what the prices want: each oven's best day, a lot that several want with one of them, what is missing put
     * in where it costs least; the plan that the search began with if something finds no place.
     */
    Sketch plan() {
        boolean[] taken = new boolean[prices.length];
        List<List<Batch>> days = new ArrayList<>();
        for (int oven = 0; oven < ovens.size(); oven++) {
            days.add(ovens.get(oven).day(oven, taken));
        }
        Optional<Sketch> plan = Optional.of(new Sketch(days));
        Insertion insertion = new Insertion(problem);
        for (int lot = 0; lot < taken.length; lot++) {
            int missing = lot;
            plan = taken[lot] ? plan : plan.flatMap(sketch -> insertion.insert(sketch, missing));
        }
        return plan.orElse(from);
    }

    PricedLots priced() {
        return priced;
    }

    List<PricedOven> ovens() {
        return ovens;
    }

    /** Seeks better prices. */
    void run(double firstStep, Budget budget) {
        long endNs = System.nanoTime() + budget.time().toNanos();
        double[] served = new double[prices.length];
        best = bound(prices, served);
        double step = firstStep;
        int failures = 0;
        for (long at = 0; at < budget.steps() && System.nanoTime() < endNs && step > LAST_STEP; at++) {
            double missed = product(served, served);
            if (missed == 0 || best >= known) {
                break;
            }
            double[] next = next(step * (known - best) / missed, served);
            double[] now = new double[next.length];
            double bound = bound(next, now);
            boolean isSameWay = product(served, now) >= 0;
            mix(served, now);
            if (bound > best) {
                best = bound;
                prices = next;
                failures = 0;
                step = isSameWay ? Math.min(LONGEST_STEP, step * LONGER) : step;
            } else if (++failures == PATIENCE) {
                failures = 0;
                step *= SHORTER;
            }
        }
        // the ovens must stand at the best prices, not at those tried last
        bound(prices, new double[prices.length]);
        ovens.forEach(PricedOven::lookBack);
    }

    private double[] next(double step, double[] served) {
        double[] next = new double[prices.length];
        for (int lot = 0; lot < next.length; lot++) {
            next[lot] = prices[lot] + step * (1 - served[lot]);
        }
        return next;
    }

    /** The bound that prices give, and how often each lot is baked at them. */
    private double bound(double[] all, double[] served) {
        priced.pay(all);
        double[] days = new double[ovens.size()];
        IntStream.range(0, days.length)
                .parallel()
                .forEach(oven -> days[oven] = ovens.get(oven).best());
        int[] counts = new int[all.length];
        ovens.forEach(oven -> oven.count(counts));
        double bound = Arrays.stream(days).sum() + Arrays.stream(all).sum();
        for (int lot = 0; lot < all.length; lot++) {
            double spared = Math.min(0, late(lot));
            bound += spared;
            served[lot] = counts[lot] + (spared < 0 ? 1 : 0);
        }
        return bound;
    }

    /** What a lot costs at least that comes out after the last cell, less its price; infinite if it can't. */
    private double late(int lot) {
        return canBeLast[lot] ? priced.late(lot, cells.count()) - priced.price(lot) : Double.POSITIVE_INFINITY;
    }

    /** Whether an oven that is not closed then can take the lot. */
    private boolean canBeLast(int lot) {
        return ovens.stream().anyMatch(oven -> oven.canTake(lot) && !oven.isClosedFrom(cells.count()));
    }

    /** How much dearer it is at least when a lot comes out after the last cell; infinite if it can't. */
    double afterAll(int lot) {
        return Math.max(0, late(lot));
    }

    /** How far two counts are from each lot once, as a scalar product. */
    private static double product(double[] one, double[] other) {
        double sum = 0;
        for (int lot = 0; lot < one.length; lot++) {
            sum += (1 - one[lot]) * (1 - other[lot]);
        }
        return sum;
    }

    /** Moves the mean of what was seen toward what was seen now, so far that it comes nearest to each lot once. */
    private static void mix(double[] mean, double[] now) {
        double all = product(mean, mean);
        double both = product(mean, now);
        double apart = all - 2 * both + product(now, now);
        double weight = apart == 0 ? LEAST_WEIGHT : (all - both) / apart;
        double share = Math.max(LEAST_WEIGHT, Math.min(MOST_WEIGHT, weight));
        for (int lot = 0; lot < mean.length; lot++) {
            mean[lot] += share * (now[lot] - mean[lot]);
        }
    }

    /** By how much what is in a plan may be dearer than the best at these prices, for the plan to cost no more than this. */
    double spare(long most) {
        return most - best + ROUNDING;
    }
}
