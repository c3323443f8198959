package bagclock.bench;

import java.util.List;

/**
 * One answer in words.
 *
 * @param where the place it is in, in words
 * @param sentence what to do, with a time of day
 * @param aside time left and the like; empty for none
 * @param life the floor life in words
 */
public record AnswerPart(
        String tag,
        String partNumber,
        String description,
        String where,
        String verdict,
        String sentence,
        String aside,
        String life,
        List<Reason> reasons,
        List<Step> steps,
        List<Bake> bakes,
        List<Assumed> assumed,
        List<Stretch> trail) {
    /**
     * Why.
     *
     * @param source where the rule stands and how far that may be trusted
     */
    public record Reason(String text, String source) {}

    /**
     * What would mend it.
     *
     * @param who whose task it is
     * @param href where it is done; empty if nowhere on this site
     */
    public record Step(String text, String who, String href, String act) {}

    /**
     * One bake.
     *
     * @param why what speaks against it; empty if it is allowed
     */
    public record Bake(String temperature, String time, String humidity, String why) {}

    /** A fact that is missing. */
    public record Assumed(String why, String as) {}

    /** One line of the account of used floor life. */
    public record Stretch(String when, String where, String used) {}
}
