package bagclock.desk;

import bagclock.core.exposure.Air;
import bagclock.core.exposure.Zone;
import bagclock.core.exposure.ZoneLog.Reading;
import bagclock.core.quantity.Celsius;
import bagclock.core.standard.Level;
import bagclock.readings.ZoneReading;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/** People and loggers at work, drawn by chance: scans in time and late, readings in time, late and missing. */
final class RandomShop {
    private static final List<String> PLACES =
            List.of(TestShop.BENCH, TestShop.BENCH, TestShop.STORE, TestShop.STORE, TestShop.DRY, TestShop.LOGGED_DRY);
    private static final List<String> LOGGED = List.of(TestShop.BENCH, TestShop.STORE, TestShop.LOGGED_DRY);

    private final TestShop shop;
    private final SplittableRandom random;
    private final List<String> tags = new ArrayList<>();
    private Instant now = TestShop.START;
    private int key;
    int accepted;
    int lateReadings;

    RandomShop(TestShop shop, long seed) {
        this.shop = shop;
        this.random = new SplittableRandom(seed);
    }

    Instant now() {
        return now;
    }

    void step() {
        now = now.plusSeconds(random.nextInt(20, 4000));
        int choice = random.nextInt(10);
        if (tags.size() < 3 || (choice == 0 && tags.size() < 14)) {
            receive();
        } else if (choice < 5) {
            read();
        } else {
            act(tags.get(random.nextInt(tags.size())));
        }
    }

    private Command.Header header() {
        boolean late = random.nextInt(5) == 0;
        Instant at = late ? now.minusSeconds(random.nextInt(100_000)) : now;
        return new Command.Header("clerk", at, "random-" + key++);
    }

    private void receive() {
        Level[] levels = Level.values();
        String tag = "T-" + tags.size();
        Level level = levels[random.nextInt(levels.length)];
        Origin origin = new Origin.LeftDryPack(now.minusSeconds(random.nextInt(9000)), TestShop.BENCH, "seen");
        if (tell(new Command.Receive(
                new Command.Header("clerk", now, "random-" + key++),
                tag,
                TestShop.number(level),
                100,
                Optional.empty(),
                origin))) {
            tags.add(tag);
        }
    }

    private void act(String tag) {
        Command.Header header = header();
        int choice = random.nextInt(12);
        if (choice < 6) {
            tell(new Command.Move(header, tag, PLACES.get(random.nextInt(PLACES.size()))));
        } else if (choice == 6) {
            tell(new Command.Reseal(header, tag, random.nextInt(3) > 0, true));
        } else if (choice == 7) {
            tell(new Command.Open(
                    header,
                    tag,
                    Optional.of(TestShop.GOOD_CARD),
                    Optional.empty(),
                    Optional.of(true),
                    TestShop.STORE,
                    Optional.empty()));
        } else if (choice == 8) {
            tell(new Command.StartBake(header, tag, TestShop.OVEN, new Celsius(125), Optional.empty()));
        } else if (choice == 9) {
            tell(new Command.EndBake(header, tag, Optional.empty()));
        } else if (choice == 10 && tags.size() < 14) {
            String child = "T-" + tags.size();
            if (tell(new Command.Split(header, tag, 10, child))) {
                tags.add(child);
            }
        } else {
            tell(new Command.ChangeCarrier(header, tag, "tray 125"));
        }
    }

    private boolean tell(Command command) {
        boolean taken = shop.desk.handle(command, now).fold(receipt -> true, refusals -> false);
        accepted += taken ? 1 : 0;
        return taken;
    }

    private void read() {
        String zone = LOGGED.get(random.nextInt(LOGGED.size()));
        int count = random.nextInt(1, 6);
        boolean late = random.nextInt(4) == 0;
        Instant at = late ? now.minusSeconds(random.nextInt(40_000, 200_000)) : now.minusSeconds(count * 700L);
        lateReadings += late ? 1 : 0;
        List<ZoneReading> readings = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            at = at.plusSeconds(random.nextInt(60, 700));
            readings.add(new ZoneReading(new Zone(zone), new Reading(at, air(zone)), i + 1));
        }
        shop.desk.add(readings, "logger", now);
    }

    private Air air(String zone) {
        if (zone.equals(TestShop.LOGGED_DRY)) {
            return Air.of(22 + random.nextInt(3), random.nextInt(12) == 0 ? 20 : 3 + random.nextInt(5));
        } else if (random.nextInt(400) == 0) {
            return Air.of(36, 50);
        }
        boolean sultry = random.nextInt(6) == 0;
        return sultry ? Air.of(26 + random.nextInt(8), 55 + random.nextInt(25)) : Air.of(21 + random.nextInt(5), 35);
    }
}
