package bagclock.tables;

import bagclock.core.standard.Cell;
import bagclock.core.standard.Table;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Names bake times that contradict a neighbour: a thicker body, a more sensitive level, a cooler oven and a longer time
 * beyond the life ask for at least as long a bake. A doubt, no refusal: print may say so.
 */
final class BakeDoubts {
    private static final Set<Table> BAKES = Set.of(Table.USER_BAKE, Table.SUPPLIER_BAKE);

    private BakeDoubts() {}

    /** In what the neighbour is easier to dry; in the order in which a cell is named. */
    enum By {
        THINNER(0),
        LESS_SENSITIVE(1),
        HOTTER(2),
        /** The table names the longer time first. */
        SOONER(3);

        /** Where a cell names it, see {@link #places}. */
        private final int place;

        By(int place) {
            this.place = place;
        }
    }

    /** A cell that is shorter than its easier neighbour. */
    record Doubt(Cell shorter, Cell easier, By by) {}

    /** What speaks against the value of a cell, in either direction. */
    static List<Doubt> of(Cell cell, List<Cell> all) {
        if (!BAKES.contains(cell.table())) {
            return List.of();
        }
        return Stream.of(By.values())
                .filter(by -> by.place < places(cell).size())
                .flatMap(by -> Stream.concat(
                        beside(cell, all, by, -1).map(easier -> new Doubt(cell, easier, by)),
                        beside(cell, all, by, 1).map(harder -> new Doubt(harder, cell, by))))
                .filter(doubt -> time(doubt.shorter()).compareTo(time(doubt.easier())) < 0)
                .toList();
    }

    /** The next cell that differs in this only: the easier one for -1, the harder one for 1; none at the table's edge. */
    private static Stream<Cell> beside(Cell cell, List<Cell> all, By by, int side) {
        List<String> own = places(cell);
        List<String> order = order(cell.table(), all, by);
        int at = order.indexOf(own.get(by.place)) + side;
        if (at < 0 || at >= order.size()) {
            return Stream.empty();
        }
        List<String> wanted = new ArrayList<>(own);
        wanted.set(by.place, order.get(at));
        return all.stream()
                .filter(one -> one.table() == cell.table() && places(one).equals(wanted))
                .limit(1);
    }

    /** What stands at this place in the table, the easiest to dry first. */
    private static List<String> order(Table table, List<Cell> all, By by) {
        Set<String> printed = new LinkedHashSet<>();
        all.stream()
                .filter(one -> one.table() == table)
                .forEach(one -> printed.add(places(one).get(by.place)));
        List<String> order = new ArrayList<>(printed);
        if (by == By.SOONER) {
            Collections.reverse(order);
        }
        return order;
    }

    /** Body, level, temperature; in the user's table how long beyond the life. */
    private static List<String> places(Cell cell) {
        return List.of((cell.key().row() + ", " + cell.key().column()).split(", ", -1));
    }

    private static Duration time(Cell cell) {
        String[] parts = cell.value().split(" ", 2);
        long number = Long.parseLong(parts[0]);
        return parts[1].equals("d") ? Duration.ofDays(number) : Duration.ofHours(number);
    }
}
