package bagclock.ovens.solver;

import bagclock.core.oven.Bounds;
import bagclock.core.oven.Decoder;
import bagclock.core.oven.Found;
import bagclock.core.oven.Problem;
import bagclock.core.oven.Score;
import bagclock.core.oven.Sketch;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverSolutionCallback;
import com.google.ortools.sat.CpSolverStatus;
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
    private static final double FOR_SOME = 0.4;
    private static final int LOTS_AT_FIRST = 8;
    private static final int LOTS_MORE = 4;

    private final Problem problem;
    private final int workers;
    private final int seed;
    private final long endNs;
    private final Consumer<Found> tell;
    private final Decoder decoder;
    private Found best;

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
        int stages = problem.aim().isStaged() ? 3 : 1;
        for (int stage = 0; stage < stages; stage++) {
            double seconds = left() * (stages == 1 ? 1 : SHARES[stage]);
            if (stage == 0 && best.score().late() > 0 && CriticalLots.areEasier(problem)) {
                if (solve(stage, seconds * FOR_SOME, true)) {
                    continue;
                }
                boundBySome(seconds * FOR_SOME);
                seconds *= 1 - 2 * FOR_SOME;
            }
            if (!solve(stage, seconds * WITH_HINT, true) && left() > 0) {
                solve(stage, seconds * (1 - WITH_HINT), false);
            }
        }
        return best;
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
            some.seek(0, 0, 0);
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
        if (seconds < 0.01) {
            return false;
        }
        ProofModel proof = new ProofModel(problem);
        proof.seek(stage, best.score().late(), best.score().ovenMinutes());
        if (isHinted) {
            proof.hint(best.sketch());
        }
        CpSolver solver = solver(seconds, isHinted ? seed : seed + 1);
        CpSolverStatus status = solver.solve(proof.model(), new CpSolverSolutionCallback() {
            @Override
            public void onSolutionCallback() {
                take(proof.sketch(this));
            }
        });
        if (status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE) {
            take(proof.sketch(solver));
        }
        if (status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE || status == CpSolverStatus.UNKNOWN) {
            bound(stage, atLeast(solver));
        }
        return reached(stage);
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
        long floor = Math.max(0, least);
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
