package bagclock.desk;

import bagclock.core.exposure.Air;
import bagclock.platform.ChangedMeanwhile;
import bagclock.platform.Database;
import bagclock.platform.Transaction;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.statement.PreparedBatch;

/** The clock rows, and what is needed to keep them. */
final class ClockRowStore {
    private static final String COLUMNS = "tag, rating, counting, level, peak_c, state, zone, follows, used_share,"
            + " total_h, used_h, anchor_at, worked_out_at, valid_until, ends_ms, rate_key, end_sum";

    /** A zone and a rate at which items there count. */
    record Pair(String zone, String rateKey, String lives) {}

    /** What counts where no reading holds. */
    record WorstRow(double temperatureC, double rhPercent) {}

    /** Puts these rows in place of those that the item had. */
    void replace(Transaction tx, String tag, List<ClockRow> rows, List<Stay> stays) {
        delete(tx, "item_clock", tag);
        delete(tx, "item_stay", tag);
        rows.forEach(row -> insert(tx, row));
        if (rows.isEmpty() || stays.isEmpty()) {
            return;
        }
        PreparedBatch batch = tx.handle()
                .prepareBatch(
                        "insert into item_stay (tag, zone, started_at, ended_at) values (:tag, :zone, :start, :end)");
        for (Stay stay : stays) {
            batch.bind("tag", tag)
                    .bind("zone", stay.zone())
                    .bind("start", stay.startedAt())
                    .bindByType("end", stay.endedAt(), Instant.class)
                    .add();
        }
        batch.execute();
    }

    private static void delete(Transaction tx, String table, String tag) {
        tx.handle()
                .createUpdate("delete from " + table + " where tag = :tag")
                .bind("tag", tag)
                .execute();
    }

    private static void insert(Transaction tx, ClockRow row) {
        tx.handle()
                .createUpdate(
                        "insert into item_clock (" + COLUMNS + ") values (:tag, :rating, :counting, :level, :peakC,"
                                + " :state, :zone, :follows, :usedShare, :totalH, :usedH, :anchorAt, :workedOutAt, :validUntil,"
                                + " :endsMs, :rateKey, :endSum)")
                .bind("tag", row.tag())
                .bind("rating", row.rating())
                .bind("counting", row.counting())
                .bind("level", row.level())
                .bind("peakC", row.peakC())
                .bind("state", row.state())
                .bind("zone", row.zone())
                .bind("follows", row.follows())
                .bind("usedShare", row.usedShare())
                .bind("totalH", row.totalH())
                .bind("usedH", row.usedH())
                .bind("anchorAt", row.anchorAt())
                .bind("workedOutAt", row.workedOutAt())
                .bindByType("validUntil", row.validUntil(), Instant.class)
                .bind("endsMs", row.endsMs())
                .bind("rateKey", row.rateKey())
                .bind("endSum", row.endSum())
                .execute();
    }

    List<ClockRow> of(Transaction tx, String tag) {
        return tx.handle()
                .createQuery("select " + COLUMNS + " from item_clock where tag = :tag order by rating")
                .bind("tag", tag)
                .mapTo(ClockRow.class)
                .list();
    }

    /** Keeps what a key stands for. */
    void keep(Transaction tx, CellLives lives) {
        long known = tx.handle()
                .createQuery("select count(*) from clock_rate where rate_key = :key")
                .bind("key", lives.key())
                .mapTo(Long.class)
                .one();
        if (known == 0) {
            insert(tx, lives);
        }
    }

    private static void insert(Transaction tx, CellLives lives) {
        try {
            tx.handle()
                    .createUpdate("insert into clock_rate (rate_key, lives) values (:key, :lives)")
                    .bind("key", lives.key())
                    .bind("lives", lives.text())
                    .execute();
        } catch (RuntimeException failure) {
            if (Database.isDuplicateKey(failure)) {
                throw new ChangedMeanwhile("rate " + lives.key() + " was entered meanwhile");
            }
            throw failure;
        }
    }

    /** Every zone and rate in use. */
    List<Pair> pairs(Transaction tx) {
        return tx.handle().createQuery("""
                        select p.zone, p.rate_key, r.lives
                        from (select distinct zone, rate_key from item_clock where rate_key is not null) p
                        join clock_rate r on r.rate_key = p.rate_key
                        order by p.zone, p.rate_key
                        """).mapTo(Pair.class).list();
    }

    Optional<Air> worst(Transaction tx, String zone) {
        return tx.handle()
                .createQuery("select temperature_c, rh_percent from zone_worst where zone = :zone")
                .bind("zone", zone)
                .mapTo(WorstRow.class)
                .findFirst()
                .map(row -> Air.of(row.temperatureC(), row.rhPercent()));
    }

    void setWorst(Transaction tx, String zone, Air worst) {
        String set = "update zone_worst set temperature_c = :temperature, rh_percent = :humidity where zone = :zone";
        if (worst(tx, zone, worst, set) == 0) {
            worst(
                    tx,
                    zone,
                    worst,
                    "insert into zone_worst (zone, temperature_c, rh_percent) values (:zone, :temperature, :humidity)");
        }
    }

    private static int worst(Transaction tx, String zone, Air worst, String sql) {
        return tx.handle()
                .createUpdate(sql)
                .bind("zone", zone)
                .bind("temperature", worst.temperature().degrees())
                .bind("humidity", worst.humidity().percent())
                .execute();
    }

    /** Items that had a stay in a zone which began before one moment and ended after another. */
    List<String> leftBetween(Transaction tx, String zone, Instant from, Instant to) {
        return tx.handle()
                .createQuery("select distinct tag from item_stay"
                        + " where zone = :zone and ended_at > :from and started_at < :to order by tag")
                .bind("zone", zone)
                .bind("from", from)
                .bind("to", to)
                .mapTo(String.class)
                .list();
    }

    /** Items whose stay in a zone, also one that goes on, overlaps a span. */
    List<String> inBetween(Transaction tx, String zone, Instant from, Instant to) {
        return tx.handle()
                .createQuery("select distinct tag from item_stay where zone = :zone"
                        + " and (ended_at is null or ended_at > :from) and started_at < :to order by tag")
                .bind("zone", zone)
                .bind("from", from)
                .bind("to", to)
                .mapTo(String.class)
                .list();
    }

    /** Items in a zone to which something happened after a moment. */
    List<String> anchoredSince(Transaction tx, String zone, Instant moment) {
        return tx.handle()
                .createQuery(
                        "select distinct tag from item_clock where zone = :zone and anchor_at > :moment order by tag")
                .bind("zone", zone)
                .bind("moment", moment)
                .mapTo(String.class)
                .list();
    }

    /** Items in a zone whose rows follow its readings. */
    List<String> following(Transaction tx, String zone) {
        return tx.handle()
                .createQuery("select distinct tag from item_clock where zone = :zone and follows order by tag")
                .bind("zone", zone)
                .mapTo(String.class)
                .list();
    }

    /**
     * Makes all who write in a zone that was read before wait for each other: a reading and a scan at the same time must
     * see one another.
     */
    void lock(Transaction tx, String zone) {
        tx.handle()
                .createQuery("select zone from zone_worst where zone = :zone for update")
                .bind("zone", zone)
                .mapTo(String.class)
                .list();
    }

    /** Items that are or were in a zone. */
    List<String> everIn(Transaction tx, String zone) {
        return tx.handle()
                .createQuery("select distinct tag from item_stay where zone = :zone order by tag")
                .bind("zone", zone)
                .mapTo(String.class)
                .list();
    }

    /** The rows in a zone that were valid until one moment are valid until another: a quiet cabinet was read again. */
    void prolong(Transaction tx, String zone, Instant until, Instant nowUntil) {
        tx.handle()
                .createUpdate(
                        "update item_clock set valid_until = :nowUntil where zone = :zone and valid_until = :until")
                .bind("zone", zone)
                .bind("until", until)
                .bind("nowUntil", nowUntil)
                .execute();
    }

    /** Items whose rows are no longer valid, the longest first. */
    List<String> stale(Transaction tx, Instant moment, int most) {
        return tx.handle()
                .createQuery("select tag from item_clock where valid_until < :moment order by valid_until limit :most")
                .bind("moment", moment)
                .bind("most", most)
                .mapTo(String.class)
                .list();
    }

    /** Items of a part type that are not gone. */
    List<String> ofType(Transaction tx, String partNumber) {
        return tx.handle()
                .createQuery("select tag from item where part_type = :number and not ended order by tag")
                .bind("number", partNumber)
                .mapTo(String.class)
                .list();
    }

    /** Every item that is not gone. */
    List<String> open(Transaction tx) {
        return tx.handle()
                .createQuery("select tag from item where not ended order by tag")
                .mapTo(String.class)
                .list();
    }
}
