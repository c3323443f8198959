package bagclock.ledger;

/** Names of what a board's entries say. */
public final class BoardNotes {
    /** Number of the job: the entry that opened it. */
    public static final String JOB = "job";

    /** Where on the board. */
    public static final String LOCATION = "location";

    /** Why the job is done, a step was done so, or a release was given. */
    public static final String WHY = "why";

    /** What becomes of the old part. */
    public static final String FATE = "fate";

    /** The step of a job. */
    public static final String STEP = "step";

    /** Tag of the item that was taken off or put on. */
    public static final String ITEM = "item";

    /** Code of the oven; of one that this shop does not know: whose it was, in free words. */
    public static final String OVEN = "oven";

    /** Set-point in degrees Celsius. */
    public static final String SET_POINT = "set-point";

    /** What the oven was shown to hold, in %RH. */
    public static final String HUMIDITY = "humidity";

    /** Time at temperature, ISO 8601. */
    public static final String AT_TEMPERATURE = "at-temperature";

    /** A line for each table cell by which a bake counts for parts without an item. */
    public static final String BAKE_CELLS = "bake-cells";

    /** What the heat was for. */
    public static final String PURPOSE = "purpose";

    /** How long the heat was to last, ISO 8601. */
    public static final String LENGTH = "length";

    /** Id of the heat profile. */
    public static final String PROFILE = "profile";

    /** A line for each body in the heat: location, tab, peak or nothing. */
    public static final String PEAKS = "peaks";

    /** Peak of the part that was worked on. */
    public static final String PEAK = "peak";

    /** Number of the entry that released the heat. */
    public static final String RELEASE = "release";

    /** A line for each location that decided: location, tab, verdict. */
    public static final String PARTS = "parts";

    /** What the answer could not rest on. */
    public static final String NOTICES = "notices";

    /** A line for each zone: its code, how many readings, the last of them. */
    public static final String READINGS = "readings";

    /** Number of the entry that was taken back. */
    public static final String CORRECTS = "corrects";

    private BoardNotes() {}
}
