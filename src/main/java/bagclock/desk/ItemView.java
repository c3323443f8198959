package bagclock.desk;

import bagclock.core.exposure.PartHistory;
import bagclock.core.exposure.Timeline;
import bagclock.core.heat.Answer;
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
 * @param children tags of the items that were split off from it
 */
public record ItemView(
        Item item,
        Versioned<PartType> partType,
        PartHistory history,
        Answer answer,
        List<HistoryLine> lines,
        List<String> children) {
    /** What happened to it. */
    public Timeline timeline() {
        return history.timeline();
    }
}
