package bagclock;

import java.util.stream.LongStream;

/** How many cases a test tries: few, or as many as it takes to be sure; property bagclock.counts, quick or full. */
public final class Counts {
    private static final boolean IS_FULL = "full".equals(System.getProperty("bagclock.counts"));

    private Counts() {}

    /** One of the two. */
    public static int of(int quick, int full) {
        return IS_FULL ? full : quick;
    }

    /** The numbers from nothing up to one of the two. */
    public static LongStream seeds(int quick, int full) {
        return LongStream.range(0, of(quick, full));
    }
}
