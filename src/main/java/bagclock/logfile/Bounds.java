package bagclock.logfile;

/**
 * What a sensor can have meant. A temperature outside these bounds is a fault of the sensor; so is a humidity below 0 or
 * above {@value #WETTEST_PERCENT} %RH, while one above 100 counts as 100.
 *
 * @param coldestC inclusive
 * @param warmestC inclusive
 */
public record Bounds(double coldestC, double warmestC) {
    /** Of a room or a cabinet. */
    public static final Bounds ROOM = new Bounds(-40, 85);

    /** Of an oven and its load. */
    public static final Bounds OVEN = new Bounds(-40, 400);

    static final double WETTEST_PERCENT = 105;

    boolean holds(Channel.Kind kind, double value) {
        return kind.isInDegrees() ? value >= coldestC && value <= warmestC : value >= 0 && value <= WETTEST_PERCENT;
    }
}
