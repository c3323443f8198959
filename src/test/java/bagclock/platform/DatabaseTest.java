package bagclock.platform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.List;
import java.util.TimeZone;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class DatabaseTest extends OnBothDatabases {

    record Row(int id, @Nullable Instant happenedAt) {}

    record Strict(int id, int happenedAt) {}

    @BeforeEach
    void createTable() {
        database.withTransaction(tx -> tx.handle()
                .execute("create table sample (id integer primary key, happened_at timestamp with time zone)"));
    }

    @Test
    void instantsComeBackToTheMillisecond() {
        insert(1, Instant.parse("2026-03-05T14:20:00.123456789Z"));

        assertThat(rows()).containsExactly(new Row(1, Instant.parse("2026-03-05T14:20:00.123Z")));
    }

    @Test
    void theHourThatAutumnHasTwiceStaysTwoHours() {
        TimeZone before = TimeZone.getDefault();
        TimeZone.setDefault(TimeZone.getTimeZone("Europe/Berlin"));
        try (Database berlin = engine.fresh()) {
            berlin.withTransaction(tx -> tx.handle()
                    .execute("create table sample (id integer primary key, happened_at timestamp with time zone)"));
            Instant summer = Instant.parse("2026-10-25T00:30:00Z");
            Instant winter = Instant.parse("2026-10-25T01:30:00Z");
            insert(berlin, 1, summer);
            insert(berlin, 2, winter);

            assertThat(rows(berlin)).extracting(Row::happenedAt).containsExactly(summer, winter);
        } finally {
            TimeZone.setDefault(before);
        }
    }

    @Test
    void anUnknownInstantIsNull() {
        insert(1, null);

        assertThat(rows()).containsExactly(new Row(1, null));
    }

    @Test
    void anUnknownNumberIsNeverReadAsZero() {
        assertThatThrownBy(() -> database.read(tx -> tx.handle()
                        .createQuery("select 1 as id, cast(null as integer) as happened_at")
                        .mapTo(Strict.class)
                        .one()))
                .isInstanceOf(RuntimeException.class);
    }

    @Test
    void workThatFailsLeavesNothing() {
        assertThatThrownBy(() -> database.withTransaction(tx -> {
                    tx.handle().execute("insert into sample (id) values (1)");
                    throw new IllegalStateException("no");
                }))
                .isInstanceOf(IllegalStateException.class);

        assertThat(rows()).isEmpty();
    }

    @Test
    void aTakenKeyIsKnown() {
        insert(1, null);

        assertThatThrownBy(() -> insert(1, null))
                .isInstanceOfSatisfying(
                        RuntimeException.class,
                        failure -> assertThat(Database.isDuplicateKey(failure)).isTrue());
    }

    @Test
    void workThatLostADeadLockRunsAgain() throws Exception {
        insert(1, null);
        insert(2, null);
        CyclicBarrier bothHoldOne = new CyclicBarrier(2);
        AtomicInteger runs = new AtomicInteger();

        CompletableFuture<Void> one = CompletableFuture.runAsync(() -> touch(1, 2, bothHoldOne, runs));
        CompletableFuture<Void> other = CompletableFuture.runAsync(() -> touch(2, 1, bothHoldOne, runs));

        CompletableFuture.allOf(one, other).get(30, TimeUnit.SECONDS);
        assertThat(runs.get()).isGreaterThan(2);
    }

    private void touch(int first, int second, CyclicBarrier bothHoldOne, AtomicInteger runs) {

        AtomicInteger own = new AtomicInteger();
        database.withTransaction(tx -> {
            runs.incrementAndGet();
            update(tx, first);
            if (own.incrementAndGet() == 1) {
                await(bothHoldOne);
            }
            update(tx, second);
        });
    }

    private static void update(Transaction tx, int id) {
        tx.handle()
                .createUpdate("update sample set happened_at = :at where id = :id")
                .bind("at", Instant.EPOCH)
                .bind("id", id)
                .execute();
    }

    private static void await(CyclicBarrier barrier) {
        try {
            barrier.await(10, TimeUnit.SECONDS);
        } catch (Exception failure) {
            throw new IllegalStateException(failure);
        }
    }

    private void insert(int id, @Nullable Instant at) {
        insert(database, id, at);
    }

    private static void insert(Database database, int id, @Nullable Instant at) {
        database.withTransaction(tx -> tx.handle()
                .createUpdate("insert into sample (id, happened_at) values (:id, :at)")
                .bind("id", id)
                .bind("at", at)
                .execute());
    }

    private List<Row> rows() {
        return rows(database);
    }

    private static List<Row> rows(Database database) {
        return database.read(tx -> tx.handle()
                .createQuery("select id, happened_at from sample order by id")
                .mapTo(Row.class)
                .list());
    }
}
