package bagclock.desk;

import bagclock.core.standard.Level;
import bagclock.platform.Database;
import bagclock.platform.Engine;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Lists of open items, and what a reading and a scan cost beside them, with a thousand items and with a hundred
 * thousand: the ratio of the two says whether anything is worked out for each item.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class ListBenchmark {
    private static final List<Level> LEVELS = List.of(Level.L2, Level.L2A, Level.L3, Level.L4, Level.L5, Level.L5A);
    private static final Instant NOW = TestShop.at(25);
    private static final int DAY_OF_READINGS = 288;

    /** How many items of each of six levels are open. */
    @Param({"166", "16666"})
    public int itemsOfALevel;

    private Database database = Engine.H2.fresh();
    private TestShop shop = new TestShop(database);
    private int calls;

    @Setup
    public void fill() {
        for (int i = 0; i < DAY_OF_READINGS; i++) {
            shop.read(TestShop.BENCH, i / 12.0, 22, 40, TestShop.at(24));
        }
        LEVELS.forEach(level -> shop.opened(20, "S-" + level.code(), level));
        shop.read(TestShop.BENCH, 24, 22, 40, TestShop.at(24));
        database.withTransaction(tx -> {
            for (String copy : List.of(ITEMS, CLOCKS, STAYS)) {
                tx.handle().execute(copy.formatted(itemsOfALevel));
            }
        });
    }

    @TearDown
    public void close() {
        database.close();
    }

    @Benchmark
    public Object pageByTag() {
        return shop.desk.items(ItemQuery.OPEN, NOW);
    }

    @Benchmark
    public Object pageByEndOfLife() {
        return shop.desk.items(ItemQuery.OPEN.by(ItemQuery.Sort.ENDS_AT, false), NOW);
    }

    @Benchmark
    public Object endingWithinFourHours() {
        return shop.desk.items(ItemQuery.expiringWithin(Duration.ofHours(4)), NOW);
    }

    @Benchmark
    public void readingArrives() {
        calls++;
        shop.read(TestShop.BENCH, 24 + calls / 100_000.0, 23, 41, NOW);
    }

    @Benchmark
    public void itemIsMoved() {
        calls++;
        String place = calls % 2 == 0 ? TestShop.STORE : TestShop.BENCH;
        shop.tell(shop.move(24.1, "S-3", place), NOW.plusSeconds(calls));
    }

    /** Copies of the opened items, straight into the tables: only lists are looked at. */
    private static final String ITEMS = """
            insert into item (tag, sort_key, part_type, received_at, quantity, whereabouts, place_code, ended,
                changed_at)
            select i.tag || '-' || g.n, i.sort_key || g.n, i.part_type, i.received_at, i.quantity, i.whereabouts,
                i.place_code, i.ended, i.changed_at
            from item i, system_range(1, %d) g(n)
            """;

    private static final String CLOCKS = """
            insert into item_clock
            select i.tag || '-' || g.n, rating, counting, level, peak_c, state, zone, follows, used_share, total_h,
                used_h, anchor_at, worked_out_at, valid_until, ends_ms, rate_key,
                end_sum + cast(g.n as numeric) / 1000000
            from item_clock i, system_range(1, %d) g(n)
            """;

    private static final String STAYS = """
            insert into item_stay
            select i.tag || '-' || g.n, zone, started_at, ended_at
            from item_stay i, system_range(1, %d) g(n)
            """;
}
