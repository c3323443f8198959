package bagclock.core.standard;

import java.util.Optional;

/** The kind of package body, as far as the tables and the limits of a bake tell kinds apart. */
public enum BodyKind {
    /** Balls underneath: BGA, CSP. */
    ARRAY("array"),
    /** Lands underneath: LGA. */
    LAND_ARRAY("land-array"),
    /** QFN, DFN. */
    LEADLESS("leadless"),
    LEADED("leaded"),
    LED("led"),
    MODULE("module"),
    PASSIVE("passive"),
    CONNECTOR("connector"),
    OTHER("other"),
    /** Not stated: may be any of the others. */
    UNKNOWN("unknown");

    private final String code;

    BodyKind(String code) {
        this.code = code;
    }

    /** The word used for it in requests and files. */
    public String code() {
        return code;
    }

    /** The kind with this code; empty for anything else, and for the code of {@link #UNKNOWN}. */
    public static Optional<BodyKind> parse(String code) {
        for (BodyKind kind : values()) {
            if (kind != UNKNOWN && kind.code.equals(code)) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }

    /** Balls or lands: the bodies that the large-array row of the bake table speaks of. */
    public boolean isArray() {
        return this == ARRAY || this == LAND_ARRAY;
    }

    /** Integrated circuits: bear 125 C unless their own limit says otherwise. */
    public boolean bears125() {
        return isArray() || this == LEADLESS || this == LEADED;
    }
}
