package bagclock.core.oven;

import java.util.BitSet;
import java.util.function.BiConsumer;
import java.util.stream.IntStream;

/**
 * The runs of one length in an oven at a temperature: what the best of them leaves over, by the cell in which it begins.
 * Lots that need longer, or bear less, are in none of them.
 */
final class PricedRun {
    /** In the place of what is left over: no lot can be in a run that begins here. */
    static final double NONE = -1;

    private final PricedLots priced;
    private final int oven;
    private final int temperature;
    private final int least;
    private final int shutMinutes;
    private final int cells;
    private final int[] lots;
    private final int[] mostCells;
    private final int[] releases;
    private final double[] worths;
    private final Pack pack;
    private final double[] left;
    private final BitSet changes;

    PricedRun(PricedLots priced, int oven, int temperature, int least) {
        Problem problem = priced.problem();
        Problem.Terms terms = problem.ovens()[oven];
        this.priced = priced;
        this.oven = oven;
        this.temperature = temperature;
        this.least = least;
        this.shutMinutes = terms.shut(least);
        this.cells = priced.cells().of(shutMinutes);
        this.lots = IntStream.range(0, problem.lots().length)
                .filter(lot -> problem.can(lot, oven, temperature))
                .filter(lot -> problem.lots()[lot].least()[oven][temperature] <= least)
                .filter(lot -> problem.lots()[lot].most()[oven][temperature] >= least)
                .toArray();
        this.mostCells = IntStream.of(lots)
                .map(lot -> Math.min(Problem.NEVER, problem.lots()[lot].most()[oven][temperature]))
                .map(most -> priced.cells().ofStay(terms.shut(most)))
                .toArray();
        this.releases = IntStream.of(lots)
                .map(lot -> priced.cells().of(problem.lots()[lot].release()))
                .toArray();
        this.worths = new double[lots.length];
        this.pack = new Pack(
                IntStream.of(lots).map(lot -> problem.lots()[lot].positions()).toArray(), terms.capacity());
        this.left = new double[priced.cells().count() + 1];
        this.changes = new BitSet();
        IntStream.range(0, left.length).filter(this::isOther).forEach(changes::set);
    }

    int temperature() {
        return temperature;
    }

    /** Its lots; other numbers of lots here are places in this row. */
    int[] lots() {
        return lots;
    }

    boolean has(int lot) {
        return IntStream.of(lots).anyMatch(each -> each == lot);
    }

    /** Each lot that can lead it, with each that can be in it, by their places. */
    void pairs(BiConsumer<Integer, Integer> told) {
        for (int leader = 0; leader < lots.length; leader++) {
            for (int lot = 0; leads(leader) && lot < lots.length; lot++) {
                told.accept(leader, lot);
            }
        }
    }

    /** Whether the lot at this place needs as long as the run is. */
    private boolean leads(int at) {
        return priced.problem().lots()[lots[at]].least()[oven][temperature] == least;
    }

    /** What the run costs by itself. */
    double cost() {
        Aim aim = priced.problem().aim();
        return aim.isStaged() ? 0 : (double) aim.ovenMinute() * shutMinutes;
    }

    /** The cell in which it ends; above the count if that is too late. */
    int end(int start) {
        return priced.cells().opening(start + cells);
    }

    /** What the best run leaves over that begins in a cell; {@link #NONE}: nobody can be in it. */
    double left(int start) {
        return left[start];
    }

    /** Reckons all that with the prices of now. */
    void reckon() {
        double now = NONE;
        for (int start = 0; start < left.length; start++) {
            if (changes.get(start)) {
                now = load(start) ? pack.best() : NONE;
            }
            left[start] = now;
        }
    }

    /** Whether a run from this cell on is another matter than one from the cell before, whatever the prices. */
    private boolean isOther(int start) {
        return start == 0
                || isTime(start) != isTime(start - 1)
                || (isTime(start) && IntStream.range(0, lots.length).anyMatch(at -> isOther(at, start)));
    }

    private boolean isOther(int at, int start) {
        boolean mayBeIn = mayBeIn(at, start);
        return mayBeIn != mayBeIn(at, start - 1) || (mayBeIn && cost(at, start) != cost(at, start - 1));
    }

    private double cost(int at, int start) {
        return priced.cost(lots[at], oven, start, end(start));
    }

    /** Whether doors may be opened at its start, and it ends in time. */
    private boolean isTime(int start) {
        return end(start) < left.length && priced.cells().opening(start) == start;
    }

    private boolean mayBeIn(int at, int start) {
        return releases[at] <= start && end(start) - start <= mostCells[at];
    }

    /** Makes the pack ready for a run that begins in a cell; false if nobody can be in it. */
    boolean load(int start) {
        if (!isTime(start)) {
            return false;
        }
        int end = end(start);
        boolean isPossible = false;
        for (int at = 0; at < lots.length; at++) {
            worths[at] = mayBeIn(at, start) ? priced.worth(lots[at], oven, start, end) : Double.NEGATIVE_INFINITY;
            isPossible |= worths[at] > Double.NEGATIVE_INFINITY;
        }
        if (isPossible) {
            pack.offer(worths);
        }
        return isPossible;
    }

    /** What it leaves over with two of its lots, or one, surely in it; may be more than the truth. */
    double leftWith(int one, int other) {
        return pack.bestWith(one, other);
    }

    /** How often each lot is in the best run that begins in a cell is added to the counts. */
    void count(int start, int[] counts) {
        load(start);
        boolean[] chosen = pack.chosen();
        for (int at = 0; at < lots.length; at++) {
            counts[lots[at]] += chosen[at] ? 1 : 0;
        }
    }
}
