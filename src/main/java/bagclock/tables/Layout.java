package bagclock.tables;

import bagclock.core.standard.Cell;
import bagclock.core.standard.Table;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A table as a reader sees it in print: one grid for each body, levels down, conditions across. Where that would be
 * wider than a page the warmer of two conditions goes down beside the level, as table 7-1 is printed.
 */
record Layout(Table table, List<Grid> grids) {
    private static final int WIDEST = 10;
    private static final String AND = ", ";

    /** One grid. */
    record Grid(String name, List<String> columns, List<Row> rows) {}

    /** One row, a place for each column. */
    record Row(String name, List<Placed> cells) {}

    /**
     * A cell with its number in the table, from 0; the same in every edition's file.
     *
     * @param cell as it counts now
     */
    record Placed(int number, Cell cell) {}

    /** Every cell, as it counts now. */
    List<Cell> cells() {
        return grids.stream()
                .flatMap(grid -> grid.rows().stream())
                .flatMap(row -> row.cells().stream())
                .map(Placed::cell)
                .toList();
    }

    private record Spot(String grid, String row, String column) {}

    /** The cells of one table out of all of them. */
    static Layout of(Table table, List<Cell> cells) {
        List<Cell> own = cells.stream().filter(cell -> cell.table() == table).toList();
        Set<String> across = new LinkedHashSet<>();
        own.forEach(cell -> across.add(cell.citation().column()));
        boolean wide = across.size() > WIDEST;
        Map<String, Map<String, List<Placed>>> grids = new LinkedHashMap<>();
        Map<String, Set<String>> columns = new LinkedHashMap<>();
        for (int i = 0; i < own.size(); i++) {
            Spot spot = spot(own.get(i), wide);
            columns.computeIfAbsent(spot.grid(), grid -> new LinkedHashSet<>()).add(spot.column());
            grids.computeIfAbsent(spot.grid(), grid -> new LinkedHashMap<>())
                    .computeIfAbsent(spot.row(), row -> new ArrayList<>())
                    .add(new Placed(i, own.get(i)));
        }
        List<Grid> laidOut = new ArrayList<>();
        grids.forEach((name, rows) -> {
            List<Row> list = new ArrayList<>();
            rows.forEach((row, placed) -> list.add(new Row(row, List.copyOf(placed))));
            laidOut.add(new Grid(name, List.copyOf(columns.getOrDefault(name, Set.of())), List.copyOf(list)));
        });
        return new Layout(table, List.copyOf(laidOut));
    }

    private static Spot spot(Cell cell, boolean wide) {
        List<String> down = new ArrayList<>(List.of(cell.citation().row().split(AND)));
        List<String> across = new ArrayList<>(List.of(cell.citation().column().split(AND)));
        String grid = down.size() > 1 ? down.remove(0) : "";
        if (wide && across.size() > 1) {
            down.add(across.remove(0));
        }
        return new Spot(grid, String.join(AND, down), String.join(AND, across));
    }
}
