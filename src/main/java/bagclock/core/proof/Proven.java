package bagclock.core.proof;

/** What a chart says of a bake; the first that applies. */
public enum Proven {
    /** A probe was above the band: hold until an engineer says. */
    TOO_HOT,
    /** The coldest was long enough in band, and dry enough. */
    PROVEN,
    /** Long enough in band, but not shown to be dry enough all that time. */
    HUMIDITY_NOT_SHOWN,
    /** Not long enough in band. */
    SHORT
}
