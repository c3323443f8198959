package bagclock.desk;

/** What an answer about a board could not rest on, so that the stricter was taken. */
public enum BoardNotice {
    /** No heat profile was chosen: every body whose peak is not measured counts as above 200 C. */
    PROFILE_MISSING,
    /** The heat profile is older than the site trusts one: it counts as none. */
    PROFILE_OLD,
    /** The board or its type is not entered: an unknown part counts as sitting on it. */
    TYPE_UNKNOWN,
    /** Some locations have no item: their parts' history is not known. */
    PARTS_WITHOUT_HISTORY
}
