package bagclock.scan;

/** What may be done with a reading. */
public enum Standing {
    /** Taken as it is. */
    READ,
    /** Shown, and taken only when a person has compared it with the label. */
    ASK,
    /** Nothing of it is taken. */
    REFUSED
}
