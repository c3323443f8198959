package bagclock.core.standard;

import java.util.Locale;

/** How far a value may be trusted: where it was read. */
public enum Status {
    /** Read in a public source, which is named. */
    SEEN,
    /** Written from recollection: to be compared with the reader's own copy of the standard. */
    MEMORY,
    /** Our own reasoning from values of the standard. */
    INFERENCE,
    /** Confirmed or corrected by an engineer of the site, who is named. */
    SITE;

    /** The word used for it in files and answers. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The mark of a line in a shipped table; refuses with {@link IllegalArgumentException} all but seen and memory. */
    static Status ofShipped(String code) {
        return switch (code) {
            case "seen" -> SEEN;
            case "memory" -> MEMORY;
            default -> throw new IllegalArgumentException("status must be seen or memory, was '" + code + "'");
        };
    }
}
