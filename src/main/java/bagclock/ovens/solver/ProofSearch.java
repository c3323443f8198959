package bagclock.ovens.solver;

import bagclock.core.oven.Bounds;
import bagclock.core.oven.Budget;
import bagclock.core.oven.Decoder;
import bagclock.core.oven.Found;
import bagclock.core.oven.PricePlanner;
import bagclock.core.oven.PriceSearch;
import bagclock.core.oven.Problem;
import bagclock.core.oven.Reach;
import bagclock.core.oven.Score;
import bagclock.core.oven.Sketch;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverSolutionCallback;
import com.google.ortools.sat.CpSolverStatus;
import java.time.Duration;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Consumer;

/**
 * The three stages one after the other: the least lateness, then with no more of it the least minutes of ovens, then with
 * no more of both the fewest runs. Tells each better plan and each better bound.
 */
final class ProofSearch {
    private static final double[] SHARES = {0.6, 0.6, 1};
    private static final double WITH_HINT = 0.5;
    private static final int MEMORY_MB = 1_500;
    private static final double FOR_PRICES = 0.25;
    private static final double SLICE = 0.4;
    private static final double SHORT_S = 2;
    private static final double LEAST_S = 0.2;
    private static final double AT_FIRST = 0.15;
    private static final double NEAR_PRICES = 0.1;
    private static final double NEAR = 0.5;
    private static final double FOR_SOME = 0.1;
    private static final int LOTS_AT_FIRST = 8;
    private static final int LOTS_MORE = 4;

    private final Problem problem;
    private final int workers;
    private final int seed;
    private final long endNs;
    private final Consumer<Found> tell;
    private final Decoder decoder;
    private Found best;
    private Optional<Reach> reach = Optional.empty();

    ProofSearch(Problem problem, Sketch from, Wire.Task limits, Consumer<Found> tell) {
        this.problem = problem;
        this.workers = limits.workers();
        this.seed = limits.seed();
        this.endNs = System.nanoTime() + limits.millis() * 1_000_000;
        this.tell = tell;
        this.decoder = new Decoder(problem);
        this.best = new Found(from, decoder.score(from), Bounds.NONE);
    }

    /** The best plan, and what is known about it. */
    Found run() {
        boolean isStaged = problem.aim().isStaged();
        seekLeastLate(left() * (isStaged ? SHARES[0] : 1));
        for (int stage = 1; isStaged && stage < SHARES.length; stage++) {
            double seconds = left() * SHARES[stage];
            if (!solve(stage, seconds * WITH_HINT, true) && left() > 0) {
                solve(stage, seconds * (1 - WITH_HINT), false);
            }
        }
        return best;
    }

    /**
     * A while as it is; then bounds by prices and by some of the lots; then without all that, by the prices, is in no better
     * plan.
     */
    private void seekLeastLate(double seconds) {
        double end = left() - seconds;
        if (solve(0, seconds * AT_FIRST, true)) {
            return;
        }
        PriceSearch prices = PriceSearch.of(problem, best.sketch(), budget(seconds * FOR_PRICES));
        bound(0, prices.bound());
        take(PricePlanner.near(problem, prices, budget(seconds * NEAR_PRICES)).sketch());
        if (!reached(0) && CriticalLots.areEasier(problem)) {
            boundBySome(seconds * FOR_SOME);
        }
        for (int round = 0; !reached(0) && left() - end > LEAST_S; round++) {
            double rest = left() - end;
            halve(prices, round % 2 == 0 ? 0.5 : 1, rest > SHORT_S ? rest * SLICE : rest);
        }
        reach = reach(prices, best.score().late());
    }

    /** Far from the plan at hand, prices leave out nothing that would be worth the time to find it. */
    private Optional<Reach> reach(PriceSearch prices, long most) {
        boolean isNear = prices.bound() > best.score().late() * NEAR;
        return isNear ? Optional.of(Reach.of(prices, most)) : Optional.empty();
    }

    /** Looks for a plan in a part of what is open between bound and plan: finds one, or knows that there is none. */
    private void halve(PriceSearch prices, double part, double seconds) {
        long least = best.bounds().late().orElse(0);
        long most = least + (long) ((best.score().late() - least) * part);
        reach = reach(prices, most);
        solve(new Quest(0, most, part == 1), seconds);
    }

    private Budget budget(double seconds) {
        return Budget.of(Duration.ofMillis((long) (seconds * 1000)), seed);
    }

    private double left() {
        return Math.max(0, (endNs - System.nanoTime()) / 1e9);
    }

    /** Bounds the lateness by that of the lots that are latest, more of them each time. */
    private void boundBySome(double seconds) {
        double until = left() - seconds;
        CriticalLots lots = new CriticalLots(problem, best.sketch());
        for (int count = LOTS_AT_FIRST; count < problem.lots().length && left() > until; count += LOTS_MORE) {
            ProofModel some = new ProofModel(lots.first(count));
            some.seek(0, best.score().late(), 0);
            CpSolver solver = solver(left() - until, seed);
            boolean isProved = solver.solve(some.model()) == CpSolverStatus.OPTIMAL;
            bound(0, atLeast(solver));
            if (!isProved) {
                return;
            }
        }
    }

    private CpSolver solver(double seconds, int chance) {
        CpSolver solver = new CpSolver();
        solver.getParameters()
                .setMaxTimeInSeconds(Math.max(0, Math.min(seconds, left())))
                .setNumWorkers(workers)
                .setRandomSeed(chance)
                .setMaxMemoryInMb(MEMORY_MB);
        return solver;
    }

    private static long atLeast(CpSolver solver) {
        return (long) Math.ceil(solver.bestObjectiveBound() - 1e-6);
    }

    /** One stage for a while; true if it is proved. */
    private boolean solve(int stage, double seconds, boolean isHinted) {
        return solve(new Quest(stage, best.score().late(), isHinted), seconds);
    }

    /** A stage, with no more lateness than this. */
    private record Quest(int stage, long mostLate, boolean isHinted) {}

    private boolean solve(Quest quest, double seconds) {
        if (seconds < 0.01) {
            return false;
        }
        ProofModel proof = new ProofModel(problem, reach);
        proof.seek(quest.stage(), quest.mostLate(), best.score().ovenMinutes());
        if (quest.isHinted()) {
            proof.hint(best.sketch());
        }
        CpSolver solver = solver(seconds, quest.isHinted() ? seed : seed + 1);
        CpSolverStatus status = solver.solve(proof.model(), new CpSolverSolutionCallback() {
            @Override
            public void onSolutionCallback() {
                take(proof.sketch(this));
            }
        });
        if (status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE) {
            take(proof.sketch(solver));
        }
        learn(quest, status, solver);
        return reached(quest.stage());
    }

    /** What the end of a quest says of all plans. */
    private void learn(Quest quest, CpSolverStatus status, CpSolver solver) {
        boolean isBounded = status == CpSolverStatus.OPTIMAL
                || status == CpSolverStatus.FEASIBLE
                || status == CpSolverStatus.UNKNOWN;
        long none = quest.mostLate() + 1;
        if (quest.stage() == 0 && status == CpSolverStatus.INFEASIBLE) {
            bound(0, none);
        } else if (isBounded) {
            bound(quest.stage(), quest.stage() == 0 ? Math.min(atLeast(solver), none) : atLeast(solver));
        }
    }

    private void take(Sketch sketch) {
        if (!decoder.fits(sketch)) {
            return;
        }
        Score score = decoder.score(sketch);
        if (score.compareTo(best.score()) < 0) {
            best = new Found(sketch, score, best.bounds());
            tell.accept(best);
        }
    }

    private void bound(int stage, long least) {
        Bounds known = best.bounds();
        long floor = Math.max(0, stage == 0 ? Math.min(least, best.score().late()) : least);
        Bounds better = stage == 0
                ? new Bounds(higher(known.late(), floor), known.ovenMinutes(), known.runs())
                : stage == 1
                        ? new Bounds(known.late(), higher(known.ovenMinutes(), floor), known.runs())
                        : new Bounds(known.late(), known.ovenMinutes(), higher(known.runs(), floor));
        best = new Found(best.sketch(), best.score(), better);
        tell.accept(best);
    }

    private static OptionalLong higher(OptionalLong one, long other) {
        return OptionalLong.of(Math.max(one.orElse(other), other));
    }

    private boolean reached(int stage) {
        Bounds bounds = best.bounds();
        Score score = best.score();
        if (stage == 0) {
            return bounds.late().orElse(-1) >= score.late();
        }
        return stage == 1
                ? bounds.ovenMinutes().orElse(-1) >= score.ovenMinutes()
                : bounds.runs().orElse(-1) >= score.runs();
    }
}
