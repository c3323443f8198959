package bagclock.logfile;

/** Takes the samples of a file, one after the other as they stand there. */
@FunctionalInterface
public interface SampleTaker {
    /**
     * Takes one line.
     *
     * @param atMs since 1970, UTC
     * @param values by channel of the layout: degrees Celsius or %RH, not a number where nothing was read; valid during
     *     the call only
     */
    void take(long line, long atMs, double[] values);

    /** In a file with one line for each value: from here on the channel of this number is said to have none. */
    default void lost(long atMs, int channel) {}
}
