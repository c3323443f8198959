package bagclock.core.oven;

/**
 * What counts in a plan.
 *
 * @param lateMinute price of one minute late, times the lot's weight
 * @param lateLot price of a lot that is late at all, times its weight
 * @param ovenMinute price of one minute of a run, from closing the door until it is ready to be opened
 * @param change factor on the price of the changes between runs
 * @param isStaged whether lateness comes first, then the minutes of ovens, then the number of runs; else all prices are
 *     added up
 */
public record Aim(long lateMinute, long lateLot, long ovenMinute, long change, boolean isStaged) {
    /** Weighted minutes late, then minutes of ovens, then the number of runs. */
    public static final Aim STAGES = new Aim(1, 0, 1, 0, true);
}
