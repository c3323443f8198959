package bagclock.readings;

import bagclock.core.exposure.Zone;
import bagclock.platform.Transaction;
import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import org.jdbi.v3.core.statement.PreparedBatch;

/** The bands of every zone's hours. */
final class HourStore {
    private static final long HOUR_MS = Duration.ofHours(1).toMillis();

    /** Puts these bands in place of all from one moment until before another. */
    void replace(Transaction tx, Zone zone, Instant from, Instant to, Collection<HourBand> bands) {
        tx.handle()
                .createUpdate(
                        "delete from reading_hour where zone = :zone and hour_number >= :from and hour_number < :to")
                .bind("zone", zone.name())
                .bind("from", hour(from))
                .bind("to", hour(to))
                .execute();
        PreparedBatch batch = tx.handle().prepareBatch("""
                insert into reading_hour (zone, hour_number, first_at, last_at, lowest_c, highest_c, driest_percent,
                    wettest_percent)
                values (:zone, :hour, :firstAt, :lastAt, :lowestC, :highestC, :driestPercent, :wettestPercent)
                """);
        for (HourBand band : bands) {
            batch.bind("zone", zone.name())
                    .bind("hour", band.hour())
                    .bind("firstAt", band.firstAt())
                    .bind("lastAt", band.lastAt())
                    .bind("lowestC", band.lowestC())
                    .bind("highestC", band.highestC())
                    .bind("driestPercent", band.driestPercent())
                    .bind("wettestPercent", band.wettestPercent())
                    .add();
        }
        if (batch.size() > 0) {
            batch.execute();
        }
    }

    List<HourBand> between(Transaction tx, Zone zone, Instant from, Instant to) {
        return tx.handle()
                .createQuery("select first_at, last_at, lowest_c, highest_c, driest_percent, wettest_percent"
                        + " from reading_hour where zone = :zone and hour_number >= :from and hour_number <= :to"
                        + " order by hour_number")
                .bind("zone", zone.name())
                .bind("from", hour(from))
                .bind("to", hour(to))
                .mapTo(HourBand.class)
                .list();
    }

    private static long hour(Instant moment) {
        return Math.floorDiv(moment.toEpochMilli(), HOUR_MS);
    }
}
