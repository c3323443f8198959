package bagclock.core.standard;

import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Table 7-1, laid out for fast look-up: no allocation, no text keys. Level 2 has no rows there; its year is scaled by
 * the 2a cell over the 2a cell at 30 C / 60 %RH and never exceeds the year (inference).
 */
final class DeratingTable {
    private static final Table TABLE = Table.DERATED_FLOOR_LIFE;
    private static final double[] TEMPERATURES = TABLE.axis(2).numbers();
    private static final double[] HUMIDITIES = TABLE.axis(3).numbers();
    private static final int CELLS = TEMPERATURES.length * HUMIDITIES.length;

    private final Map<DeratingClass, Map<Level, Block>> blocks = new EnumMap<>(DeratingClass.class);

    /** The cells of one class and level, humidity running fastest. */
    private record Block(List<Optional<Cited<Life>>> cells, Optional<Cited<Life>> shortest) {
        static Block of(List<Cited<Life>> cells) {
            return new Block(
                    cells.stream().map(Optional::of).toList(),
                    cells.stream().reduce((one, other) -> other.value().compareTo(one.value()) < 0 ? other : one));
        }
    }

    DeratingTable(List<Cited<Life>> table, Cited<Life> yearOfLevel2) {
        for (DeratingClass thickness : DeratingClass.values()) {
            Map<Level, Block> levels = new EnumMap<>(Level.class);
            for (String code : TABLE.axis(1).keys()) {
                levels.put(Level.parse(code).orElseThrow(), Block.of(cells(table, thickness, code)));
            }
            levels.put(Level.L2, Block.of(scaled(cells(table, thickness, Level.L2A.code()), yearOfLevel2)));
            blocks.put(thickness, levels);
        }
    }

    private static List<Cited<Life>> cells(List<Cited<Life>> table, DeratingClass thickness, String level) {
        int first = TABLE.line(thickness.key(), level) * CELLS;
        return table.subList(first, first + CELLS);
    }

    private static List<Cited<Life>> scaled(List<Cited<Life>> level2a, Cited<Life> year) {
        Life at3060 = level2a.get(index(TEMPERATURES, 30) * HUMIDITIES.length + index(HUMIDITIES, 60))
                .value();
        if (at3060.isUnlimited()) {
            throw new IllegalArgumentException("the cell of level 2a at 30 C, 60 %RH must not be unlimited");
        }
        return level2a.stream()
                .map(cell -> new Cited<>(
                        Life.shorterOf(year.value(), year.value().scaled(cell.value(), at3060)),
                        asLevel2(cell.citation())))
                .toList();
    }

    private static Citation asLevel2(Citation of2a) {
        return new Citation(
                of2a.document(),
                of2a.table(),
                of2a.row() + " scaled to level 2",
                of2a.column(),
                Status.INFERENCE,
                of2a.sources());
    }

    /** The cell of the next warmer column and the next wetter row; empty above the last ones. */
    Optional<Cited<Life>> cell(DeratingClass thickness, Level level, Celsius temperature, RelativeHumidity humidity) {
        Block block = block(thickness, level);
        int column = index(TEMPERATURES, temperature.degrees());
        int row = index(HUMIDITIES, humidity.percent());
        if (column == TEMPERATURES.length || row == HUMIDITIES.length) {
            return Optional.empty();
        }
        return block.cells().get(column * HUMIDITIES.length + row);
    }

    Optional<Cited<Life>> shortest(DeratingClass thickness, Level level) {
        return block(thickness, level).shortest();
    }

    private Block block(DeratingClass thickness, Level level) {
        Map<Level, Block> levels = blocks.get(thickness);
        Block block = levels == null ? null : levels.get(level);
        if (block == null) {
            throw new IllegalArgumentException("level " + level.code() + " has no derated floor life");
        }
        return block;
    }

    static int index(double[] ascending, double value) {
        int index = 0;
        while (index < ascending.length && value > ascending[index]) {
            index++;
        }
        return index;
    }
}
