package bagclock.ledger;

/**
 * Where a chain is broken.
 *
 * @param seq the first entry that is not as it was written
 */
public record ChainFault(String tag, int seq, Kind kind) {
    /** What is wrong. */
    public enum Kind {
        /** A seq is missing before this entry. */
        ENTRY_MISSING,
        /** It does not follow the entry before it. */
        NOT_LINKED,
        /** Its text was changed. */
        PAYLOAD_CHANGED,
        /** A column differs from the text. */
        COLUMN_CHANGED
    }
}
