package bagclock.core.standard;

import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import java.util.OptionalInt;

/**
 * The cells of table 7-1 as a grid of air, so that time can be counted by cell: within one cell no limit of the rules
 * lies, and the cell's warmest and wettest air stands for all of it.
 */
public final class DeratingGrid {
    private static final double[] TEMPERATURES =
            Table.DERATED_FLOOR_LIFE.axis(2).numbers();
    private static final double[] HUMIDITIES = Table.DERATED_FLOOR_LIFE.axis(3).numbers();

    /** How many cells there are. */
    public static final int CELLS = TEMPERATURES.length * HUMIDITIES.length;

    private DeratingGrid() {}

    /** The cell that counts in this air, 0 to {@link #CELLS} - 1; empty above the last column or row. */
    public static OptionalInt cellOf(Celsius temperature, RelativeHumidity humidity) {
        int column = DeratingTable.index(TEMPERATURES, temperature.degrees());
        int row = DeratingTable.index(HUMIDITIES, humidity.percent());
        boolean outside = column == TEMPERATURES.length || row == HUMIDITIES.length;
        return outside ? OptionalInt.empty() : OptionalInt.of(column * HUMIDITIES.length + row);
    }

    /** The warmest air of a cell. */
    public static Celsius warmest(int cell) {
        return new Celsius(TEMPERATURES[cell / HUMIDITIES.length]);
    }

    /** The wettest air of a cell. */
    public static RelativeHumidity wettest(int cell) {
        return new RelativeHumidity(HUMIDITIES[cell % HUMIDITIES.length]);
    }
}
