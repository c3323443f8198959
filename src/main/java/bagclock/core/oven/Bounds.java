package bagclock.core.oven;

import java.util.OptionalLong;

/**
 * What no plan can be better than, stage by stage; a later stage's bound holds for plans that are as good in the earlier
 * ones.
 */
public record Bounds(OptionalLong late, OptionalLong ovenMinutes, OptionalLong runs) {
    /** Nothing is known. */
    public static final Bounds NONE = new Bounds(OptionalLong.empty(), OptionalLong.empty(), OptionalLong.empty());

    /** How much is known about a plan. */
    public enum Word {
        /** No plan is better in any stage. */
        PROVED_BEST,
        /** No plan has less lateness; the later stages are open. */
        LATENESS_PROVED,
        /** Lateness can fall by a known amount at most. */
        WITHIN,
        /** Nothing worth saying is known. */
        NO_BOUND
    }

    /** Only lateness is bounded. */
    public static Bounds ofLateness(long least) {
        return new Bounds(OptionalLong.of(least), OptionalLong.empty(), OptionalLong.empty());
    }

    /** What may be said of a plan with this score. */
    public Word word(Score score) {
        if (late.isEmpty()) {
            return Word.NO_BOUND;
        } else if (late.getAsLong() < score.late()) {
            return late.getAsLong() > 0 ? Word.WITHIN : Word.NO_BOUND;
        }
        boolean isBest = ovenMinutes.isPresent()
                && ovenMinutes.getAsLong() >= score.ovenMinutes()
                && runs.isPresent()
                && runs.getAsLong() >= score.runs();
        return isBest ? Word.PROVED_BEST : Word.LATENESS_PROVED;
    }
}
