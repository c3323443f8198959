package bagclock.core.standard;

/** How long the floor life was exceeded: the two columns of the bake table (J-STD-033D, table 4-1). */
public enum BakeColumn {
    /** More than 72 h, or not known. */
    OVER_72H(">72 h"),
    /** 72 h or less; exactly 72 h belongs here. */
    WITHIN_72H("<=72 h");

    private final String key;

    BakeColumn(String key) {
        this.key = key;
    }

    /** The column as the table names it. */
    String key() {
        return key;
    }
}
