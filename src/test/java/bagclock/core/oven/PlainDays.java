package bagclock.core.oven;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** All days of an oven in cells, one step after the other, with each rule looked up where it is needed. */
final class PlainDays {
    private final Problem problem;
    private final Problem.Terms terms;
    private final Cells cells;
    private final PricedOven oven;
    private final Map<Stand, Double> known = new HashMap<>();
    private final Optional<PricedRun> wanted;
    private final int wantedStart;

    private record Stand(int cell, int state, boolean isDone) {}

    private PlainDays(PricedLots priced, int number, PricedOven oven, Optional<PricedRun> wanted, int wantedStart) {
        this.problem = priced.problem();
        this.terms = problem.ovens()[number];
        this.cells = priced.cells();
        this.oven = oven;
        this.wanted = wanted;
        this.wantedStart = wantedStart;
    }

    /** What the best day costs. */
    static double best(PricedLots priced, int number, PricedOven oven) {
        return new PlainDays(priced, number, oven, Optional.empty(), 0).seek();
    }

    /** What the best day with this run costs, without what that run leaves over. */
    static double best(PricedLots priced, int number, PricedOven oven, PricedRun run, int start) {
        return new PlainDays(priced, number, oven, Optional.of(run), start).seek();
    }

    // from the last cell back, so that no step goes deep
    private double seek() {
        for (int cell = cells.count(); cell >= 0; cell--) {
            for (int state = 0; state <= problem.temperatures(); state++) {
                day(new Stand(cell, state, true));
                day(new Stand(cell, state, false));
            }
        }
        return day(new Stand(0, terms.state(), wanted.isEmpty()));
    }

    private double day(Stand stand) {
        Double before = known.get(stand);
        if (before != null) {
            return before;
        }
        double cost = atLast(stand);
        known.put(stand, cost);
        return cost;
    }

    private double atLast(Stand stand) {
        if (stand.cell() >= cells.count()) {
            return stand.isDone() ? 0 : Double.POSITIVE_INFINITY;
        }
        double best = onward(stand);
        for (int i = 0; i < terms.fixed().length; i += 3) {
            if (from(i) == stand.cell() && to(i) == stand.cell()) {
                best = Math.min(best, onward(new Stand(stand.cell(), terms.fixed()[i + 2] + 1, stand.isDone())));
            }
        }
        return best;
    }

    private double onward(Stand stand) {
        for (int i = 0; i < terms.fixed().length; i += 3) {
            if (from(i) == stand.cell() && to(i) > stand.cell()) {
                return day(new Stand(Math.min(cells.count(), to(i)), terms.fixed()[i + 2] + 1, stand.isDone()));
            }
        }
        double best = day(new Stand(stand.cell() + 1, stand.state(), stand.isDone()));
        for (PricedRun run : oven.runs()) {
            best = Math.min(best, run(stand, run));
        }
        return best;
    }

    private double run(Stand stand, PricedRun run) {
        int start = stand.cell() + cells.of(terms.change()[stand.state()][run.temperature()]);
        if (start >= cells.count() || run.left(start) == PricedRun.NONE || !isFree(stand.cell(), start, run)) {
            return Double.POSITIVE_INFINITY;
        }
        double price =
                problem.aim().isStaged() ? 0 : problem.aim().change() * terms.price()[stand.state()][run.temperature()];
        double alone = price + run.cost();
        double earned = alone - run.left(start) + day(new Stand(run.end(start), run.temperature() + 1, stand.isDone()));
        boolean isWanted = !stand.isDone() && wanted.filter(run::equals).isPresent() && start == wantedStart;
        return isWanted
                ? Math.min(earned, alone + day(new Stand(run.end(start), run.temperature() + 1, true)))
                : earned;
    }

    private boolean isFree(int from, int start, PricedRun run) {
        int end = run.end(start);
        boolean isOpen = IntStream.range(0, terms.blocked().length / 2)
                .map(number -> number * 2)
                .allMatch(i -> cells.of(terms.blocked()[i + 1]) <= from || cells.of(terms.blocked()[i]) >= end);
        boolean isBetween = IntStream.range(0, terms.fixed().length / 3)
                .map(number -> number * 3)
                .allMatch(i -> isBehind(i, from) || end + back(run, i) <= from(i));
        return isOpen && isBetween;
    }

    private boolean isBehind(int fixed, int cell) {
        return from(fixed) < cell || (from(fixed) == cell && to(fixed) == cell);
    }

    private int back(PricedRun run, int fixed) {
        return cells.of(terms.change()[run.temperature() + 1][terms.fixed()[fixed + 2]]);
    }

    private int from(int fixed) {
        return cells.of(terms.fixed()[fixed]);
    }

    private int to(int fixed) {
        return cells.of(terms.fixed()[fixed + 1]);
    }
}
