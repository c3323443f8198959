package bagclock.readings;

import bagclock.core.exposure.Air;
import bagclock.core.standard.DeratingGrid;
import java.util.Arrays;

/** Milliseconds spent in each cell of the derating grid, outside it, and without a reading that holds. Immutable. */
public final class AirTime {
    /** Warmer or wetter than the grid. */
    public static final int OUTSIDE = DeratingGrid.CELLS;

    /** No reading holds. */
    public static final int UNREAD = DeratingGrid.CELLS + 1;

    /** How many counters there are. */
    public static final int COUNTERS = DeratingGrid.CELLS + 2;

    /** No time at all. */
    public static final AirTime NONE = new AirTime(new long[COUNTERS]);

    private final long[] ms;

    private AirTime(long[] ms) {
        this.ms = ms;
    }

    /** Milliseconds by counter. */
    static AirTime of(long[] ms) {
        return new AirTime(ms.clone());
    }

    /** The counter of this air. */
    public static int counterOf(Air air) {
        return DeratingGrid.cellOf(air.temperature(), air.humidity()).orElse(OUTSIDE);
    }

    /** More time at one counter; below 0 takes away. */
    public AirTime plus(int counter, long addedMs) {
        long[] sum = ms.clone();
        sum[counter] += addedMs;
        return new AirTime(sum);
    }

    /** Both added up. */
    public AirTime plus(AirTime other) {
        long[] sum = ms.clone();
        for (int i = 0; i < COUNTERS; i++) {
            sum[i] += other.ms[i];
        }
        return new AirTime(sum);
    }

    /** Milliseconds at a counter. */
    public long ms(int counter) {
        return ms[counter];
    }

    /** Milliseconds in all. */
    public long totalMs() {
        return Arrays.stream(ms).sum();
    }

    /** Milliseconds read warmer than 30 C or wetter than 60 %RH, outside the grid included. */
    public long above3060Ms() {
        long above = ms[OUTSIDE];
        for (int cell = 0; cell < DeratingGrid.CELLS; cell++) {
            boolean counts = new Air(DeratingGrid.warmest(cell), DeratingGrid.wettest(cell)).isAbove3060();
            above += counts ? ms[cell] : 0;
        }
        return above;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof AirTime time && Arrays.equals(time.ms, ms);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(ms);
    }

    @Override
    public String toString() {
        return Arrays.toString(ms);
    }
}
