package bagclock.parts;

import java.util.List;

/**
 * Something about a part type that may be right, but should be looked at.
 *
 * @param column beside which it is said
 * @param parts durations, temperatures and texts in the order that {@link Code} documents
 */
record Doubt(Column column, Code code, List<Object> parts) {
    Doubt {
        parts = List.copyOf(parts);
    }

    static Doubt of(Column column, Code code, Object... parts) {
        return new Doubt(column, code, List.of(parts));
    }

    /** What is doubtful; the words stand in the message bundle under {@code parts.doubt.<name>}. */
    enum Code {
        /** Parts: the maker's life, the level, the table's life. */
        LIFE_LONGER,
        /** Parts: the maker's life, the level, the table's life. */
        LIFE_SHORTER,
        /** Parts: level. Level 1 and level 6 have no floor life. */
        LIFE_NOT_USED,
        /** Both a life and a table: the smaller counts. */
        LIFE_AND_TABLE,
        /** Parts: the maker's life at 30 C / 60 %RH by his table, the level, the standard's. */
        TABLE_LIFE_LONGER,
        /** The maker's table has no cell that holds 30 C / 60 %RH. */
        TABLE_WITHOUT_30_60,
        /** Parts: temperature, humidity. A cell is longer than a cooler or drier one. */
        CELL_LONGER,
        /** Parts: lower peak, its level, higher peak, its level. */
        LEVEL_MILDER_WHEN_HOTTER,
        /** Parts: peak, the classification by J-STD-020. */
        PEAK_BELOW_CLASS,
        /** Parts: temperature, the maker's time, the table's time. */
        BAKE_SHORTER,
        /** Parts: temperature. */
        BAKE_WITHOUT_HUMIDITY,
        /** Parts: temperature, the time that it would take above 90 C in all. */
        BAKE_NEVER_ALLOWED,
        /** Parts: the carrier's limit, the temperature. */
        CARRIER_BELOW_BAKE,
        /** Parts: the part's limit, its peak. */
        LIMIT_ABOVE_PEAK,
        /** The table is allowed beside a bake that is not there. */
        TABLE_TOO_ALONE,
        /** A time after a maker's bake that is not there. */
        USE_WITHIN_ALONE,
        LEVEL_6_WITHOUT_BAKE,
        LEVEL_6_WITHOUT_TIME,
        /** Parts: thickness. No bake in the table and none of the maker's. */
        BODY_WITHOUT_ROW,
        /** Thicker than its shorter edge. */
        THICKER_THAN_WIDE,
        /** Parts: bakes before, most bakes. */
        NO_BAKE_LEFT,
        /** Parts: heats before, most heats. */
        NO_HEAT_LEFT,
        /** The maker's rules without the document that says so. */
        NO_DOCUMENT
    }
}
