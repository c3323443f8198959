package bagclock.desk;

import bagclock.ledger.BoardEntry;
import bagclock.ledger.Item;
import bagclock.register.BoardType;
import bagclock.register.KnownBoard;
import bagclock.register.Versioned;
import java.util.List;
import java.util.Optional;

/**
 * A board with all that is known of it.
 *
 * @param type empty if the board's type is not entered any more
 * @param items that are mounted on it, by location
 * @param usedUp items of which parts were used for it
 * @param entries its ledger, oldest first
 */
public record BoardView(
        Versioned<KnownBoard> board,
        Optional<Versioned<BoardType>> type,
        List<Item> items,
        List<Item> usedUp,
        List<BoardEntry> entries) {
    /** The serial number. */
    public String serial() {
        return board.fact().serial();
    }

    /** What stands in its ledger. */
    public BoardState state() {
        return BoardState.of(standing());
    }

    /** The entries that count, oldest first. */
    public List<BoardEntry> standing() {
        return BoardEntry.standing(entries);
    }

    /** The newest entry that counts: the one that can be taken back. */
    public Optional<BoardEntry> last() {
        return standing().stream().reduce((first, second) -> second);
    }

    /** The newest entry's number, 0 for none. */
    public int newest() {
        return entries.size();
    }

    /** The item at a location. */
    public Optional<Item> itemAt(String location) {
        return items.stream()
                .filter(item -> item.location().equals(Optional.of(location)))
                .findFirst();
    }
}
