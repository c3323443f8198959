package bagclock.stock;

import java.time.Instant;
import java.util.List;

/**
 * A stock-take that was kept, as it was at its moment; later entries of the ledger change nothing in it.
 *
 * @param id of the record; the same form sent again has the same
 * @param who identity of the person
 */
record StockTake(String id, String placeCode, String placeName, Instant takenAt, String who, List<Line> lines) {
    /** How a code stood to the ledger. */
    enum Standing {
        /** Expected here and scanned. */
        FOUND,
        /** Expected here and not scanned. */
        MISSING,
        /** Scanned, and expected elsewhere. */
        UNEXPECTED,
        /** No item has the code. */
        STRANGE
    }

    /**
     * One code.
     *
     * @param partType empty for no item
     * @param ledgerPlace code of the place that the ledger had; empty for none
     */
    record Line(String code, Standing standing, String partType, String ledgerPlace) {}

    /** Keeps its own copy. */
    StockTake {
        lines = List.copyOf(lines);
    }

    List<Line> of(Standing standing) {
        return lines.stream().filter(line -> line.standing() == standing).toList();
    }

    int count(Standing standing) {
        return of(standing).size();
    }
}
