package bagclock.core.oven;

import java.util.Arrays;
import java.util.List;

/**
 * The runs of one oven while a search changes them. Of a change only the runs between the first and the last that differ
 * are given times again, and those behind as long as they come to lie elsewhere than before. Not for sharing between
 * threads.
 */
final class Track {
    private final Decoder decoder;
    private final int oven;
    private final boolean isMonotone;
    private Marks now = new Marks();
    private Marks tried = new Marks();

    /** Of an oven without runs. */
    Track(Problem problem, Decoder decoder, int oven) {
        this.decoder = decoder;
        // A later start can save an opening of the door, or put a lot back where it was.
        this.isMonotone = problem.recovery() == Problem.NO && problem.anchor().price() == 0;
        this.oven = oven;
    }

    /** Where the oven stands after each run, and what it costs up to there. */
    private static final class Marks {
        private List<Batch> batches = List.of();
        private int[] free = new int[16];
        private int[] state = new int[16];
        private int[] fixedBehind = new int[16];
        private double[] sums = new double[16];

        void grow(int size) {
            if (sums.length < size) {
                free = Arrays.copyOf(free, size * 2);
                state = Arrays.copyOf(state, size * 2);
                fixedBehind = Arrays.copyOf(fixedBehind, size * 2);
                sums = Arrays.copyOf(sums, size * 2);
            }
        }

        void copy(Marks from, int at, int to, int length) {
            System.arraycopy(from.free, at, free, to, length);
            System.arraycopy(from.state, at, state, to, length);
            System.arraycopy(from.fixedBehind, at, fixedBehind, to, length);
            System.arraycopy(from.sums, at, sums, to, length);
        }

        /** What the first runs cost. */
        double upTo(int runs) {
            return runs == 0 ? 0 : sums[runs - 1];
        }

        double cost() {
            return upTo(batches.size());
        }

        void shift(int from, int to, double by) {
            for (int at = from; at < to; at++) {
                sums[at] += by;
            }
        }

        // Who is free at the same minute has the same frozen runs behind him.
        boolean isAs(int at, Marks other, int otherAt) {
            return free[at] == other.free[otherAt] && state[at] == other.state[otherAt];
        }

        boolean isLater(int at, Marks other, int otherAt) {
            return free[at] >= other.free[otherAt] && state[at] == other.state[otherAt];
        }
    }

    /** Its runs. */
    List<Batch> batches() {
        return now.batches;
    }

    /** What they cost. */
    double cost() {
        return now.cost();
    }

    /**
     * What the oven would cost with other runs; those that stay as they are must be the same objects.
     *
     * @param most no need to know it exactly above this
     * @return {@link Double#MAX_VALUE} if one of them has no time, or if it is more than the most
     */
    double tryOut(List<Batch> batches, double most) {
        int size = batches.size();
        int same = sameAtStart(batches);
        int lastChange = size - sameAtEnd(batches, same);
        int shift = now.batches.size() - size;
        tried.batches = batches;
        tried.grow(size);
        tried.copy(now, 0, 0, same);
        double sum = now.upTo(same);
        for (int at = same; at < size; at++) {
            int old = at < lastChange ? 0 : at + shift;
            if (isAsBefore(at, old)) {
                tried.copy(now, old, at, size - at);
                tried.shift(at, size, sum - now.upTo(old));
                sum = tried.upTo(size);
                break;
            }
            if (sum + leastFrom(at, old) > most || !place(batches.get(at), at)) {
                return Double.MAX_VALUE;
            }
            sum += Prices.of(decoder, 1);
            tried.sums[at] = sum;
        }
        return sum > most ? Double.MAX_VALUE : sum;
    }

    /** Whether all from here on comes as it came from an old place on; an old place 0: none. */
    private boolean isAsBefore(int at, int old) {
        return at > 0 && old > 0 && tried.isAs(at - 1, now, old - 1);
    }

    /** What all from here on costs at least: what starts no earlier than before can't cost less. */
    private double leastFrom(int at, int old) {
        boolean isLater = isMonotone && at > 0 && old > 0 && tried.isLater(at - 1, now, old - 1);
        return isLater ? now.cost() - now.upTo(old) : 0;
    }

    private boolean place(Batch batch, int at) {
        if (at == 0) {
            decoder.begin(oven);
        } else {
            decoder.resume(tried.free[at - 1], tried.state[at - 1], tried.fixedBehind[at - 1]);
        }
        if (!decoder.next(oven, batch)) {
            return false;
        }
        tried.free[at] = decoder.free();
        tried.state[at] = decoder.state();
        tried.fixedBehind[at] = decoder.fixedBehind();
        return true;
    }

    /** The first run that ends at a minute or later; the number of runs if there is none. */
    int firstEndingFrom(int minute) {
        int at = Arrays.binarySearch(now.free, 0, now.batches.size(), minute);
        return at < 0 ? -at - 1 : at;
    }

    /** Keeps what was tried out last. */
    void take() {
        Marks before = now;
        now = tried;
        tried = before;
    }

    private int sameAtStart(List<Batch> batches) {
        int most = Math.min(batches.size(), now.batches.size());
        int same = 0;
        while (same < most && batches.get(same) == now.batches.get(same)) {
            same++;
        }
        return same;
    }

    private int sameAtEnd(List<Batch> batches, int sameAtStart) {
        int most = Math.min(batches.size(), now.batches.size()) - sameAtStart;
        int same = 0;
        while (same < most
                && batches.get(batches.size() - 1 - same) == now.batches.get(now.batches.size() - 1 - same)) {
            same++;
        }
        return same;
    }
}
