package bagclock.stock;

import bagclock.ledger.Item;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A lot and where its parts went.
 *
 * @param tag of the item that came into the house
 * @param number the label's lot number; empty where none is known
 * @param items that hold, or held, parts of it, by tag; an item that others were put into may hold more
 * @param went by serial number of the board; what has none comes first
 */
record MakersLot(String tag, String partType, Optional<String> number, List<Item> items, List<Went> went) {
    /**
     * Parts went onto a board, or were used without one being named.
     *
     * @param board serial number; empty where none was told
     * @param location empty where none was told
     * @param workOrder empty where none was told
     */
    record Went(String board, String location, String item, String workOrder, Instant at, Place place) {}

    /** What became of the parts there. */
    enum Place {
        USED,
        MOUNTED,
        TAKEN_OFF
    }

    /** How many boards are named. */
    long boards() {
        return went.stream()
                .map(Went::board)
                .filter(board -> !board.isEmpty())
                .distinct()
                .count();
    }

    /** How many uses name no board: those can't be found by serial number. */
    long withoutBoard() {
        return went.stream().filter(one -> one.board().isEmpty()).count();
    }
}
