package bagclock.parts;

import java.util.Optional;

/** A fact of a part type as text: a field of the form and a column of the file, by the same name. */
public enum Column {
    NUMBER("part_number"),
    MAKER("maker"),
    DESCRIPTION("description"),
    DOCUMENT("document"),
    REVISION("revision"),
    LEVEL("level"),
    PEAK("peak_c"),
    MORE_RATINGS("more_ratings"),
    BODY("body"),
    THICKNESS("thickness_mm"),
    LENGTH("length_mm"),
    WIDTH("width_mm"),
    STACKED_DIE("stacked_die"),
    BLOCKING_PLANES("blocking_planes"),
    LEAD_FREE("lead_free"),
    FLOOR_LIFE("floor_life_h"),
    DERATING("floor_life_table"),
    SHELF("shelf_months"),
    BAKES("bakes"),
    TABLE_TOO("table_too"),
    USE_WITHIN("use_within_h"),
    MOST_BAKES("max_bakes"),
    BAKE_LIMIT("max_bake_c"),
    MOST_PASSES("max_reflow_passes"),
    CARRIER("carrier_max_c"),
    BAKED_BEFORE("baked_over_90_h"),
    BAKES_BEFORE("bakes_before"),
    PASSES_BEFORE("passes_before");

    private final String code;

    Column(String code) {
        this.code = code;
    }

    /** Its name in form and file. */
    public String code() {
        return code;
    }

    static Optional<Column> parse(String code) {
        for (Column column : values()) {
            if (column.code.equals(code)) {
                return Optional.of(column);
            }
        }
        return Optional.empty();
    }
}
