package bagclock.stock;

import bagclock.platform.Page;
import java.util.List;

/**
 * One item: the answer, why, what to do, its line of life, its trail and its ledger.
 *
 * @param verdict clear, wait, bake or hold
 * @param acts what is done to most items
 * @param otherActs what is done to few, folded away
 * @param done whether something was just written down
 */
public record ItemPage(
        String title,
        String tag,
        String lead,
        boolean done,
        String verdict,
        String sentence,
        String aside,
        List<Reason> reasons,
        List<Step> steps,
        List<Fact> facts,
        List<Link> acts,
        List<Link> otherActs,
        LifeLine life,
        EstimateLine estimate,
        List<Trail> trail,
        List<Line> lines,
        List<Link> family)
        implements Page {
    /** Why, with source and status. */
    public record Reason(String text, String source, String status) {}

    /** What to do, and where; an empty address for nothing to press. */
    public record Step(String text, String href) {}

    /** A name and its value. */
    public record Fact(String name, String value) {}

    /** A link. */
    public record Link(String href, String label) {}

    /** One line of the account of used life. */
    public record Trail(String from, String to, String where, String air, String life, String used) {}

    /**
     * One line of the ledger.
     *
     * @param state empty if it stands as it was told in time
     * @param correct where it is corrected; empty if it is not
     * @param record where the heat that it tells of is kept with its answer; empty for none
     */
    public record Line(
            int seq,
            String happened,
            String recorded,
            String words,
            String who,
            String state,
            String hash,
            String correct,
            String record) {}

    @Override
    public String template() {
        return "stock/item.jte";
    }

    @Override
    public String frontDoor() {
        return "stock";
    }
}
