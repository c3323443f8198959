package bagclock.tables;

import bagclock.core.standard.CellKey;
import bagclock.platform.Database;
import bagclock.register.ComparedCell;
import bagclock.register.Register;
import bagclock.register.Version;
import bagclock.register.Versioned;
import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What the pages of tables read. */
final class TablesStore {
    private final Database database;
    private final Register register = new Register();

    TablesStore(Database database) {
        this.database = database;
    }

    /** Number of the newest comparison; 0 as long as there is none. */
    int comparison(Instant moment) {
        return database.read(tx -> register.comparison(tx, moment))
                .map(Version::number)
                .orElse(0);
    }

    /** The comparisons that count, by cell; those taken back are left out. */
    Map<CellKey, ComparedCell> compared(Instant moment) {
        Map<CellKey, ComparedCell> compared = new HashMap<>();
        database.read(tx -> register.comparedCells(tx, moment)).stream()
                .map(Versioned::fact)
                .filter(cell -> cell.value().isPresent())
                .forEach(cell -> compared.put(cell.key(), cell));
        return compared;
    }

    /** The comparisons that count, in the order of tables, rows and columns. */
    List<ComparedCell> inOrder(List<CellKey> order, Instant moment) {
        Map<CellKey, Integer> places = new HashMap<>();
        order.forEach(key -> places.put(key, places.size()));
        return compared(moment).values().stream()
                .sorted(Comparator.comparing(cell -> places.getOrDefault(cell.key(), 0)))
                .toList();
    }

    /** Newest first. */
    List<Versioned<ComparedCell>> history(CellKey key) {
        return database.read(tx -> register.comparisonsOf(tx, key));
    }
}
