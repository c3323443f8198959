package bagclock.desk;

import bagclock.core.exposure.PartHistory;
import bagclock.core.exposure.Timeline;
import bagclock.core.heat.Answer;
import bagclock.core.standard.SiteLimits;
import bagclock.ledger.Item;
import bagclock.register.PartType;
import bagclock.register.Versioned;
import java.util.List;

/**
 * One item with all that is known of it.
 *
 * @param history what the answer rests on; with its ancestors' events, corrections applied
 * @param answer whether it may be heated now, without a plan
 * @param lines its own ledger, oldest first
 * @param limits that counted in the answer: the standard's, or the site's stricter ones
 * @param children tags of the items that were split off from it
 */
public record ItemView(
        Item item,
        Versioned<PartType> partType,
        PartHistory history,
        Answer answer,
        SiteLimits limits,
        List<HistoryLine> lines,
        List<String> children) {
    /** What happened to it. */
    public Timeline timeline() {
        return history.timeline();
    }
}
