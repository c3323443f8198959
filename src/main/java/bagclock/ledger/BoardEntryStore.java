package bagclock.ledger;

import bagclock.platform.ChangedMeanwhile;
import bagclock.platform.Database;
import bagclock.platform.Transaction;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** The entries of every board; only ever added to. */
final class BoardEntryStore {
    private static final String SELECT = """
            select serial, seq, happened_at, recorded_at, who, idempotency_key, kind, payload, previous_hash, hash
            from board_entry
            """;

    /** One stored line. */
    record Row(
            String serial,
            int seq,
            Instant happenedAt,
            Instant recordedAt,
            String who,
            String idempotencyKey,
            String kind,
            String payload,
            String previousHash,
            String hash) {
        BoardEntry entry() {
            return new BoardEntry(
                    serial,
                    seq,
                    happenedAt,
                    new Stamp(who, recordedAt, idempotencyKey),
                    BoardEntry.Kind.valueOf(kind),
                    BoardLedger.told(payload),
                    previousHash,
                    hash);
        }
    }

    void add(Transaction tx, BoardEntry entry, String payload) {
        try {
            tx.handle()
                    .createUpdate("""
                            insert into board_entry (serial, seq, happened_at, recorded_at, who, idempotency_key, kind,
                                payload, previous_hash, hash)
                            values (:serial, :seq, :happenedAt, :recordedAt, :who, :key, :kind, :payload,
                                :previousHash, :hash)
                            """)
                    .bind("serial", entry.serial())
                    .bind("seq", entry.seq())
                    .bind("happenedAt", entry.happenedAt())
                    .bind("recordedAt", entry.stamp().recordedAt())
                    .bind("who", entry.stamp().who())
                    .bind("key", entry.stamp().key())
                    .bind("kind", entry.kind().name())
                    .bind("payload", payload)
                    .bind("previousHash", entry.previousHash())
                    .bind("hash", entry.hash())
                    .execute();
        } catch (RuntimeException failure) {
            if (Database.isDuplicateKey(failure)) {
                throw new ChangedMeanwhile("entry " + entry.seq() + " of board " + entry.serial() + " came meanwhile");
            }
            throw failure;
        }
    }

    List<BoardEntry> of(Transaction tx, String serial) {
        return rows(tx, serial).stream().map(Row::entry).toList();
    }

    private static List<Row> rows(Transaction tx, String serial) {
        return tx.handle()
                .createQuery(SELECT + "where serial = :serial order by seq")
                .bind("serial", serial)
                .mapTo(Row.class)
                .list();
    }

    List<BoardEntry> newest(Transaction tx, BoardEntry.Kind kind, int most) {
        return tx.handle()
                .createQuery(SELECT + "where kind = :kind order by recorded_at desc, serial, seq desc limit :most")
                .bind("kind", kind.name())
                .bind("most", most)
                .mapTo(Row.class)
                .map(Row::entry)
                .list();
    }

    List<BoardEntry> recordedBetween(
            Transaction tx, List<BoardEntry.Kind> kinds, Instant startInclusive, Instant endExclusive) {
        return tx.handle()
                .createQuery(SELECT + "where kind in (<kinds>) and recorded_at >= :start and recorded_at < :end"
                        + " order by recorded_at, serial, seq")
                .bindList("kinds", kinds.stream().map(Enum::name).toList())
                .bind("start", startInclusive)
                .bind("end", endExclusive)
                .mapTo(Row.class)
                .map(Row::entry)
                .list();
    }

    Optional<BoardEntry> byKey(Transaction tx, String key) {
        return tx.handle()
                .createQuery(SELECT + "where idempotency_key = :key")
                .bind("key", key)
                .mapTo(Row.class)
                .findFirst()
                .map(Row::entry);
    }

    boolean isWhole(Transaction tx, String serial) {
        String previous = Chain.START;
        for (Row row : rows(tx, serial)) {
            boolean linked = row.previousHash().equals(previous);
            if (!linked || !row.hash().equals(Chain.hash(previous, row.payload()))) {
                return false;
            }
            previous = row.hash();
        }
        return true;
    }
}
