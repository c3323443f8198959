package bagclock.desk;

import bagclock.ledger.Entry;

/**
 * One entry of an item's ledger, as it stands now.
 *
 * @param stands neither taken back nor replaced
 * @param late recorded after entries that happened later
 */
public record HistoryLine(Entry entry, boolean stands, boolean late) {}
