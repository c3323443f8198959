/**
 * What happened: entries that are only ever added, chained by hashes, and their replay into a history. Hides how
 * corrections, splits and joins turn entries into a timeline; knows nothing of part types, places and readings.
 */
@NullMarked
package bagclock.ledger;

import org.jspecify.annotations.NullMarked;
