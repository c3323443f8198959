package bagclock.desk;

import bagclock.core.exposure.Timeline;
import bagclock.core.heat.Answer;
import bagclock.ledger.Item;
import bagclock.register.PartType;
import bagclock.register.Versioned;
import java.util.List;

/**
 * One item with all that is known of it.
 *
 * @param timeline its history with its ancestors', corrections applied
 * @param answer whether it may be heated now, without a plan
 * @param lines its own ledger, oldest first
 * @param children tags of the items that were split off from it
 */
public record ItemView(
        Item item,
        Versioned<PartType> partType,
        Timeline timeline,
        Answer answer,
        List<HistoryLine> lines,
        List<String> children) {}
