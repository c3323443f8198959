package bagclock.logfile;

/**
 * A line, or a cell of it, that could not be used.
 *
 * @param line 1 for the first line of the file
 * @param column header of the column; empty if the whole line is meant
 * @param text what stood there
 */
public record LogFault(long line, String column, Kind kind, String text) {
    /** What is wrong. */
    public enum Kind {
        TIME_UNREADABLE,
        NUMBER_UNREADABLE,
        /** More cells than columns: perhaps a decimal comma in a file with commas. */
        TOO_MANY_CELLS,
        OUT_OF_RANGE,
        /** The clocks skipped this time in spring; it was moved on by what they skipped, and used. */
        TIME_SKIPPED,
        /** Nothing can be read from here on. */
        UNREADABLE
    }
}
