package bagclock.tables;

import bagclock.core.standard.Cell;
import bagclock.core.standard.CellKey;
import bagclock.core.standard.SiteValue;
import bagclock.core.standard.SiteValues;
import bagclock.core.standard.Standard;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The shipped cells, and whether a table can hold a text. */
final class CellValues {
    private final Standard shipped;
    private final Map<CellKey, Cell> cells;

    CellValues(Standard shipped) {
        this.shipped = shipped;
        this.cells = shipped.cells().stream().collect(Collectors.toMap(Cell::key, cell -> cell));
    }

    Standard shipped() {
        return shipped;
    }

    boolean knows(CellKey key) {
        return cells.containsKey(key);
    }

    /** As shipped; empty for a cell that is not there. */
    String shipped(CellKey key) {
        Cell cell = cells.get(key);
        return cell == null ? "" : cell.value();
    }

    /** Whether the cell's table can hold the text; a shipped value always can. */
    boolean takes(CellKey key, String text) {
        if (text.equals(shipped(key))) {
            return true;
        }
        try {
            SiteValue value = new SiteValue(key, text, "?", LocalDate.EPOCH);
            return shipped.with(SiteValues.of(List.of(value))).edition() == shipped.edition();
        } catch (IllegalArgumentException refused) {
            return false;
        }
    }
}
