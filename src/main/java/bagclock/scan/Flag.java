package bagclock.scan;

/** What is odd about a scan, and whether a person must be asked for it. */
public enum Flag {
    /** The header lacks a character, or has one too many. */
    HEADER_DAMAGED(Standing.READ),
    /** Something stands behind the end, such as a scanner's suffix. */
    TAIL(Standing.READ),
    /** Keys of another keyboard layout were put right. */
    LAYOUT_MENDED(Standing.READ),
    /** The workstation put right what its scanner and keyboard layout disagree about. */
    CHARACTERS_MAPPED(Standing.READ),
    /** Capitals and small letters were exchanged back. */
    CASE_MENDED(Standing.READ),
    /** Visible characters stood for the separators. */
    STAND_IN(Standing.READ),
    /** The same label twice in one scan. */
    DOUBLED(Standing.READ),
    /** The date code names no week; it is kept as printed. */
    NO_SUCH_WEEK(Standing.READ),
    /** No end: the last field may be cut. */
    NO_END(Standing.ASK),
    /** Fields without a header: what came first may be cut. */
    NO_HEADER(Standing.ASK),
    /** Recognised by its shape only. */
    BY_SHAPE(Standing.ASK),
    /** Two different values for one thing. */
    SEVERAL_VALUES(Standing.ASK),
    /** A field without a data identifier. */
    FIELD_UNREADABLE(Standing.ASK),
    /** The quantity is no whole number of pieces. */
    QUANTITY_UNREADABLE(Standing.ASK),
    /** A level that is none, or one that does not fit the floor life beside it. */
    LEVEL_UNREADABLE(Standing.ASK),
    /** A date that is none. */
    DATE_UNREADABLE(Standing.ASK),
    /** The separators may be characters of the fields. */
    SEPARATORS_DOUBTFUL(Standing.ASK),
    /** A character that the workstation can't tell. */
    CHARACTERS_DOUBTFUL(Standing.ASK),
    /** The separators are lost: the fields run together. */
    NO_SEPARATORS(Standing.ASK),
    /** GS1 element strings: recognised, not read further. */
    GS1(Standing.ASK),
    /** No part number. */
    PART_MISSING(Standing.ASK),
    /** A part number that the house does not know. */
    PART_UNKNOWN(Standing.ASK),
    /** A lot that the house has not seen of this part. */
    LOT_NEW(Standing.ASK),
    /** A level other than the one that the house has for this part. */
    LEVEL_DIFFERS(Standing.ASK),
    /** A peak body temperature that the part type does not name. */
    PEAK_DIFFERS(Standing.ASK),
    /** A package that came in before: perhaps the same bag again. */
    PACKAGE_SEEN(Standing.ASK),
    /** Two different labels in one scan. */
    TWO_LABELS(Standing.REFUSED),
    /** No known form. */
    NOT_A_LABEL(Standing.REFUSED);

    private final Standing standing;

    Flag(Standing standing) {
        this.standing = standing;
    }

    /** What it allows at most. */
    public Standing standing() {
        return standing;
    }
}
