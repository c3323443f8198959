package bagclock.core.oven;

import java.util.Arrays;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The time of a problem in cells of equal length. Where not every time is a whole number of cells, all is rounded so that
 * no plan is lost: what costs least in cells costs no more than the best plan in minutes.
 */
final class Cells {
    private final int minutes;
    private final int count;
    private final boolean isExact;
    private final int[] openings;

    /**
     * Cells up to a minute.
     *
     * @param most how many cells there may be; fewer make a rougher answer sooner
     */
    Cells(Problem problem, int lastMinute, int most) {
        int exact = Math.max(1, steps(problem).reduce(0, Cells::commonDivisor));
        int wanted = 1 + (lastMinute - 1) / (exact * most);
        int factor = Math.max(1, Math.min(wanted, shortestRun(problem) / exact));
        this.isExact = factor == 1;
        this.minutes = exact * factor;
        this.count = lastMinute / minutes + 1;
        this.openings = IntStream.rangeClosed(0, count)
                .map(cell -> opening(problem.attended(), cell))
                .toArray();
    }

    /** All times between which runs begin and end. */
    private static IntStream steps(Problem problem) {
        IntStream releases = Arrays.stream(problem.lots()).mapToInt(Problem.Piece::release);
        IntStream ofOvens = IntStream.range(0, problem.ovens().length).flatMap(oven -> steps(problem, oven));
        return Stream.of(IntStream.of(problem.attended()), releases, ofOvens)
                .flatMapToInt(times -> times)
                .filter(time -> !Problem.isNever(time));
    }

    private static IntStream steps(Problem problem, int oven) {
        Problem.Terms terms = problem.ovens()[oven];
        int[] fixed = terms.fixed();
        IntStream changes = Arrays.stream(terms.change()).flatMapToInt(IntStream::of);
        IntStream frozen =
                IntStream.range(0, fixed.length).filter(at -> at % 3 != 2).map(at -> fixed[at]);
        return Stream.of(changes, IntStream.of(terms.blocked()), frozen, runs(problem, oven))
                .flatMapToInt(times -> times);
    }

    /** How long runs in an oven can be. */
    private static IntStream runs(Problem problem, int oven) {
        return Arrays.stream(problem.lots())
                .flatMapToInt(lot -> IntStream.of(lot.least()[oven]))
                .filter(least -> least != Problem.NO)
                .map(problem.ovens()[oven]::shut);
    }

    /** No cell is longer, or runs would take no time. */
    private static int shortestRun(Problem problem) {
        return IntStream.range(0, problem.ovens().length)
                .flatMap(oven -> runs(problem, oven))
                .min()
                .orElse(Problem.NEVER);
    }

    private static int commonDivisor(int one, int other) {
        return other == 0 ? Math.abs(one) : commonDivisor(other, one % other);
    }

    private int opening(int[] attended, int cell) {
        for (int i = 0; i < attended.length; i += 2) {
            if (cell <= of(attended[i + 1])) {
                return Math.max(cell, of(attended[i]));
            }
        }
        return cell;
    }

    /** Whether nothing is rounded. */
    boolean isExact() {
        return isExact;
    }

    /** How many there are; the last one begins at this number or before. */
    int count() {
        return count;
    }

    /** The cell in which a minute lies; minutes before the first are in it. */
    int of(int minute) {
        return Math.max(0, minute) / minutes;
    }

    /** The most cells that a stay of so many minutes can touch. */
    int ofStay(int stayMinutes) {
        return stayMinutes / minutes + (isExact ? 0 : 1);
    }

    /** First minute of a cell. */
    int start(int cell) {
        return cell * minutes;
    }

    /** Last minute of a cell at which something may begin. */
    int last(int cell) {
        return cell * minutes + (isExact ? 0 : minutes - 1);
    }

    /** The first cell from this one on in which somebody opens doors; above the count if that is too late. */
    int opening(int cell) {
        return cell > count ? count + 1 : openings[cell];
    }
}
