package bagclock.core.oven;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ObjIntConsumer;
import java.util.stream.IntStream;

/**
 * The day of one oven that costs least when lots pay for being baked: runs, the changes between them, frozen runs and spans
 * out of service are kept, only that a lot may be in several runs of it.
 */
final class PricedOven {
    private static final int WAIT = -1;
    private static final int FROZEN = -2;

    /** Less the state after it: a frozen run of this cell is over. */
    private static final int PASSED = -3;

    private final Problem problem;
    private final Cells cells;
    private final Problem.Terms terms;
    private final List<PricedRun> runs = new ArrayList<>();
    private final int[][] change;
    private final int[] blockedFrom;
    private final int[] nextFixed;
    private final int[][] statesOfShort;
    private final double[][] onward;
    private final double[][] upTo;
    private final double[][] fromStart;
    private final double[][] upToStart;
    private final int[][] bestRun;
    private final int[][] choices;

    PricedOven(PricedLots priced, int oven) {
        this.problem = priced.problem();
        this.cells = priced.cells();
        this.terms = problem.ovens()[oven];
        for (int temperature = 0; temperature < problem.temperatures(); temperature++) {
            int at = temperature;
            IntStream.range(0, problem.lots().length)
                    .filter(lot -> problem.can(lot, oven, at))
                    .map(lot -> problem.lots()[lot].least()[oven][at])
                    .distinct()
                    .sorted()
                    .forEach(least -> runs.add(new PricedRun(priced, oven, at, least)));
        }
        int states = problem.temperatures() + 1;
        this.change = Arrays.stream(terms.change())
                .map(row -> IntStream.of(row).map(cells::of).toArray())
                .toArray(int[][]::new);
        this.blockedFrom =
                IntStream.rangeClosed(0, cells.count()).map(this::blockedFrom).toArray();
        this.nextFixed =
                IntStream.rangeClosed(0, cells.count()).map(this::nextFixed).toArray();
        this.statesOfShort = IntStream.rangeClosed(0, cells.count())
                .mapToObj(this::statesOfShort)
                .toArray(int[][]::new);
        this.onward = new double[cells.count() + 1][states];
        this.upTo = new double[cells.count() + 1][states];
        this.fromStart = new double[cells.count() + 1][states];
        this.upToStart = new double[cells.count() + 1][states];
        this.bestRun = new int[cells.count() + 1][states];
        this.choices = new int[cells.count() + 1][states];
    }

    List<PricedRun> runs() {
        return runs;
    }

    private int blockedFrom(int cell) {
        int from = Integer.MAX_VALUE;
        for (int i = 0; i < terms.blocked().length; i += 2) {
            if (cells.of(terms.blocked()[i + 1]) > cell) {
                from = Math.min(from, cells.of(terms.blocked()[i]));
            }
        }
        return from;
    }

    /** The first frozen run that begins later, or here and ends later; one that is over in a cell is passed in it. */
    private int nextFixed(int cell) {
        int[] fixed = terms.fixed();
        for (int i = 0; i < fixed.length; i += 3) {
            int start = cells.of(fixed[i]);
            if (start > cell || (start == cell && !isShort(i))) {
                return i;
            }
        }
        return fixed.length;
    }

    private boolean isShort(int at) {
        return cells.of(terms.fixed()[at]) == cells.of(terms.fixed()[at + 1]);
    }

    /** Whether a frozen run of more than no cells begins here. */
    private boolean isFrozen(int cell) {
        int at = nextFixed[cell];
        return at < terms.fixed().length && cells.of(terms.fixed()[at]) == cell;
    }

    private int endOfFixed(int at) {
        return Math.min(cells.count(), cells.of(terms.fixed()[at + 1]));
    }

    /** Whether a run, with the change before it from a cell on, can be without what is blocked or frozen in between. */
    private boolean isFree(int from, int start) {
        return blockedFrom[from] == blockedFrom[start] && nextFixed[from] == nextFixed[start];
    }

    /** Whether a run that is free at its start is so up to its end. */
    private boolean fits(PricedRun run, int start) {
        if (run.left(start) == PricedRun.NONE || run.end(start) > blockedFrom[start]) {
            return false;
        }
        int at = nextFixed[start];
        if (at == terms.fixed().length) {
            return true;
        }
        int back = change[run.temperature() + 1][terms.fixed()[at + 2]];
        return run.end(start) + back <= cells.of(terms.fixed()[at]);
    }

    private double priceOfChange(int state, int temperature) {
        return problem.aim().isStaged() ? 0 : (double) problem.aim().change() * terms.price()[state][temperature];
    }

    /** The cost of the best day with the prices of now; never above nothing. */
    double best() {
        runs.forEach(PricedRun::reckon);
        Arrays.fill(onward[cells.count()], 0);
        Arrays.fill(fromStart[cells.count()], Double.POSITIVE_INFINITY);
        for (int cell = cells.count() - 1; cell >= 0; cell--) {
            chooseRuns(cell);
            for (int state = 0; state < onward[cell].length; state++) {
                if (isFrozen(cell)) {
                    int at = nextFixed[cell];
                    onward[cell][state] = onward[endOfFixed(at)][terms.fixed()[at + 2] + 1];
                    choices[cell][state] = FROZEN;
                } else {
                    choose(cell, state);
                }
            }
            passFrozen(cell);
        }
        return onward();
    }

    /** The best run of each temperature that begins in a cell. */
    private void chooseRuns(int start) {
        Arrays.fill(fromStart[start], Double.POSITIVE_INFINITY);
        for (int at = 0; at < runs.size(); at++) {
            PricedRun run = runs.get(at);
            if (fits(run, start)) {
                int temperature = run.temperature();
                double cost = run.cost() - run.left(start) + onward[run.end(start)][temperature + 1];
                if (cost < fromStart[start][temperature]) {
                    fromStart[start][temperature] = cost;
                    bestRun[start][temperature] = at;
                }
            }
        }
    }

    private void choose(int cell, int state) {
        double best = onward[cell + 1][state];
        int choice = WAIT;
        for (int temperature = 0; temperature < problem.temperatures(); temperature++) {
            int start = cell + change[state][temperature];
            if (start < cells.count() && isFree(cell, start)) {
                double cost = priceOfChange(state, temperature) + fromStart[start][temperature];
                if (cost < best) {
                    best = cost;
                    choice = temperature;
                }
            }
        }
        onward[cell][state] = best;
        choices[cell][state] = choice;
    }

    /** A frozen run that is over in a cell leaves its temperature; what begins in that cell may be before or after it. */
    private void passFrozen(int cell) {
        for (int after : statesOfShort[cell]) {
            for (int state = 0; state < onward[cell].length; state++) {
                if (onward[cell][after] < onward[cell][state]) {
                    onward[cell][state] = onward[cell][after];
                    choices[cell][state] = PASSED - after;
                }
            }
        }
    }

    /** The states after frozen runs that are over in the cell in which they begin. */
    private int[] statesOfShort(int cell) {
        int[] fixed = terms.fixed();
        return IntStream.range(0, fixed.length / 3)
                .map(number -> number * 3)
                .filter(at -> cells.of(fixed[at]) == cell && isShort(at))
                .map(at -> fixed[at + 2] + 1)
                .toArray();
    }

    /** What the best day that was sought last costs. */
    double onward() {
        return onward[0][terms.state()];
    }

    /** The runs of the best day with the lots that are not in another day yet, each once. */
    List<Batch> day(int oven, boolean[] taken) {
        List<Batch> day = new ArrayList<>();
        walk((run, start) -> {
            int[] counts = new int[taken.length];
            run.count(start, counts);
            int[] lots = IntStream.range(0, counts.length)
                    .filter(lot -> counts[lot] > 0 && !taken[lot])
                    .toArray();
            IntStream.of(lots).forEach(lot -> taken[lot] = true);
            if (lots.length > 0) {
                day.add(Batch.of(problem, oven, run.temperature(), lots));
            }
        });
        return day;
    }

    /** How often each lot is in the best day is added to the counts. */
    void count(int[] counts) {
        walk((run, start) -> run.count(start, counts));
    }

    private void walk(ObjIntConsumer<PricedRun> told) {
        int cell = 0;
        int state = terms.state();
        while (cell < cells.count()) {
            int choice = choices[cell][state];
            if (choice == WAIT) {
                cell++;
            } else if (choice <= PASSED) {
                state = PASSED - choice;
            } else if (choice == FROZEN) {
                int at = nextFixed[cell];
                state = terms.fixed()[at + 2] + 1;
                cell = endOfFixed(at);
            } else {
                int start = cell + change[state][choice];
                PricedRun run = runs.get(bestRun[start][choice]);
                told.accept(run, start);
                cell = run.end(start);
                state = choice + 1;
            }
        }
    }

    /** What the oven costs up to each cell with the prices of now, for {@link #around}. */
    void lookBack() {
        for (double[] row : upTo) {
            Arrays.fill(row, Double.POSITIVE_INFINITY);
        }
        upTo[0][terms.state()] = 0;
        for (int cell = 0; cell < cells.count(); cell++) {
            passFrozenForward(cell);
            if (isFrozen(cell)) {
                int at = nextFixed[cell];
                reach(endOfFixed(at), terms.fixed()[at + 2] + 1, least(upTo[cell]));
                Arrays.fill(upToStart[cell], Double.POSITIVE_INFINITY);
                continue;
            }
            for (int state = 0; state < upTo[cell].length; state++) {
                reach(cell + 1, state, upTo[cell][state]);
            }
            for (int temperature = 0; temperature < problem.temperatures(); temperature++) {
                upToStart[cell][temperature] = upToStart(cell, temperature);
            }
            goOn(cell);
        }
    }

    private static double least(double[] costs) {
        return Arrays.stream(costs).min().orElse(Double.POSITIVE_INFINITY);
    }

    private void passFrozenForward(int cell) {
        for (int after : statesOfShort[cell]) {
            reach(cell, after, least(upTo[cell]));
        }
    }

    /** What the oven costs up to the start of a run in a cell, with the change before it. */
    private double upToStart(int start, int temperature) {
        double best = Double.POSITIVE_INFINITY;
        for (int state = 0; state < upTo[start].length; state++) {
            int from = start - change[state][temperature];
            if (from >= 0 && isFree(from, start)) {
                best = Math.min(best, upTo[from][state] + priceOfChange(state, temperature));
            }
        }
        return best;
    }

    private void goOn(int start) {
        for (PricedRun run : runs) {
            double before = upToStart[start][run.temperature()];
            if (before < Double.POSITIVE_INFINITY && fits(run, start)) {
                reach(run.end(start), run.temperature() + 1, before + run.cost() - run.left(start));
            }
        }
    }

    private void reach(int cell, int state, double cost) {
        upTo[cell][state] = Math.min(upTo[cell][state], cost);
    }

    /** What the best day with a run from a cell on costs, without what that run leaves over; infinite if there is none. */
    double around(PricedRun run, int start) {
        return fits(run, start)
                ? upToStart[start][run.temperature()] + run.cost() + onward[run.end(start)][run.temperature() + 1]
                : Double.POSITIVE_INFINITY;
    }

    /** Whether it can bake a lot at all. */
    boolean canTake(int lot) {
        return runs.stream().anyMatch(run -> run.has(lot));
    }

    /** Whether nobody can use it from a cell on. */
    boolean isClosedFrom(int cell) {
        for (int i = 0; i < terms.blocked().length; i += 2) {
            if (Problem.isNever(terms.blocked()[i + 1]) && cells.of(terms.blocked()[i]) <= cell) {
                return true;
            }
        }
        return false;
    }
}
