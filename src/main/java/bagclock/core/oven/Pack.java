package bagclock.core.oven;

import java.util.Arrays;

/** The lots of one run that leave over most, as far as there is room: a knapsack by positions. Reused for each run. */
final class Pack {
    private final int[] sizes;
    private final double[] worths;
    private final double[] best;

    Pack(int[] sizes, int capacity) {
        this.sizes = sizes;
        this.worths = new double[sizes.length];
        this.best = new double[capacity + 1];
        Arrays.fill(worths, Double.NaN);
    }

    /** What the lots leave over; those below nothing stay out. */
    void offer(double[] offered) {
        if (Arrays.equals(offered, worths)) {
            return;
        }
        System.arraycopy(offered, 0, worths, 0, worths.length);
        Arrays.fill(best, 0);
        for (int at = 0; at < worths.length; at++) {
            add(at);
        }
    }

    private void add(int at) {
        if (worths[at] > 0) {
            for (int room = best.length - 1; room >= sizes[at]; room--) {
                best[room] = Math.max(best[room], best[room - sizes[at]] + worths[at]);
            }
        }
    }

    /** The most that lots leave over in all the room. */
    double best() {
        return best[best.length - 1];
    }

    /** The same with one or two lots surely among them; may count these twice. */
    double bestWith(int one, int other) {
        double worth = worths[one] + (one == other ? 0 : worths[other]);
        int room = best.length - 1 - sizes[one] - (one == other ? 0 : sizes[other]);
        return room < 0 ? Double.NEGATIVE_INFINITY : worth + best[room];
    }

    /** Which of them make up the best. */
    boolean[] chosen() {
        double[][] upTo = new double[sizes.length + 1][];
        Arrays.fill(best, 0);
        upTo[0] = best.clone();
        for (int at = 0; at < sizes.length; at++) {
            add(at);
            upTo[at + 1] = best.clone();
        }
        boolean[] chosen = new boolean[sizes.length];
        int room = best.length - 1;
        for (int at = sizes.length - 1; at >= 0; at--) {
            chosen[at] = upTo[at + 1][room] > upTo[at][room];
            room -= chosen[at] ? sizes[at] : 0;
        }
        return chosen;
    }
}
