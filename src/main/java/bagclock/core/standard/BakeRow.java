package bagclock.core.standard;

import bagclock.core.quantity.Millimetres;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * A thickness row of the bake tables (J-STD-033D, tables 4-1 and 4-2); the upper limit belongs to the row. Not the
 * classes of the derating table, see {@link DeratingClass}.
 */
public enum BakeRow {
    UP_TO_1_4("<=1.4 mm", "1.4"),
    UP_TO_2_0(">1.4 to 2.0 mm", "2.0"),
    UP_TO_4_5(">2.0 to 4.5 mm", "4.5");

    private final String key;
    private final BigDecimal thickestMm;

    BakeRow(String key, String thickestMm) {
        this.key = key;
        this.thickestMm = new BigDecimal(thickestMm);
    }

    /** The row of a body; empty above 4.5 mm, where the tables have none. */
    public static Optional<BakeRow> of(Millimetres thickness) {
        for (BakeRow row : values()) {
            if (thickness.value().compareTo(row.thickestMm) <= 0) {
                return Optional.of(row);
            }
        }
        return Optional.empty();
    }

    /** The row as the tables name it. */
    String key() {
        return key;
    }
}
