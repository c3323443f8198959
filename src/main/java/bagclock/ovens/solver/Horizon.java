package bagclock.ovens.solver;

import bagclock.core.oven.Problem;

/** A minute by which every lot can be out in some plan that is as good as any: one after the other, after all that is fixed. */
final class Horizon {
    private static final int MOST = 20_000_000;

    private final Problem problem;

    Horizon(Problem problem) {
        this.problem = problem;
    }

    int minutes() {
        // Only after the last attended span can a run end at any hour, so a plan may rightly wait for it.
        int[] attended = problem.attended();
        long base = attended.length == 0 ? 0 : Math.max(0, attended[attended.length - 1]);
        for (Problem.Terms oven : problem.ovens()) {
            for (int time : oven.blocked()) {
                base = Math.max(base, Problem.isNever(time) ? 0 : time);
            }
            for (int i = 1; i < oven.fixed().length; i += 3) {
                base = Math.max(base, oven.fixed()[i]);
            }
        }
        long sum = 0;
        for (Problem.Piece lot : problem.lots()) {
            base = Math.max(base, lot.release());
            sum += longest(lot) + longestChange() + 2L * longestGap();
        }
        return (int) Math.min(MOST, base + sum + longestGap());
    }

    private int longest(Problem.Piece lot) {
        int longest = 0;
        for (int oven = 0; oven < lot.least().length; oven++) {
            for (int least : lot.least()[oven]) {
                longest = Math.max(longest, problem.ovens()[oven].shut(least));
            }
        }
        return longest;
    }

    private int longestChange() {
        int longest = 0;
        for (Problem.Terms oven : problem.ovens()) {
            for (int[] row : oven.change()) {
                for (int change : row) {
                    longest = Math.max(longest, change);
                }
            }
        }
        return longest;
    }

    private int longestGap() {
        int[] attended = problem.attended();
        int longest = attended.length == 0 ? 0 : Math.max(0, attended[0]);
        for (int i = 2; i < attended.length; i += 2) {
            longest = Math.max(longest, attended[i] - attended[i - 1]);
        }
        return longest;
    }
}
