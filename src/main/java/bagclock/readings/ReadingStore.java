package bagclock.readings;

import bagclock.core.exposure.Air;
import bagclock.core.exposure.Zone;
import bagclock.core.exposure.ZoneLog.Reading;
import bagclock.platform.Transaction;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jspecify.annotations.Nullable;

/** The samples of every zone. */
final class ReadingStore {
    private static final String SELECT = "select read_at, temperature_c, rh_percent from reading ";

    /** One sample. */
    record Row(Instant readAt, double temperatureC, double rhPercent) {
        Reading reading() {
            return new Reading(readAt, Air.of(temperatureC, rhPercent));
        }
    }

    /** The highest values of a period, each by itself. */
    record Highest(@Nullable Double temperatureC, @Nullable Double rhPercent) {}

    void add(Transaction tx, Zone zone, List<Reading> readings, Source source) {
        PreparedBatch batch = tx.handle().prepareBatch("""
                insert into reading (zone, read_at, temperature_c, rh_percent, recorded_at, who)
                values (:zone, :readAt, :temperature, :humidity, :recordedAt, :who)
                """);
        for (Reading reading : readings) {
            batch.bind("zone", zone.name())
                    .bind("readAt", reading.at())
                    .bind("temperature", reading.air().temperature().degrees())
                    .bind("humidity", reading.air().humidity().percent())
                    .bind("recordedAt", source.recordedAt())
                    .bind("who", source.who())
                    .add();
        }
        if (batch.size() > 0) {
            batch.execute();
        }
    }

    /** Readings from a moment up to and including another, ascending. */
    List<Reading> between(Transaction tx, Zone zone, Instant fromInclusive, Instant toInclusive) {
        List<Reading> readings = new ArrayList<>();
        tx.handle()
                .createQuery(SELECT + "where zone = :zone and read_at >= :from and read_at <= :to order by read_at")
                .bind("zone", zone.name())
                .bind("from", fromInclusive)
                .bind("to", toInclusive)
                .setFetchSize(10_000)
                .mapTo(Row.class)
                .forEach(row -> readings.add(row.reading()));
        return readings;
    }

    /** The newest reading at or before a moment. */
    Optional<Reading> latest(Transaction tx, Zone zone, Instant moment) {
        return tx.handle()
                .createQuery(SELECT + "where zone = :zone and read_at <= :moment order by read_at desc limit 1")
                .bind("zone", zone.name())
                .bind("moment", moment)
                .mapTo(Row.class)
                .findFirst()
                .map(Row::reading);
    }

    /** The earliest reading after a moment. */
    Optional<Reading> next(Transaction tx, Zone zone, Instant moment) {
        return tx.handle()
                .createQuery(SELECT + "where zone = :zone and read_at > :moment order by read_at limit 1")
                .bind("zone", zone.name())
                .bind("moment", moment)
                .mapTo(Row.class)
                .findFirst()
                .map(Row::reading);
    }

    Optional<Reading> newest(Transaction tx, Zone zone) {
        return tx.handle()
                .createQuery(SELECT + "where zone = :zone order by read_at desc limit 1")
                .bind("zone", zone.name())
                .mapTo(Row.class)
                .findFirst()
                .map(Row::reading);
    }

    Optional<Air> harshest(Transaction tx, Zone zone, Instant fromInclusive, Instant toInclusive) {
        Highest highest = tx.handle()
                .createQuery("select max(temperature_c) as temperature_c, max(rh_percent) as rh_percent from reading"
                        + " where zone = :zone and read_at >= :from and read_at <= :to")
                .bind("zone", zone.name())
                .bind("from", fromInclusive)
                .bind("to", toInclusive)
                .mapTo(Highest.class)
                .one();
        Double temperature = highest.temperatureC();
        Double humidity = highest.rhPercent();
        return temperature == null || humidity == null ? Optional.empty() : Optional.of(Air.of(temperature, humidity));
    }
}
