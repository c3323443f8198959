package bagclock.core.oven;

import java.util.Comparator;

/**
 * How good a plan is; the smaller the better, the first part that differs decides.
 *
 * @param late weighted minutes late, or the sum of all prices where the aim has no stages
 * @param ovenMinutes minutes of all runs
 * @param runs number of runs
 * @param ends weighted sum of the minutes at which lots come out: only decides between plans that are as good
 */
public record Score(long late, long ovenMinutes, long runs, long ends) implements Comparable<Score> {
    private static final Comparator<Score> ORDER = Comparator.comparingLong(Score::late)
            .thenComparingLong(Score::ovenMinutes)
            .thenComparingLong(Score::runs)
            .thenComparingLong(Score::ends);

    @Override
    public int compareTo(Score other) {
        return ORDER.compare(this, other);
    }

    /** Better in one of the three stages, the first that differs. */
    public boolean isBetterThan(Score other) {
        return new Score(late, ovenMinutes, runs, 0).compareTo(new Score(other.late, other.ovenMinutes, other.runs, 0))
                < 0;
    }
}
