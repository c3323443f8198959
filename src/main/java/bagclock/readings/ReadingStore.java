package bagclock.readings;

import bagclock.core.exposure.Air;
import bagclock.core.exposure.Zone;
import bagclock.core.exposure.ZoneLog.Reading;
import bagclock.platform.Transaction;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The samples of every zone. */
final class ReadingStore {
    private static final String SELECT = "select read_at, temperature_c, rh_percent from reading ";

    /** The zone stands here too, so that both databases walk along the key and stop at the first row. */
    private static final String NEWEST_FIRST = " order by zone desc, read_at desc limit 1";

    private static final String OLDEST_FIRST = " order by zone, read_at limit 1";

    /** One sample. */
    record Row(Instant readAt, double temperatureC, double rhPercent) {
        Reading reading() {
            return new Reading(readAt, Air.of(temperatureC, rhPercent));
        }
    }

    /** The highest values of a period, each by itself. */
    record Highest(@Nullable Double temperatureC, @Nullable Double rhPercent) {}

    /** By plain JDBC: named parameters cost as much as the insert itself. */
    void add(Transaction tx, Zone zone, List<Reading> readings, Source source) {
        OffsetDateTime recordedAt = utc(source.recordedAt());
        String file = source.file().orElse(null);
        try (PreparedStatement insert = tx.handle()
                .getConnection()
                .prepareStatement(
                        "insert into reading (zone, read_at, temperature_c, rh_percent, recorded_at, who, file_id)"
                                + " values (?, ?, ?, ?, ?, ?, ?)")) {
            for (Reading reading : readings) {
                insert.setString(1, zone.name());
                insert.setObject(2, utc(reading.at()));
                insert.setDouble(3, reading.air().temperature().degrees());
                insert.setDouble(4, reading.air().humidity().percent());
                insert.setObject(5, recordedAt);
                insert.setString(6, source.who());
                insert.setString(7, file);
                insert.addBatch();
            }
            insert.executeBatch();
        } catch (SQLException failure) {
            throw new IllegalStateException(failure);
        }
    }

    private static OffsetDateTime utc(Instant moment) {
        return moment.truncatedTo(ChronoUnit.MILLIS).atOffset(ZoneOffset.UTC);
    }

    /** What is there at some times; few rows are looked at where most are new and later than all others. */
    Map<Instant, Reading> at(Transaction tx, Zone zone, Set<Instant> times) {
        Map<Instant, Reading> there = new HashMap<>();
        Instant first = times.stream().min(Instant::compareTo).orElseThrow();
        Instant last = times.stream().max(Instant::compareTo).orElseThrow();
        try (Stream<Row> rows = rows(tx, zone, first, last)) {
            rows.filter(row -> times.contains(row.readAt())).forEach(row -> there.put(row.readAt(), row.reading()));
        }
        return there;
    }

    private static Stream<Row> rows(Transaction tx, Zone zone, Instant fromInclusive, Instant toInclusive) {
        return tx
                .handle()
                .createQuery(SELECT + "where zone = :zone and read_at >= :from and read_at <= :to order by read_at")
                .bind("zone", zone.name())
                .bind("from", fromInclusive)
                .bind("to", toInclusive)
                .setFetchSize(10_000)
                .map((row, context) ->
                        new Row(row.getObject(1, OffsetDateTime.class).toInstant(), row.getDouble(2), row.getDouble(3)))
                .stream();
    }

    /** Moves the readings of a file to those that were taken back; says how many. */
    long takeBack(Transaction tx, TakenBack file) {
        String where = " where zone = :zone and read_at >= :first and read_at <= :last and file_id = :file";
        tx.handle()
                .createUpdate(
                        "insert into reading_taken_back (file_id, file_seq, zone, read_at, temperature_c, rh_percent,"
                                + " recorded_at, who) select file_id, cast(:seq as integer), zone, read_at, temperature_c,"
                                + " rh_percent, recorded_at, who from reading" + where)
                .bind("seq", file.eventSeq())
                .bind("zone", file.zone().name())
                .bind("first", file.first())
                .bind("last", file.last())
                .bind("file", file.fileId())
                .execute();
        return tx.handle()
                .createUpdate("delete from reading" + where)
                .bind("zone", file.zone().name())
                .bind("first", file.first())
                .bind("last", file.last())
                .bind("file", file.fileId())
                .execute();
    }

    /** Readings from a moment up to and including another, ascending. */
    List<Reading> between(Transaction tx, Zone zone, Instant fromInclusive, Instant toInclusive) {
        List<Reading> readings = new ArrayList<>();
        try (Stream<Row> rows = rows(tx, zone, fromInclusive, toInclusive)) {
            rows.forEach(row -> readings.add(row.reading()));
        }
        return readings;
    }

    /** The newest reading at or before a moment. */
    Optional<Reading> latest(Transaction tx, Zone zone, Instant moment) {
        return tx.handle()
                .createQuery(SELECT + "where zone = :zone and read_at <= :moment" + NEWEST_FIRST)
                .bind("zone", zone.name())
                .bind("moment", moment)
                .mapTo(Row.class)
                .findFirst()
                .map(Row::reading);
    }

    /** The earliest reading after a moment. */
    Optional<Reading> next(Transaction tx, Zone zone, Instant moment) {
        return tx.handle()
                .createQuery(SELECT + "where zone = :zone and read_at > :moment" + OLDEST_FIRST)
                .bind("zone", zone.name())
                .bind("moment", moment)
                .mapTo(Row.class)
                .findFirst()
                .map(Row::reading);
    }

    Optional<Reading> newest(Transaction tx, Zone zone) {
        return tx.handle()
                .createQuery(SELECT + "where zone = :zone" + NEWEST_FIRST)
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
