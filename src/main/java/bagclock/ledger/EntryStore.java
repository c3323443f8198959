package bagclock.ledger;

import bagclock.platform.ChangedMeanwhile;
import bagclock.platform.Database;
import bagclock.platform.Transaction;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/** The entries of every item; only ever added to. */
final class EntryStore {
    private static final String SELECT = """
            select tag, seq, happened_at, recorded_at, who, idempotency_key, act, corrects, payload, previous_hash, hash
            from ledger_entry
            """;

    /** One stored line. */
    record Row(
            String tag,
            int seq,
            Instant happenedAt,
            Instant recordedAt,
            String who,
            String idempotencyKey,
            String act,
            @Nullable Integer corrects,
            String payload,
            String previousHash,
            String hash) {
        Entry entry() {
            return new Entry(
                    tag,
                    seq,
                    happenedAt,
                    new Stamp(who, recordedAt, idempotencyKey),
                    Chain.act(Chain.read(payload)),
                    corrects == null ? OptionalInt.empty() : OptionalInt.of(corrects),
                    payload,
                    previousHash,
                    hash);
        }

        /** Whether the columns say what the hashed text says. */
        boolean agrees() {
            JsonNode json = Chain.read(payload);
            return json.path("tag").asText().equals(tag)
                    && json.path("seq").asInt() == seq
                    && json.path("happenedAt").asText().equals(happenedAt.toString())
                    && json.path("recordedAt").asText().equals(recordedAt.toString())
                    && json.path("who").asText().equals(who)
                    && json.path("key").asText().equals(idempotencyKey)
                    && json.path("act").asText().equals(act)
                    && Objects.equals(
                            json.has("corrects") ? json.path("corrects").asInt() : null, corrects);
        }
    }

    void add(Transaction tx, Entry entry) {
        try {
            tx.handle()
                    .createUpdate("""
                            insert into ledger_entry (tag, seq, happened_at, recorded_at, who, idempotency_key, act,
                                corrects, payload, previous_hash, hash)
                            values (:tag, :seq, :happenedAt, :recordedAt, :who, :key, :act, :corrects, :payload,
                                :previousHash, :hash)
                            """)
                    .bind("tag", entry.tag())
                    .bind("seq", entry.seq())
                    .bind("happenedAt", entry.happenedAt())
                    .bind("recordedAt", entry.stamp().recordedAt())
                    .bind("who", entry.stamp().who())
                    .bind("key", entry.stamp().key())
                    .bind("act", entry.act().word())
                    .bind(
                            "corrects",
                            entry.corrects().isPresent() ? entry.corrects().getAsInt() : null)
                    .bind("payload", entry.payload())
                    .bind("previousHash", entry.previousHash())
                    .bind("hash", entry.hash())
                    .execute();
        } catch (RuntimeException failure) {
            if (Database.isDuplicateKey(failure)) {
                throw new ChangedMeanwhile("entry " + entry.seq() + " of " + entry.tag() + " was written meanwhile");
            }
            throw failure;
        }
    }

    /** Notes that parts of an item went to a board; once for each pair. */
    void addUse(Transaction tx, String serial, String tag) {
        tx.handle().createUpdate("""
                        insert into board_use (serial, tag) select cast(:serial as varchar(400)), cast(:tag as varchar(40))
                        where not exists (select 1 from board_use where serial = :serial and tag = :tag)
                        """).bind("serial", serial).bind("tag", tag).execute();
    }

    /** Notes that an item's label named a lot; once for each pair. */
    void addLot(Transaction tx, String lot, String tag) {
        tx.handle().createUpdate("""
                        insert into item_lot (lot, tag) select cast(:lot as varchar(400)), cast(:tag as varchar(40))
                        where not exists (select 1 from item_lot where lot = :lot and tag = :tag)
                        """).bind("lot", lot).bind("tag", tag).execute();
    }

    /** Tags of items whose label may have named a lot. */
    List<String> ofLot(Transaction tx, String lot) {
        return tx.handle()
                .createQuery("select tag from item_lot where lot = :lot order by tag")
                .bind("lot", lot)
                .mapTo(String.class)
                .list();
    }

    /** Tags of items of which parts may have gone to a board. */
    List<String> usedFor(Transaction tx, String serial) {
        return tx.handle()
                .createQuery("select tag from board_use where serial = :serial order by tag")
                .bind("serial", serial)
                .mapTo(String.class)
                .list();
    }

    List<Row> rows(Transaction tx, String tag) {
        return tx.handle()
                .createQuery(SELECT + "where tag = :tag order by seq")
                .bind("tag", tag)
                .mapTo(Row.class)
                .list();
    }

    List<Entry> entries(Transaction tx, String tag) {
        List<Entry> entries = new ArrayList<>();
        rows(tx, tag).forEach(row -> entries.add(row.entry()));
        return entries;
    }

    Optional<Entry> byKey(Transaction tx, String key) {
        return tx.handle()
                .createQuery(SELECT + "where idempotency_key = :key")
                .bind("key", key)
                .mapTo(Row.class)
                .findFirst()
                .map(Row::entry);
    }

    /** The newest entries of a person, newest first. */
    List<Entry> newestOf(Transaction tx, String who, int most) {
        return newest(tx, "who", who, most);
    }

    /** The newest entries of one act, newest first. */
    List<Entry> newest(Transaction tx, String act, int most) {
        return newest(tx, "act", act, most);
    }

    private List<Entry> newest(Transaction tx, String column, String value, int most) {
        return tx.handle()
                .createQuery(
                        SELECT + "where " + column + " = :value order by recorded_at desc, tag, seq desc limit :most")
                .bind("value", value)
                .bind("most", most)
                .mapTo(Row.class)
                .map(Row::entry)
                .list();
    }

    /** Entries of one act recorded from a moment until before another, oldest first. */
    List<Entry> recordedBetween(Transaction tx, String act, Instant startInclusive, Instant endExclusive) {
        return tx.handle()
                .createQuery(SELECT + "where act = :act and recorded_at >= :start and recorded_at < :end"
                        + " order by recorded_at, tag, seq")
                .bind("act", act)
                .bind("start", startInclusive)
                .bind("end", endExclusive)
                .mapTo(Row.class)
                .map(Row::entry)
                .list();
    }

    /** Tags of items of which an entry was corrected since. */
    List<String> correctedSince(Transaction tx, Instant startInclusive) {
        return tx.handle()
                .createQuery(
                        "select distinct tag from ledger_entry where corrects is not null and recorded_at >= :start")
                .bind("start", startInclusive)
                .mapTo(String.class)
                .list();
    }

    /** Entries recorded from a moment until before another, oldest first. */
    List<Entry> recordedBetween(Transaction tx, Instant startInclusive, Instant endExclusive) {
        return tx.handle()
                .createQuery(
                        SELECT + "where recorded_at >= :start and recorded_at < :end order by recorded_at, tag, seq")
                .bind("start", startInclusive)
                .bind("end", endExclusive)
                .mapTo(Row.class)
                .map(Row::entry)
                .list();
    }
}
