package bagclock.ledger;

/** Names of what stands beside an event. */
public final class Notes {
    /** Code of the place an item was brought to. */
    public static final String PLACE = "place";

    /** How it is known when a part left its dry pack. */
    public static final String HOW_KNOWN = "how-known";

    /** SHA-256 of a photograph of card and label. */
    public static final String PHOTO = "photo-sha256";

    /** That a bag was opened in air above the site's own limit for it: what was read, and the limit. */
    public static final String ABOVE_OPENING_LIMIT = "above-opening-limit";

    /** Why a bag was opened all the same, in a person's words. */
    public static final String OPENED_ANYWAY = "opened-anyway";

    /** Serial number of a board. */
    public static final String BOARD = "board";

    /** Where on the board. */
    public static final String LOCATION = "location";

    /** Name of the carrier. */
    public static final String CARRIER = "carrier";

    /** The answer that was acted on, as JSON. */
    public static final String ANSWER = "answer";

    /** SHA-256 of everything that the answer was worked out from. */
    public static final String INPUTS = "inputs-sha256";

    /** Versions of the facts that the answer was worked out from. */
    public static final String VERSIONS = "versions";

    /** The table cell that says how long a bake must last, as kept answers name cells. */
    public static final String BAKE_CELL = "bake-cell";

    /** How the time at temperature is known: chart, told, or door to door less the declared heat-up. */
    public static final String TIME_FROM = "time-from";

    /** SHA-256 of the oven's chart that the time at temperature was read from. */
    public static final String CHART = "chart-sha256";

    /** The day by which the oven of a bake was to be calibrated, if that was over when the bake began. */
    public static final String CALIBRATION_WAS_DUE = "calibration-was-due";

    /** What a heat was for; empty if nobody said. */
    public static final String PURPOSE = "purpose";

    /** How long a heat was planned to last, ISO 8601. */
    public static final String LENGTH = "length";

    /** Planned peak of the body in degrees Celsius; empty: its rated peak. */
    public static final String PLANNED_PEAK = "planned-peak";

    /** Stated that only this part is heated, "true" or "false"; empty if nobody said. */
    public static final String LOCAL = "local";

    /** Why an engineer released a heat. */
    public static final String WHY = "why";

    /** Number of the entry that released the heat. */
    public static final String RELEASE = "release";

    /** A line for each zone that an answer rests on: its code, how many readings, the last of them. */
    public static final String READINGS = "readings";

    /** The label's number of the part. */
    public static final String LABEL_PART = "label-part";

    /** Lot on the label. */
    public static final String LOT = "lot";

    /** Date code on the label. */
    public static final String DATE_CODE = "date-code";

    /** Level on the label. */
    public static final String LABEL_LEVEL = "label-level";

    /** Peak body temperature (C) on the label. */
    public static final String LABEL_PEAK = "label-peak";

    /** Floor life as the label prints it. */
    public static final String LABEL_LIFE = "label-life";

    /** Number of the package on the label. */
    public static final String LABEL_PACKAGE = "label-package";

    /** The scan of the label, without orders and names. */
    public static final String SCAN = "scan";

    /** The same as it came from the scanner, before the workstation put its characters right. */
    public static final String SCAN_AS_IT_CAME = "scan-as-it-came";

    private Notes() {}
}
