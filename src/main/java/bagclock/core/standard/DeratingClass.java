package bagclock.core.standard;

import bagclock.core.quantity.Millimetres;

/**
 * A thickness class of the derating table (J-STD-033D, table 7-1). Not the classes of the bake table, see
 * {@link BakeRow}.
 */
public enum DeratingClass {
    /** 3.1 mm and above, and every ball-grid array of 1.0 mm and above. */
    THICK(">=3.1 mm"),
    /** 2.1 mm to below 3.1 mm. */
    MEDIUM("2.1 to <3.1 mm"),
    /** Below 2.1 mm, and every ball-grid array below 1.0 mm. */
    THIN("<2.1 mm");

    private static final Millimetres THICK_FROM = Millimetres.of("3.1");
    private static final Millimetres MEDIUM_FROM = Millimetres.of("2.1");

    private final String key;

    DeratingClass(String key) {
        this.key = key;
    }

    /** The class of a body by its thickness alone. */
    public static DeratingClass of(Millimetres thickness) {
        if (thickness.compareTo(THICK_FROM) >= 0) {
            return THICK;
        }
        return thickness.compareTo(MEDIUM_FROM) >= 0 ? MEDIUM : THIN;
    }

    /** The class as the table names it. */
    String key() {
        return key;
    }
}
