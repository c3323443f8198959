package bagclock.core.oven;

/** An engine: makes a sketch better, or proves that it can't be. Never hands back a worse one. */
public interface Planner {
    /**
     * Searches.
     *
     * @param from a sketch that holds every lot of the problem
     */
    Found improve(Problem problem, Sketch from, Budget budget);
}
