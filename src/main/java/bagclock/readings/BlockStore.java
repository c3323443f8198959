package bagclock.readings;

import bagclock.core.exposure.Zone;
import bagclock.platform.Transaction;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jdbi.v3.core.statement.PreparedBatch;

/** The day blocks of every zone. */
final class BlockStore {
    /** Time at one counter. */
    record CellRow(int cell, long ms) {}

    /** Time at one counter of one day. */
    record DayRow(int dayNumber, int cell, long ms) {}

    void replace(Transaction tx, Zone zone, int firstDay, int lastDay, Map<Integer, AirTime> blocks) {
        tx.handle()
                .createUpdate(
                        "delete from day_cell where zone = :zone and day_number >= :first and day_number <= :last")
                .bind("zone", zone.name())
                .bind("first", firstDay)
                .bind("last", lastDay)
                .execute();
        PreparedBatch batch = tx.handle()
                .prepareBatch("insert into day_cell (zone, day_number, cell, ms) values (:zone, :day, :cell, :ms)");
        blocks.forEach((day, time) -> {
            for (int cell = 0; cell < AirTime.COUNTERS; cell++) {
                if (time.ms(cell) > 0) {
                    batch.bind("zone", zone.name())
                            .bind("day", day)
                            .bind("cell", cell)
                            .bind("ms", time.ms(cell))
                            .add();
                }
            }
        });
        if (batch.size() > 0) {
            batch.execute();
        }
    }

    /** All days before one. */
    AirTime before(Transaction tx, Zone zone, int day) {
        AirTime sum = AirTime.NONE;
        var rows = tx.handle()
                .createQuery("select cell, cast(sum(ms) as bigint) as ms from day_cell"
                        + " where zone = :zone and day_number < :day group by cell")
                .bind("zone", zone.name())
                .bind("day", day)
                .mapTo(CellRow.class)
                .list();
        for (CellRow row : rows) {
            sum = sum.plus(row.cell(), row.ms());
        }
        return sum;
    }

    SortedMap<Integer, AirTime> days(Transaction tx, Zone zone, int firstDay, int lastDay) {
        SortedMap<Integer, AirTime> days = new TreeMap<>();
        tx.handle()
                .createQuery("select day_number, cell, ms from day_cell where zone = :zone"
                        + " and day_number >= :first and day_number <= :last")
                .bind("zone", zone.name())
                .bind("first", firstDay)
                .bind("last", lastDay)
                .mapTo(DayRow.class)
                .forEach(row -> days.merge(row.dayNumber(), AirTime.NONE.plus(row.cell(), row.ms()), AirTime::plus));
        return days;
    }
}
