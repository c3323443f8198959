package bagclock.desk;

import bagclock.ledger.BoardEntry;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Something that a person tells of a board.
 *
 * @param basedOn number of the newest entry that the person saw
 * @param told see {@link bagclock.ledger.BoardNotes}
 * @param ask the heat that was done or released: its answer is kept beside the entry
 * @param commands what it means for the items, done with it or not at all
 */
public record BoardNote(
        Command.Header header,
        String serial,
        int basedOn,
        BoardEntry.Kind kind,
        Map<String, String> told,
        Optional<BoardAsk> ask,
        List<Command> commands) {
    /** Keeps its own copies. */
    public BoardNote {
        told = Map.copyOf(told);
        commands = List.copyOf(commands);
    }
}
