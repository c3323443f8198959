package bagclock.ledger;

import java.time.Instant;
import java.util.Optional;

/**
 * A carrier with parts of one type and one history, as its entries leave it.
 *
 * @param parent the item it was split off from
 * @param keeper the item it was put into
 * @param receivedAt when it, or its first ancestor, came into the house; a child: when it was split off
 * @param quantity parts left
 * @param where kind of place
 * @param placeCode the place it was last brought to, if it is still there
 * @param board serial number of the board it is mounted on
 * @param ended nothing of it is left, or it was taken back
 * @param changedAt when the newest entry was recorded
 */
public record Item(
        String tag,
        String partType,
        Optional<String> parent,
        Optional<String> keeper,
        Instant receivedAt,
        long quantity,
        Where where,
        Optional<String> placeCode,
        Optional<String> board,
        Optional<String> location,
        boolean ended,
        Instant changedAt) {
    /** The kind of place an item is in. */
    public enum Where {
        BAG,
        FLOOR,
        CABINET,
        OVEN,
        BOARD,
        /** Used up, put into another item, or taken back. */
        GONE
    }
}
