package bagclock.core.exposure;

import bagclock.core.standard.Life;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;

/**
 * Life used up at different rates: milliseconds are summed for each life and divided only when asked, so that ten
 * thousand readings cost ten thousand additions. Mutable, for one thread.
 */
final class Usage {
    /** Nearer to the whole than this, floating point does not decide. */
    private static final double DOUBT = 1e-6;

    private final List<Life> lives;
    private long[] ms;
    private Share base;
    private double approximate;

    Usage() {
        this(new ArrayList<>(), new long[4], Share.NONE, 0);
    }

    private Usage(List<Life> lives, long[] ms, Share base, double approximate) {
        this.lives = lives;
        this.ms = ms;
        this.base = base;
        this.approximate = approximate;
    }

    Usage copy() {
        return new Usage(new ArrayList<>(lives), ms.clone(), base, approximate);
    }

    /** Adds a span; returns the moment at which the whole was used up, if that fell into it. */
    OptionalLong spend(Span span, Life life) {
        boolean already = isPastWhole();
        add(span.lengthMs(), life);
        if (already || !isPastWhole()) {
            return OptionalLong.empty();
        }
        Share before = share().minus(Share.of(span.lengthMs(), life));
        return OptionalLong.of(span.startMs() + Share.WHOLE.minus(before).floorMsOf(life));
    }

    private void add(long spentMs, Life life) {
        if (life.isUnlimited()) {
            return;
        }
        int index = indexOf(life);
        ms[index] += spentMs;
        approximate += (double) spentMs * life.denominator() / life.numeratorMs();
    }

    private int indexOf(Life life) {
        for (int i = 0; i < lives.size(); i++) {
            if (lives.get(i).equals(life)) {
                return i;
            }
        }
        lives.add(life);
        if (lives.size() > ms.length) {
            ms = Arrays.copyOf(ms, ms.length * 2);
        }
        return lives.size() - 1;
    }

    /** Raises what was used to the whole if it was less; returns what was added. */
    Share raiseToWhole() {
        Share before = share();
        set(before.max(Share.WHOLE));
        return base.minus(before);
    }

    void set(Share share) {
        base = share;
        lives.clear();
        ms = new long[4];
        approximate = share.approximate();
    }

    Share share() {
        Share sum = base;
        for (int i = 0; i < lives.size(); i++) {
            sum = sum.plus(Share.of(ms[i], lives.get(i)));
        }
        return sum;
    }

    /** Strictly more than the whole is used: exactly the whole life is still inside. */
    boolean isPastWhole() {
        if (Math.abs(approximate - 1) > DOUBT) {
            return approximate > 1;
        }
        return share().isAboveWhole();
    }
}
