package bagclock.ovens.solver;

import bagclock.core.oven.Batch;
import bagclock.core.oven.Decoder;
import bagclock.core.oven.Problem;
import bagclock.core.oven.Reach;
import bagclock.core.oven.Sketch;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverSolutionCallback;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import com.google.ortools.util.Domain;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.function.ToLongFunction;

/**
 * A problem as the solver sees it. Each run is led by the lot that needs longest there, so its length is known as soon as
 * its leader is; a lot either leads a run or is in one that another leads. What the model leaves out (a change of
 * temperature that would fall into time out of service) makes plans seem better than they are, never worse: a bound stays
 * a bound, and a plan gets its times from the decoder.
 */
final class ProofModel {
    private final Problem problem;
    private final Optional<Reach> reach;
    private final int horizon;
    private final CpModel model = new CpModel();
    private final List<Led> runs = new ArrayList<>();
    private final List<List<Seat>> seats = new ArrayList<>();
    private final IntVar[] starts;
    private final IntVar[] ends;
    private final LinearExprBuilder late = LinearExpr.newBuilder();
    private final LinearExprBuilder minutes = LinearExpr.newBuilder();
    private final LinearExprBuilder count = LinearExpr.newBuilder();

    /** A run that a lot may lead in an oven at a temperature, the minutes in which it may begin, the lots that may be in it. */
    record Led(int leader, int oven, int temperature, BoolVar is, Domain begins, List<Seat> members) {}

    /** A lot in a run. */
    record Seat(int lot, Led run, BoolVar is) {}

    /** A whole problem. */
    ProofModel(Problem problem) {
        this(problem, Optional.empty());
    }

    /**
     * A problem.
     *
     * @param reach if known, what can be part of a plan that counts; others are left out
     */
    ProofModel(Problem problem, Optional<Reach> reach) {
        this.problem = problem;
        this.reach = reach;
        int lots = problem.lots().length;
        this.horizon = new Horizon(problem).minutes();
        this.starts = new IntVar[lots];
        this.ends = new IntVar[lots];
        Doors doors = new Doors(problem, model, horizon);
        for (int lot = 0; lot < lots; lot++) {
            seats.add(new ArrayList<>());
            starts[lot] = doors.opening("s" + lot);
            ends[lot] = doors.opening("e" + lot);
        }
        addRuns();
        addMembers();
        addLateness();
        new Sequence(problem, model, this, horizon).add(late);
        if (problem.aim().isStaged()) {
            runs.forEach(run -> minutes.addTerm(run.is(), shut(run)));
        } else {
            runs.forEach(run -> late.addTerm(run.is(), problem.aim().ovenMinute() * shut(run)));
        }
        runs.forEach(run -> count.addTerm(run.is(), 1));
    }

    List<Led> runs() {
        return runs;
    }

    IntVar start(Led run) {
        return starts[run.leader()];
    }

    IntVar end(Led run) {
        return ends[run.leader()];
    }

    int least(Led run) {
        return problem.lots()[run.leader()].least()[run.oven()][run.temperature()];
    }

    /** Minutes with the door shut. */
    int shut(Led run) {
        return problem.ovens()[run.oven()].shut(least(run));
    }

    private void addRuns() {
        for (int lot = 0; lot < problem.lots().length; lot++) {
            for (int oven = 0; oven < problem.ovens().length; oven++) {
                for (int temperature = 0; temperature < problem.temperatures(); temperature++) {
                    if (problem.can(lot, oven, temperature)) {
                        addRun(lot, oven, temperature);
                    }
                }
            }
        }
    }

    private void addRun(int lot, int oven, int temperature) {
        Domain begins = begins(lot, lot, oven, temperature);
        if (!begins.isEmpty()) {
            BoolVar is = model.newBoolVar("l" + lot + "_" + oven + "_" + temperature);
            Led run = new Led(lot, oven, temperature, is, begins, new ArrayList<>());
            runs.add(run);
            seats.get(lot).add(new Seat(lot, run, is));
            bindTimes(run);
        }
    }

    /** Minutes in which a run may begin with a lot in it. */
    private Domain begins(int lot, int leader, int oven, int temperature) {
        Domain ready = new Domain(problem.lots()[lot].release(), horizon);
        return reach.map(known -> Domain.fromFlatIntervals(known.starts(lot, leader, oven, temperature, horizon)))
                .map(ready::intersectionWith)
                .orElse(ready);
    }

    private void bindTimes(Led run) {
        LinearExpr start = LinearExpr.affine(starts[run.leader()], 1, shut(run));
        if (problem.attended().length == 0) {
            model.addEquality(ends[run.leader()], start).onlyEnforceIf(run.is());
        } else {
            model.addGreaterOrEqual(ends[run.leader()], start).onlyEnforceIf(run.is());
            bindMost(run, run.leader(), run.is());
        }
        model.addLinearExpressionInDomain(starts[run.leader()], run.begins()).onlyEnforceIf(run.is());
    }

    private void bindMost(Led run, int lot, BoolVar is) {
        int most = problem.lots()[lot].most()[run.oven()][run.temperature()];
        LinearExpr last = LinearExpr.affine(starts[run.leader()], 1, problem.ovens()[run.oven()].shut(most));
        model.addLessOrEqual(ends[run.leader()], last).onlyEnforceIf(is);
    }

    private void addMembers() {
        for (Led run : runs) {
            LinearExprBuilder load = LinearExpr.newBuilder();
            load.addTerm(run.is(), problem.lots()[run.leader()].positions());
            for (int lot = 0; lot < problem.lots().length; lot++) {
                if (lot != run.leader() && mayJoin(lot, run)) {
                    addMember(lot, run, load);
                }
            }
            load.addTerm(run.is(), -problem.ovens()[run.oven()].capacity());
            model.addLessOrEqual(load, 0);
        }
        for (List<Seat> choices : seats) {
            model.addExactlyOne(
                    choices.stream().map(seat -> (Literal) seat.is()).toArray(Literal[]::new));
        }
    }

    private void addMember(int lot, Led run, LinearExprBuilder load) {
        Domain begins = begins(lot, run.leader(), run.oven(), run.temperature());
        if (begins.intersectionWith(run.begins()).isEmpty()) {
            return;
        }
        BoolVar is = model.newBoolVar("x" + lot);
        Seat seat = new Seat(lot, run, is);
        seats.get(lot).add(seat);
        run.members().add(seat);
        model.addImplication(is, run.is());
        model.addLinearExpressionInDomain(starts[run.leader()], begins).onlyEnforceIf(is);
        if (problem.attended().length > 0) {
            bindMost(run, lot, is);
        }
        load.addTerm(is, problem.lots()[lot].positions());
    }

    /** Shorter there than the leader's, or as short and later in the row; and not baked too long. */
    private boolean mayJoin(int lot, Led run) {
        Problem.Piece piece = problem.lots()[lot];
        if (!problem.can(lot, run.oven(), run.temperature())) {
            return false;
        }
        int own = piece.least()[run.oven()][run.temperature()];
        boolean isShorter = own < least(run) || (own == least(run) && lot > run.leader());
        int load = piece.positions() + problem.lots()[run.leader()].positions();
        return isShorter
                && piece.most()[run.oven()][run.temperature()] >= least(run)
                && load <= problem.ovens()[run.oven()].capacity();
    }

    private void addLateness() {
        for (int lot = 0; lot < problem.lots().length; lot++) {
            Problem.Piece piece = problem.lots()[lot];
            if (piece.due() >= horizon) {
                continue;
            }
            IntVar over = model.newIntVar(0, Math.max(1, horizon - piece.due()), "t" + lot);
            BoolVar isLate = model.newBoolVar("late" + lot);
            for (Seat seat : seats.get(lot)) {
                IntVar end = ends[seat.run().leader()];
                if (problem.aim().lateMinute() > 0) {
                    model.addLessOrEqual(end, LinearExpr.affine(over, 1, piece.due()))
                            .onlyEnforceIf(seat.is());
                } else {
                    model.addLessOrEqual(end, piece.due()).onlyEnforceIf(new Literal[] {seat.is(), isLate.not()});
                }
            }
            late.addTerm(over, piece.weight() * problem.aim().lateMinute());
            late.addTerm(isLate, piece.weight() * problem.aim().lateLot());
        }
    }

    /** Makes the lateness, the minutes and the number of runs what is sought; the stages before it are bounded. */
    void seek(int stage, long mostLate, long mostMinutes) {
        model.addLessOrEqual(late, mostLate);
        if (stage > 1) {
            model.addLessOrEqual(minutes, mostMinutes);
        }
        model.minimize(stage == 0 ? late : stage == 1 ? minutes : count);
    }

    /** A plan to look near. */
    void hint(Sketch sketch) {
        Decoder decoder = new Decoder(problem);
        decoder.score(sketch);
        Map<String, Boolean> taken = new TreeMap<>();
        for (int oven = 0; oven < sketch.ovens().size(); oven++) {
            for (Batch batch : sketch.ovens().get(oven)) {
                hint(oven, batch, decoder, taken);
            }
        }
        for (List<Seat> choices : seats) {
            choices.forEach(seat -> model.addHint(seat.is(), taken.containsKey(key(seat)) ? 1 : 0));
        }
    }

    private void hint(int oven, Batch batch, Decoder decoder, Map<String, Boolean> taken) {
        int leader = -1;
        for (int lot : batch.lots()) {
            int least = problem.lots()[lot].least()[oven][batch.temperature()];
            boolean isLonger = leader < 0 || least > problem.lots()[leader].least()[oven][batch.temperature()];
            leader =
                    isLonger || (lot < leader && least == problem.lots()[leader].least()[oven][batch.temperature()])
                            ? lot
                            : leader;
        }
        model.addHint(starts[leader], decoder.inAt(leader));
        model.addHint(ends[leader], decoder.outAt(leader));
        for (int lot : batch.lots()) {
            taken.put(lot + "/" + leader + "/" + oven + "/" + batch.temperature(), true);
        }
    }

    private static String key(Seat seat) {
        Led run = seat.run();
        return seat.lot() + "/" + run.leader() + "/" + run.oven() + "/" + run.temperature();
    }

    CpModel model() {
        return model;
    }

    /** The plan of a solution. */
    Sketch sketch(CpSolver solver) {
        return sketch(solver::booleanValue, solver::value);
    }

    /** The plan of a solution met on the way. */
    Sketch sketch(CpSolverSolutionCallback met) {
        return sketch(met::booleanValue, met::value);
    }

    private Sketch sketch(Predicate<Literal> isTrue, ToLongFunction<IntVar> value) {
        List<List<Batch>> ovens = new ArrayList<>();
        for (int oven = 0; oven < problem.ovens().length; oven++) {
            int here = oven;
            ovens.add(runs.stream()
                    .filter(run -> run.oven() == here && isTrue.test(run.is()))
                    .sorted(Comparator.comparingLong(run -> value.applyAsLong(start(run))))
                    .map(run -> Batch.of(problem, here, run.temperature(), lots(run, isTrue)))
                    .toList());
        }
        return new Sketch(ovens);
    }

    private static int[] lots(Led run, Predicate<Literal> isTrue) {
        List<Integer> lots = new ArrayList<>(List.of(run.leader()));
        run.members().stream().filter(seat -> isTrue.test(seat.is())).forEach(seat -> lots.add(seat.lot()));
        return lots.stream().mapToInt(Integer::intValue).toArray();
    }

    /** Interval of a run. */
    IntervalVar interval(Led run, int before, int after) {
        IntVar size = model.newIntVar(0, 1_000_000_000, "size");
        LinearExpr from = LinearExpr.affine(start(run), 1, -before);
        LinearExpr to = LinearExpr.affine(end(run), 1, after);
        if (problem.attended().length == 0) {
            return model.newOptionalFixedSizeIntervalVar(from, (long) shut(run) + before + after, run.is(), "run");
        }
        return model.newOptionalIntervalVar(from, size, to, run.is(), "run");
    }
}
