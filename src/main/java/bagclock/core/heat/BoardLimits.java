package bagclock.core.heat;

import bagclock.core.heat.BoardQuestion.Location;
import bagclock.core.quantity.Celsius;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * How hot a board may be baked with all that sits on it, as far as that is known.
 *
 * @param board what the board bears with what can't be taken off; empty if unknown
 * @param parts the locations of its parts by what they bear, the weakest first
 * @param unknown locations of parts of which only a maker's bake could tell
 */
public record BoardLimits(Optional<Celsius> board, SortedMap<Celsius, List<String>> parts, List<String> unknown) {
    /** The limits of a board; parts that are taken off before a bake don't count. */
    public static BoardLimits of(BoardQuestion question) {
        SortedMap<Celsius, List<String>> parts = new TreeMap<>();
        List<String> unknown = new ArrayList<>();
        for (Location location : question.locations()) {
            if (location.fate().isOnBoard() && !location.offFirst()) {
                BakeMenu.partLimit(location.part())
                        .map(limit -> parts.computeIfAbsent(limit, none -> new ArrayList<>()))
                        .orElse(unknown)
                        .add(location.name());
            }
        }
        return new BoardLimits(question.board().maxBake(), parts, unknown);
    }

    /** Whether board and parts are known to bear a temperature; exactly the limit is borne. */
    public boolean bear(Celsius temperature) {
        boolean known = board.isPresent() && unknown.isEmpty();
        return known && Stream.concat(board.stream(), parts.keySet().stream()).noneMatch(temperature::isAbove);
    }
}
