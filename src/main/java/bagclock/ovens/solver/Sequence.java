package bagclock.ovens.solver;

import bagclock.core.oven.Problem;
import bagclock.ovens.solver.ProofModel.Led;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;

/**
 * Runs of one oven follow each other with the change between them. Where every change is one of two lengths and costs
 * nothing, an order for each pair of different temperatures is enough; else each oven gets a round of runs.
 */
final class Sequence {
    private final Problem problem;
    private final CpModel model;
    private final ProofModel proof;
    private final int horizon;

    Sequence(Problem problem, CpModel model, ProofModel proof, int horizon) {
        this.problem = problem;
        this.model = model;
        this.proof = proof;
        this.horizon = horizon;
    }

    /** Adds what keeps runs apart; prices of changes go to the sum. */
    void add(LinearExprBuilder prices) {
        for (int oven = 0; oven < problem.ovens().length; oven++) {
            int here = oven;
            List<Led> runs =
                    proof.runs().stream().filter(run -> run.oven() == here).toList();
            Problem.Terms terms = problem.ovens()[oven];
            if (isPlain(terms) && problem.aim().change() == 0) {
                pairs(terms, runs);
            } else {
                new Round(problem, model, proof, terms).add(runs, prices);
            }
        }
    }

    private static boolean isPlain(Problem.Terms terms) {
        int[][] change = terms.change();
        int temperatures = change[0].length;
        int same = temperatures == 0 ? 0 : change[1][0];
        int other = temperatures < 2 ? same : change[1][1];
        for (int from = 0; from < temperatures; from++) {
            for (int to = 0; to < temperatures; to++) {
                if (change[from + 1][to] != (from == to ? same : other) || change[0][to] != 0) {
                    return false;
                }
            }
        }
        return other >= same;
    }

    private void pairs(Problem.Terms terms, List<Led> runs) {
        int temperatures = problem.temperatures();
        int same = temperatures == 0 ? 0 : terms.change()[1][0];
        List<IntervalVar> each = new ArrayList<>();
        List<IntervalVar> service = new ArrayList<>();
        for (Led run : runs) {
            each.add(proof.interval(run, 0, same));
            if (terms.blocked().length > 0) {
                service.add(proof.interval(run, terms.state() > 0 ? same : 0, 0));
            }
            besideFrozen(terms, run);
        }
        out(terms, service);
        model.addNoOverlap(each);
        model.addNoOverlap(service);
        for (int one = 0; one < runs.size(); one++) {
            for (int two = one + 1; two < runs.size(); two++) {
                pair(terms, runs.get(one), runs.get(two));
            }
        }
    }

    private void out(Problem.Terms terms, List<IntervalVar> service) {
        for (int i = 0; i < terms.blocked().length; i += 2) {
            service.add(fixed(terms.blocked()[i], Math.min(terms.blocked()[i + 1], horizon * 2)));
        }
    }

    private IntervalVar fixed(int from, int to) {
        return model.newFixedInterval(from, Math.max(0, to - from), "fixed");
    }

    private void pair(Problem.Terms terms, Led one, Led two) {
        if (one.temperature() == two.temperature() || one.leader() == two.leader()) {
            return;
        }
        BoolVar isFirst = model.newBoolVar("first");
        after(one, two, terms.change()[one.temperature() + 1][two.temperature()], isFirst);
        after(two, one, terms.change()[two.temperature() + 1][one.temperature()], isFirst.not());
    }

    private void after(Led one, Led two, int change, Literal order) {
        model.addGreaterOrEqual(proof.start(two), LinearExpr.affine(proof.end(one), 1, change))
                .onlyEnforceIf(new Literal[] {order, one.is(), two.is()});
    }

    /** Before or after each frozen run; only what comes before them all needs the change from the oven's last run. */
    private void besideFrozen(Problem.Terms terms, Led run) {
        int first = terms.change()[terms.state()][run.temperature()];
        List<Literal> isBeforeAll = new ArrayList<>(List.of(run.is()));
        for (int i = 0; i < terms.fixed().length; i += 3) {
            BoolVar isAfter = model.newBoolVar("after");
            beside(terms, i, run, isAfter);
            isBeforeAll.add(isAfter.not());
        }
        if (first > 0) {
            model.addGreaterOrEqual(proof.start(run), first).onlyEnforceIf(isBeforeAll.toArray(Literal[]::new));
        }
    }

    private void beside(Problem.Terms terms, int at, Led run, Literal isAfter) {
        int[] fixed = terms.fixed();
        model.addGreaterOrEqual(proof.start(run), fixed[at + 1] + terms.change()[fixed[at + 2] + 1][run.temperature()])
                .onlyEnforceIf(new Literal[] {isAfter, run.is()});
        int last = fixed[at] - terms.change()[run.temperature() + 1][fixed[at + 2]];
        model.addLessOrEqual(proof.end(run), last).onlyEnforceIf(new Literal[] {isAfter.not(), run.is()});
    }
}
