package bagclock.core.standard;

import java.util.List;

/** A table of the standards, one file in each edition; its members name the file and the keys that it must hold. */
public enum Table {
    /** Floor life by level. */
    FLOOR_LIFE("floor-life.csv", "life_h", Axis.row("level", "level %s", "1", "2", "2a", "3", "4", "5", "5a", "6")),
    /** Derated floor life by thickness class, level, temperature and humidity. */
    DERATED_FLOOR_LIFE(
            "derated-floor-life.csv",
            "life_days",
            Axis.row("thickness", "%s", ">=3.1 mm", "2.1 to <3.1 mm", "<2.1 mm"),
            Axis.row("level", "level %s", "2a", "3", "4", "5", "5a"),
            Axis.column("temp_c", "%s C", "20", "25", "30", "35"),
            Axis.column("rh_pct", "%s %RH", "5", "10", "20", "30", "40", "50", "60", "70", "80", "90")),
    /** The user's bake by thickness, level, temperature and how long the floor life was exceeded. */
    USER_BAKE(
            "user-bake.csv",
            "time",
            Axis.bakeThickness(),
            Axis.levels(),
            Axis.column("temp_c", "%s C", "125", "90", "40"),
            Axis.column("beyond", "%s", ">72 h", "<=72 h")),
    /** The user's bake of large arrays and stacked dies at 125 C. */
    LARGE_ARRAY_BAKE(
            "large-array-bake.csv",
            "time",
            Axis.row("body", "%s", "array with an edge above 17 mm; or stacked die"),
            Axis.column("temp_c", "%s C", "125")),
    /** What the oven must keep. */
    BAKE_LIMITS(
            "bake-limits.csv",
            "value",
            Axis.row("temp_c", "%s C", "125", "90", "40"),
            Axis.column("limit", "%s", "above set-point C", "oven %RH")),
    /** The bake before dry-packing at 125 C. */
    SUPPLIER_BAKE(
            "supplier-bake.csv", "time", Axis.bakeThickness(), Axis.levels(), Axis.column("temp_c", "%s C", "125")),
    /** Dry storage that pauses or resets the clock. */
    DRY_REST(
            "dry-rest.csv",
            "value",
            Axis.row("levels", "levels %s", "2 2a 3", "4 5 5a"),
            Axis.column("figure", "%s", "exposure at most h", "rest factor", "rest at most %RH", "pause at most %RH")),
    /** Classification temperature for lead-free soldering. */
    CLASSIFICATION_LEAD_FREE(
            "classification-lead-free.csv",
            "tc_c",
            Axis.row("thickness", "%s", "<1.6 mm", "1.6 to <2.5 mm", ">=2.5 mm"),
            Axis.column("volume", "%s", "<350 mm3", "350 to 2000 mm3", ">2000 mm3")),
    /** Classification temperature for tin-lead soldering. */
    CLASSIFICATION_TIN_LEAD(
            "classification-tin-lead.csv",
            "tc_c",
            Axis.row("thickness", "%s", "<2.5 mm", ">=2.5 mm"),
            Axis.column("volume", "%s", "<350 mm3", ">=350 mm3"));

    private final String fileName;
    private final String valueName;

    @SuppressWarnings("ImmutableEnumChecker") // made by List.of, which the checker can't see
    private final List<Axis> axes;

    Table(String fileName, String valueName, Axis... axes) {
        this.fileName = fileName;
        this.valueName = valueName;
        this.axes = List.of(axes);
    }

    /** Name of its file, the same in each edition. */
    public String fileName() {
        return fileName;
    }

    /** Name of its value column, which holds the unit. */
    public String valueName() {
        return valueName;
    }

    List<Axis> axes() {
        return axes;
    }

    Axis axis(int index) {
        return axes.get(index);
    }

    /** Position of the line with these keys; refuses with {@link IllegalArgumentException} one that it has not. */
    int line(String... keys) {
        int line = 0;
        for (int i = 0; i < keys.length; i++) {
            Axis axis = axes.get(i);
            int position = axis.keys().indexOf(keys[i]);
            if (position < 0) {
                throw new IllegalArgumentException(fileName + " has no " + axis.name() + " '" + keys[i] + "'");
            }
            line = line * axis.keys().size() + position;
        }
        return line;
    }
}
