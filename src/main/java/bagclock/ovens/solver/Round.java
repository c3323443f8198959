package bagclock.ovens.solver;

import bagclock.core.oven.Problem;
import bagclock.ovens.solver.ProofModel.Led;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CircuitConstraint;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The runs of one oven as a round, frozen ones too: an arc for each run that may follow another. */
final class Round {
    private static final int DEPOT = 0;

    private final Problem problem;
    private final CpModel model;
    private final ProofModel proof;
    private final Problem.Terms terms;
    private final CircuitConstraint circuit;

    Round(Problem problem, CpModel model, ProofModel proof, Problem.Terms terms) {
        this.problem = problem;
        this.model = model;
        this.proof = proof;
        this.terms = terms;
        this.circuit = model.addCircuit();
    }

    /** A run in the round; a frozen one has no leader. */
    private record Node(
            int at,
            int temperature,
            LinearArgument start,
            LinearArgument end,
            @Nullable Led run) {}

    void add(List<Led> runs, LinearExprBuilder prices) {
        List<Node> nodes = nodes(runs);
        BoolVar isIdle = model.newBoolVar("idle");
        circuit.addArc(DEPOT, DEPOT, isIdle);
        List<IntervalVar> service = new ArrayList<>();
        for (int i = 0; i < terms.blocked().length; i += 2) {
            int from = terms.blocked()[i];
            service.add(model.newFixedInterval(from, Math.max(0, terms.blocked()[i + 1] - from), "out"));
        }
        for (Node to : nodes) {
            circuit.addArc(to.at(), DEPOT, model.newBoolVar("last"));
            LinearExprBuilder change = LinearExpr.newBuilder();
            first(to, change, prices);
            nodes.stream().filter(from -> from.at() != to.at()).forEach(from -> follow(from, to, change, prices));
            if (to.run() != null) {
                circuit.addArc(to.at(), to.at(), to.run().is().not());
                service.add(withChange(to.run(), change));
            }
        }
        model.addNoOverlap(service);
    }

    private List<Node> nodes(List<Led> runs) {
        List<Node> nodes = new ArrayList<>();
        for (Led run : runs) {
            nodes.add(new Node(nodes.size() + 1, run.temperature(), proof.start(run), proof.end(run), run));
        }
        int[] fixed = terms.fixed();
        for (int i = 0; i < fixed.length; i += 3) {
            LinearExpr start = LinearExpr.constant(fixed[i]);
            LinearExpr end = LinearExpr.constant(fixed[i + 1]);
            nodes.add(new Node(nodes.size() + 1, fixed[i + 2], start, end, null));
        }
        return nodes;
    }

    /** The first of the round. */
    private void first(Node to, LinearExprBuilder change, LinearExprBuilder prices) {
        BoolVar arc = model.newBoolVar("a");
        circuit.addArc(DEPOT, to.at(), arc);
        int time = terms.change()[terms.state()][to.temperature()];
        count(arc, to, time, change);
        if (to.run() != null) {
            model.addGreaterOrEqual(to.start(), time).onlyEnforceIf(arc);
            prices.addTerm(arc, problem.aim().change() * terms.price()[terms.state()][to.temperature()]);
        }
    }

    private void follow(Node from, Node to, LinearExprBuilder change, LinearExprBuilder prices) {
        boolean isOneLot = from.run() != null
                && to.run() != null
                && from.run().leader() == to.run().leader();
        if (isOneLot) {
            return;
        }
        int time = terms.change()[from.temperature() + 1][to.temperature()];
        if (isTooLate(from, to, time)) {
            return;
        }
        BoolVar arc = model.newBoolVar("a");
        circuit.addArc(from.at(), to.at(), arc);
        count(arc, to, time, change);
        if (from.run() != null || to.run() != null) {
            LinearExpr earliest =
                    LinearExpr.newBuilder().add(from.end()).add(time).build();
            model.addGreaterOrEqual(to.start(), earliest).onlyEnforceIf(arc);
        }
        if (to.run() != null) {
            prices.addTerm(arc, problem.aim().change() * terms.price()[from.temperature() + 1][to.temperature()]);
        }
    }

    /** Whether one run can't be over before the other must begin. */
    private boolean isTooLate(Node from, Node to, int time) {
        return from.run() != null
                && to.run() != null
                && from.run().begins().min() + proof.shut(from.run()) + time
                        > to.run().begins().max();
    }

    private static void count(BoolVar arc, Node to, int time, LinearExprBuilder change) {
        if (to.run() != null && time > 0) {
            change.addTerm(arc, time);
        }
    }

    /** The run and the change directly before it. */
    private IntervalVar withChange(Led run, LinearExprBuilder change) {
        IntVar begin = model.newIntVar(-Problem.NEVER, Problem.NEVER, "b");
        IntVar size = model.newIntVar(0, Problem.NEVER, "n");
        Literal is = run.is();
        model.addEquality(LinearExpr.newBuilder().add(change).add(begin).build(), proof.start(run))
                .onlyEnforceIf(is);
        return model.newOptionalIntervalVar(begin, size, proof.end(run), is, "w");
    }
}
