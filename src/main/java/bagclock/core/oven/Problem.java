package bagclock.core.oven;

import java.util.Arrays;

/**
 * A shop in whole minutes since its moment, by index: what the engines compute with, and what is sent to another process.
 * Nobody changes the arrays.
 *
 * @param temperatures how many there are
 * @param attended starts and ends of spans, one after the other; empty: always
 * @param recovery minutes that an opened door adds to what stays in; below 0: no run is opened
 * @param anchor where lots were before
 */
@SuppressWarnings("ArrayRecordComponent") // for the speed of the search; compared by nobody
public record Problem(
        int temperatures, Terms[] ovens, Piece[] lots, int[] attended, int recovery, Aim aim, Anchor anchor) {
    /** A time that never comes. */
    public static final int NEVER = Integer.MAX_VALUE / 4;

    /** In the place of a time: not possible. */
    public static final int NO = -1;

    /** Whether so late a minute counts as never. */
    public static boolean isNever(int minute) {
        return minute >= NEVER / 2;
    }

    /**
     * An oven.
     *
     * @param state temperature of its last run, plus 1; 0: cold
     * @param change minutes from a state to a temperature
     * @param price likewise
     * @param blocked starts and ends of spans out of service, one after the other, in order
     * @param fixed start, end and temperature of each frozen run, one after the other, in order
     */
    @SuppressWarnings("ArrayRecordComponent") // as above
    public record Terms(
            int capacity,
            int heatUp,
            int coolDown,
            int state,
            int[][] change,
            long[][] price,
            int[] blocked,
            int[] fixed) {
        /** Minutes with the door shut for minutes at temperature. */
        public int shut(int atTemperature) {
            return heatUp + atTemperature + coolDown;
        }
    }

    /**
     * A lot.
     *
     * @param due {@link #NEVER}: by no time in particular
     * @param least minutes at temperature, by oven and temperature; {@link #NO}: not there
     * @param most likewise
     */
    @SuppressWarnings("ArrayRecordComponent") // as above
    public record Piece(int positions, int release, int due, long weight, int[][] least, int[][] most) {}

    /**
     * Where lots were before.
     *
     * @param oven by lot; {@link #NO}: nowhere
     * @param start likewise, in minutes
     * @param price of a lot that changes its oven or starts more than an hour earlier or later, in weighted minutes
     */
    @SuppressWarnings("ArrayRecordComponent") // as above
    public record Anchor(int[] oven, int[] start, long price) {
        static final int STEADY_MIN = 60;

        /** Nothing was planned before. */
        public static Anchor none(int lots) {
            int[] nowhere = new int[lots];
            Arrays.fill(nowhere, NO);
            return new Anchor(nowhere, nowhere, 0);
        }

        boolean isMoved(int lot, int toOven, int startMin) {
            return oven[lot] != NO && (oven[lot] != toOven || Math.abs(start[lot] - startMin) > STEADY_MIN);
        }
    }

    /** Whether the lot can be baked so. */
    public boolean can(int lot, int oven, int temperature) {
        return lots[lot].least()[oven][temperature] != NO && lots[lot].positions() <= ovens[oven].capacity();
    }

    /** The same, with lots that should stay where they were. */
    public Problem anchored(Anchor to) {
        return new Problem(temperatures, ovens, lots, attended, recovery, aim, to);
    }

    /** What a lot costs that comes out of an oven at a minute. */
    long lateness(int lot, int outMin) {
        Piece piece = lots[lot];
        if (outMin <= piece.due()) {
            return 0;
        }
        return piece.weight() * (aim.lateMinute() * (outMin - piece.due()) + aim.lateLot());
    }
}
