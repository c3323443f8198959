package bagclock.core.standard;

import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What the user bake table (J-STD-033D, table 4-1) says for one body. */
public final class BakeTimes {
    /** The hottest column of the table. */
    public static final Celsius HOTTEST = new Celsius(125);

    private static final List<Integer> COLUMNS = List.of(125, 90, 40);

    private final Standard standard;
    private final Body body;

    /** The times of one edition for one body. */
    public BakeTimes(Standard standard, Body body) {
        this.standard = standard;
        this.body = body;
    }

    /**
     * One bake of the table.
     *
     * @param temperature column (C)
     * @param time time at temperature
     * @param maxHumidity humidity to be shown in the oven, empty where none is asked for
     * @param measureEdges the time stands for the worst case because the edges of the array are not known
     */
    public record Row(
            Celsius temperature, Cited<Duration> time, Optional<RelativeHumidity> maxHumidity, boolean measureEdges) {}

    /** The bakes from hot to cool; empty for levels without rows, unknown thickness, and bodies above 4.5 mm. */
    public List<Row> rows(Level level, BakeColumn column) {
        Optional<BakeRow> thickness = body.thickness().flatMap(BakeRow::of);
        if (thickness.isEmpty() || !level.hasFloorLife()) {
            return List.of();
        }
        return COLUMNS.stream()
                .flatMap(celsius -> Stream.of(row(thickness.get(), level, celsius, column)))
                .toList();
    }

    private Row row(BakeRow thickness, Level level, int celsius, BakeColumn column) {
        boolean hottest = celsius == HOTTEST.degrees();
        boolean edges = hottest && body.mayBeArray() && body.edgesUnknown();
        Cited<Duration> time = hottest && takesLargeRow()
                ? standard.largeArrayBake()
                : standard.bake(thickness, level, celsius, column);
        return new Row(new Celsius(celsius), time, standard.bakeHumidity(celsius), edges);
    }

    /**
     * An array with an edge above 17 mm takes the long row unless it is stated that no planes inside block moisture;
     * stacked dies take it always; unknown edges count as large.
     */
    private boolean takesLargeRow() {
        if (!body.mayBeArray()) {
            return body.countsAsStacked();
        }
        boolean large = body.hasLargeEdge() && body.blockingPlanes().orElse(true);
        return large || body.edgesUnknown() || body.countsAsStacked();
    }
}
