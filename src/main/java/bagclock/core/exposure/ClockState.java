package bagclock.core.exposure;

/** What the clock of a part is doing. */
public enum ClockState {
    /** In a closed fresh bag, dry when it was closed. */
    SEALED("sealed"),
    /** Time is being used. */
    RUNNING("running"),
    /** In dry storage or a fresh bag, nothing is used. */
    PAUSED("paused"),
    /** An unbroken dry stay counts towards a reset that will come. */
    RESTING("resting"),
    BAKING("baking"),
    /** No clock: level 1, unknown level, level 6 before its bake. */
    NONE("none");

    private final String code;

    ClockState(String code) {
        this.code = code;
    }

    /** The word used in answers. */
    public String code() {
        return code;
    }
}
