package bagclock.core.oven;

import java.util.Arrays;
import java.util.List;

/**
 * Gives runs their times: each as early as its oven, its lots and the people who open doors allow, in the order given;
 * around frozen runs and spans out of service. No other times for the same order are better: whatever comes earlier
 * makes nothing else later. Not for sharing between threads.
 */
public final class Decoder {
    private final Problem problem;
    private final int[] inAt;
    private final int[] outAt;
    private final DoorDay doors;
    private long late;
    private long minutes;
    private long ends;
    private int free;
    private int state;
    private int nextFixed;

    /** A decoder for one problem. */
    public Decoder(Problem problem) {
        this.problem = problem;
        this.inAt = new int[problem.lots().length];
        this.outAt = new int[problem.lots().length];
        this.doors = new DoorDay(problem);
    }

    /** When the lot goes in, in the sketch decoded last. */
    public int inAt(int lot) {
        return inAt[lot];
    }

    /** When the lot comes out, in the sketch decoded last. */
    public int outAt(int lot) {
        return outAt[lot];
    }

    /** The score of all ovens together. */
    public Score score(Sketch sketch) {
        Score sum = new Score(0, 0, 0, 0);
        for (int oven = 0; oven < sketch.ovens().size(); oven++) {
            Score one = score(oven, sketch.ovens().get(oven));
            sum = new Score(
                    sum.late() + one.late(),
                    sum.ovenMinutes() + one.ovenMinutes(),
                    sum.runs() + one.runs(),
                    sum.ends() + one.ends());
        }
        return sum;
    }

    /** Whether every lot is in it once, and all runs have a time. */
    public boolean fits(Sketch sketch) {
        int[] seen = new int[inAt.length];
        boolean hasTime = true;
        for (int oven = 0; oven < sketch.ovens().size(); oven++) {
            List<Batch> batches = sketch.ovens().get(oven);
            batches.forEach(batch -> {
                for (int lot : batch.lots()) {
                    seen[lot]++;
                }
            });
            hasTime = hasTime && place(oven, batches);
        }
        return hasTime && Arrays.stream(seen).allMatch(times -> times == 1);
    }

    /** The score of one oven; throws {@link IllegalStateException} when its runs have no time. */
    Score score(int oven, List<Batch> batches) {
        if (!place(oven, batches)) {
            throw new IllegalStateException("oven " + oven + " has no time for its runs");
        }
        return new Score(late, minutes, batches.size(), ends);
    }

    /** Weighted lateness, or the sum of all prices, of the oven placed last. */
    long late() {
        return late;
    }

    /** Minutes of runs of the oven placed last. */
    long minutes() {
        return minutes;
    }

    /** Weighted ends of the oven placed last. */
    long ends() {
        return ends;
    }

    /** Places the runs of one oven; false when one of them has no time. */
    boolean place(int oven, List<Batch> batches) {
        begin(oven);
        for (Batch batch : batches) {
            if (!next(oven, batch)) {
                return false;
            }
        }
        return true;
    }

    /** An oven as it is before the first run that is not frozen. */
    void begin(int oven) {
        resume(0, problem.ovens()[oven].state(), 0);
    }

    /** An oven in the middle of its runs: free from a minute on, in a state, so many numbers of frozen runs behind it. */
    void resume(int freeFrom, int stateThen, int fixedBehind) {
        late = 0;
        minutes = 0;
        ends = 0;
        free = freeFrom;
        state = stateThen;
        nextFixed = fixedBehind;
    }

    /** Places one more run; false when it has no time. */
    boolean next(int oven, Batch batch) {
        Problem.Terms terms = problem.ovens()[oven];
        int[] fixed = terms.fixed();
        while (true) {
            if (!doors.fit(terms, oven, batch, free, terms.change()[state][batch.temperature()])) {
                return false;
            }
            if (nextFixed == fixed.length || !clashes(terms, nextFixed, batch)) {
                break;
            }
            free = Math.max(free, fixed[nextFixed + 1]);
            state = fixed[nextFixed + 2] + 1;
            nextFixed += 3;
        }
        count(terms, oven, batch, state);
        free = doors.end();
        state = batch.temperature() + 1;
        return true;
    }

    /** From when the oven is free after the run placed last. */
    int free() {
        return free;
    }

    /** State of the oven after the run placed last. */
    int state() {
        return state;
    }

    /** How many numbers of frozen runs lie behind the run placed last. */
    int fixedBehind() {
        return nextFixed;
    }

    /** Whether the run, and the change after it, reach into the next frozen run. */
    private boolean clashes(Problem.Terms terms, int nextFixed, Batch batch) {
        int[] fixed = terms.fixed();
        int change = terms.change()[batch.temperature() + 1][fixed[nextFixed + 2]];
        return doors.end() + change > fixed[nextFixed];
    }

    private void count(Problem.Terms terms, int oven, Batch batch, int before) {
        Aim aim = problem.aim();
        for (int at = 0; at < batch.size(); at++) {
            int lot = batch.lot(at);
            inAt[lot] = doors.inAt(at);
            outAt[lot] = doors.outAt(at);
            late += problem.lateness(lot, outAt[lot]);
            if (problem.anchor().isMoved(lot, oven, inAt[lot])) {
                late += problem.anchor().price();
            }
            ends += problem.lots()[lot].weight() * outAt[lot];
        }
        if (aim.isStaged()) {
            minutes += doors.shut();
        } else {
            late += aim.ovenMinute() * doors.shut() + aim.change() * terms.price()[before][batch.temperature()];
        }
    }
}
