package bagclock.stock;

import bagclock.platform.Database;
import bagclock.platform.Transaction;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.statement.PreparedBatch;

/** Stock-takes that were kept; written once, never changed. */
final class StockTakeStore {
    private static final int NEWEST = 200;

    private final Database database;

    StockTakeStore(Database database) {
        this.database = database;
    }

    private record Head(String id, String placeCode, String placeName, Instant takenAt, String who) {}

    /** Keeps one; the same again changes nothing. */
    void keep(StockTake take) {
        try {
            database.withTransaction(tx -> {
                if (head(tx, take.id()).isEmpty()) {
                    insert(tx, take);
                }
            });
        } catch (RuntimeException failure) {
            if (!Database.isDuplicateKey(failure)) {
                throw failure;
            }
        }
    }

    private static void insert(Transaction tx, StockTake take) {
        tx.handle()
                .createUpdate("""
                        insert into stock_take (id, place_code, place_name, taken_at, who)
                        values (:id, :placeCode, :placeName, :takenAt, :who)
                        """)
                .bind("id", take.id())
                .bind("placeCode", take.placeCode())
                .bind("placeName", take.placeName())
                .bind("takenAt", take.takenAt())
                .bind("who", take.who())
                .execute();
        if (take.lines().isEmpty()) {
            return;
        }
        PreparedBatch lines = tx.handle().prepareBatch("""
                insert into stock_take_line (take_id, seq, code, standing, part_type, ledger_place)
                values (:takeId, :seq, :code, :standing, :partType, :ledgerPlace)
                """);
        for (int seq = 0; seq < take.lines().size(); seq++) {
            StockTake.Line line = take.lines().get(seq);
            lines.bind("takeId", take.id())
                    .bind("seq", seq)
                    .bind("code", line.code())
                    .bind("standing", line.standing().name())
                    .bind("partType", line.partType())
                    .bind("ledgerPlace", line.ledgerPlace())
                    .add();
        }
        lines.execute();
    }

    private static Optional<Head> head(Transaction tx, String id) {
        return tx.handle()
                .createQuery("select id, place_code, place_name, taken_at, who from stock_take where id = :id")
                .bind("id", id)
                .mapTo(Head.class)
                .findOne();
    }

    Optional<StockTake> take(String id) {
        return database.read(tx -> head(tx, id).map(head -> full(tx, head)));
    }

    /** The newest ones, newest first. */
    List<StockTake> newest() {
        return database.read(tx -> tx.handle().createQuery("""
                        select id, place_code, place_name, taken_at, who from stock_take
                        order by taken_at desc, id limit :most
                        """).bind("most", NEWEST).mapTo(Head.class).list().stream()
                .map(head -> full(tx, head))
                .toList());
    }

    private static StockTake full(Transaction tx, Head head) {
        List<StockTake.Line> lines = tx.handle()
                .createQuery("""
                        select code, standing, part_type, ledger_place from stock_take_line
                        where take_id = :id order by seq
                        """)
                .bind("id", head.id())
                .mapTo(StockTake.Line.class)
                .list();
        return new StockTake(head.id(), head.placeCode(), head.placeName(), head.takenAt(), head.who(), lines);
    }
}
