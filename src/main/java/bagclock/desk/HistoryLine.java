package bagclock.desk;

import bagclock.ledger.Entry;
import bagclock.ledger.History;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * One entry of an item's ledger, as it stands now.
 *
 * @param stands neither taken back nor replaced
 * @param late recorded after entries that happened later
 */
public record HistoryLine(Entry entry, boolean stands, boolean late) {
    /** Every entry of an item, in order. */
    static List<HistoryLine> of(History history) {
        List<HistoryLine> lines = new ArrayList<>();
        Instant latest = Instant.MIN;
        for (Entry entry : history.entries()) {
            boolean late = entry.happenedAt().isBefore(latest);
            lines.add(new HistoryLine(entry, history.stands(entry.seq()), late));
            latest = late ? latest : entry.happenedAt();
        }
        return lines;
    }
}
