package bagclock.desk;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.Counts;
import bagclock.core.exposure.PartHistory;
import bagclock.platform.Database;
import bagclock.platform.Engine;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A list without replay says what a replay of every item says, whatever happened and whenever it was told. */
class ClockRowsTest {
    private static final int STEPS = 120;
    private static final int STEPS_BETWEEN_LOOKS = 5;

    private Database database;

    /** The rules are the same on both databases: in the quick run one story tells whether PostgreSQL takes the SQL. */
    static Stream<Arguments> stories() {
        return Stream.of(Engine.values())
                .flatMap(engine -> LongStream.rangeClosed(1, Counts.of(engine == Engine.H2 ? 3 : 1, 40))
                        .mapToObj(seed -> Arguments.of(engine, seed)));
    }

    @AfterEach
    void close() {
        database.close();
    }

    @ParameterizedTest(name = "{0}, seed {1}")
    @MethodSource("stories")
    void rowsAndReplayAgree(Engine engine, long seed) {
        database = engine.fresh();
        TestShop shop = new TestShop(database);
        RandomShop random = new RandomShop(shop, seed);
        long onSums = 0;
        for (int step = 1; step <= STEPS; step++) {
            random.step();
            if (step % STEPS_BETWEEN_LOOKS == 0) {
                compare(shop.desk, random.now().plusSeconds(step % 3 * 1800L), "seed " + seed + ", step " + step);
                onSums += rowsOnSums();
            }
        }
        assertThat(random.accepted).isGreaterThan(STEPS / 5);
        assertThat(random.lateReadings).isGreaterThan(3);
        assertThat(onSums).as("rows that a sum follows").isPositive();
    }

    private long rowsOnSums() {
        return database.read(tx -> tx.handle()
                .createQuery("select count(*) from item_clock where rate_key is not null")
                .mapTo(Long.class)
                .one());
    }

    private void compare(Desk desk, Instant exact, String when) {
        Instant moment = exact.truncatedTo(ChronoUnit.SECONDS);
        List<ItemRow> rows = desk.items(ItemQuery.OPEN.page(0, 500), moment).rows();
        Map<String, Optional<Instant>> listed = new HashMap<>();
        Map<String, Optional<Instant>> replayed = new HashMap<>();
        for (ItemRow row : rows) {
            listed.put(row.item().tag(), row.endsAt());
            replayed.put(row.item().tag(), replay(desk, row.item().tag(), moment));
        }
        assertThat(listed).as(when).isEqualTo(replayed);
        for (Duration within : List.of(Duration.ZERO, Duration.ofHours(20), Duration.ofDays(4))) {
            long expected = replayed.values().stream()
                    .filter(end -> end.isPresent() && !end.get().isAfter(moment.plus(within)))
                    .count();
            assertThat(desk.items(ItemQuery.expiringWithin(within), moment).total())
                    .as(when + ", within " + within)
                    .isEqualTo(expected);
        }
    }

    private static Optional<Instant> replay(Desk desk, String tag, Instant moment) {
        PartHistory history = desk.evidence(tag, moment).history();
        return Optional.ofNullable(new Clocks(TestShop.STANDARD, history, zone -> Optional.empty())
                        .counting()
                        .endsMs())
                .map(Instant::ofEpochMilli);
    }
}
