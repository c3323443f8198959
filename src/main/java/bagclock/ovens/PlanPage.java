package bagclock.ovens;

import bagclock.platform.Choice;
import bagclock.platform.Field;
import bagclock.platform.Page;
import java.util.List;
import java.util.stream.Stream;

/**
 * A plan of the ovens: the published one, or a draft beside it.
 *
 * @param lead late lots and hours, in a sentence
 * @param word how good the plan is, in words
 * @param done what was just done; empty for nothing
 * @param draft empty texts if this is the published plan
 * @param named what is not as it should be, in words
 * @param without what needs a bake and may have none as it is, each with why
 * @param path address of this page without its range
 * @param range the length of the axis that is shown
 */
public record PlanPage(
        String title,
        String lead,
        String word,
        String done,
        Draft draft,
        List<String> named,
        Lanes lanes,
        List<Choice> ranges,
        String path,
        String range,
        List<Next> next,
        List<RunLine> runs,
        List<LotLine> lots,
        List<String> without,
        List<Outage> outages,
        Asking asking)
        implements Page {
    /**
     * What stands beside what.
     *
     * @param id empty: no draft
     * @param isStale another plan was published since
     */
    public record Draft(String id, boolean isStale, boolean isSearching, List<Line> before, List<String> moved) {}

    /** One number of both plans. */
    public record Line(String what, String before, String after) {}

    /** What somebody does next, and when. */
    public record Next(String at, String what, String href) {}

    /**
     * A run in words.
     *
     * @param first tag of its first lot: names it
     * @param state running, planned, held: a word
     * @param apart who joins or leaves it while it goes on, in words
     * @param start for the field of a move; empty: it can't be moved
     */
    public record RunLine(
            String first,
            String oven,
            String ovenCode,
            String facts,
            String from,
            String to,
            String state,
            List<String> lots,
            List<String> apart,
            String start,
            boolean isPinned) {}

    /**
     * A lot in words.
     *
     * @param part what it is; empty of a lot that is not there yet
     * @param in the oven, the temperature and the beginning of its run; empty: in none
     * @param late empty: on time
     * @param early how much before it is needed; empty if it is late or nobody needs it by a time
     * @param why why it is late, and what would make it on time
     */
    public record LotLine(
            String tag,
            String part,
            String positions,
            String programmes,
            String needed,
            String in,
            String out,
            String late,
            String early,
            List<String> why) {}

    /** An oven out of service. */
    public record Outage(String id, String words) {}

    /** What may be asked: fields of the three questions, and what they offer. */
    public record Asking(
            List<Choice> lots,
            List<Choice> ovens,
            Field needTag,
            Field needBy,
            Field oven,
            Field from,
            Field to,
            List<Field> rush) {}

    /** The same page, with what could not be done before the rest that is named. */
    PlanPage naming(List<String> more) {
        List<String> all = Stream.concat(more.stream(), named.stream()).toList();
        return new PlanPage(
                title, lead, word, done, draft, all, lanes, ranges, path, range, next, runs, lots, without, outages,
                asking);
    }

    @Override
    public String template() {
        return "ovens/plan.jte";
    }

    @Override
    public String frontDoor() {
        return "ovens";
    }
}
