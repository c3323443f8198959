package bagclock.readings;

import bagclock.core.Refusal;
import java.util.List;

/**
 * What became of some readings: the good ones are kept whatever the others are.
 *
 * @param added kept now
 * @param known already there, with the same values
 * @param refused in the order of the lines
 */
public record Kept(int added, int known, List<BadLine> refused) {
    /**
     * A reading that was not kept.
     *
     * @param line in the file, 1 for its first line; in a list its place from 1
     * @param column name of the column, empty if the whole line is meant
     */
    public record BadLine(long line, String column, Refusal refusal) {}

    /** Keeps its own copy. */
    public Kept {
        refused = List.copyOf(refused);
    }
}
