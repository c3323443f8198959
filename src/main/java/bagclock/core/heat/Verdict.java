package bagclock.core.heat;

/** The answer in one word, from mildest to strictest. */
public enum Verdict {
    /** May be heated as planned. */
    CLEAR("clear"),
    /** Not yet; time alone mends it. */
    WAIT("wait"),
    /** Not before an allowed bake. */
    BAKE("bake"),
    /** Not before a person has decided, or no bake is allowed. */
    HOLD("hold");

    private final String code;

    Verdict(String code) {
        this.code = code;
    }

    /** The word used in answers. */
    public String code() {
        return code;
    }

    /** The stricter of both. */
    public Verdict stricterOf(Verdict other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
