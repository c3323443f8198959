package bagclock.core.diffusion;

import bagclock.core.standard.Cell;
import bagclock.core.standard.Level;
import bagclock.core.standard.Status;
import bagclock.core.standard.Table;
import java.util.ArrayList;
import java.util.List;

/** Both columns of one line of table 4-1, beside the model. */
record BakePair(String thickness, String level, double celsius, Column over, Column within) {
    /** One cell. */
    record Column(double tableHours, double modelHours, Status status) {}

    /** Every line, in the order of the table. */
    static List<BakePair> all() {
        List<Cell> cells = FloorLifeFit.STANDARD.cells().stream()
                .filter(cell -> cell.table() == Table.USER_BAKE)
                .toList();
        List<BakePair> pairs = new ArrayList<>();
        for (int i = 0; i < cells.size(); i += 2) {
            pairs.add(of(cells.get(i), cells.get(i + 1)));
        }
        return pairs;
    }

    private static BakePair of(Cell over, Cell within) {
        String[] row = over.citation().row().split(", level ", -1);
        double celsius = Double.parseDouble(over.citation().column().split(" C", -1)[0]);
        double life = FloorLifeFit.STANDARD
                        .floorLife(Level.parse(row[1]).orElseThrow())
                        .value()
                        .numeratorMs()
                / 3_600_000.0;
        double saturated = BakeModel.saturatedHours(row[0], row[1], celsius);
        double exposed = BakeModel.exposedHours(row[0], row[1], celsius, life + 72);
        return new BakePair(
                row[0],
                row[1],
                celsius,
                new Column(hours(over.value()), saturated, over.citation().status()),
                new Column(hours(within.value()), exposed, within.citation().status()));
    }

    /** A time as the table prints it: hours, days, or both. */
    private static double hours(String text) {
        double sum = 0;
        String[] words = text.split(" ", -1);
        for (int i = 0; i + 1 < words.length; i += 2) {
            sum += Double.parseDouble(words[i]) * (words[i + 1].startsWith("d") ? 24 : 1);
        }
        return sum;
    }
}
