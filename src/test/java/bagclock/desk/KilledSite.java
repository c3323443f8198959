package bagclock.desk;

import bagclock.core.standard.Level;
import bagclock.platform.Database;
import java.time.Instant;

/** A site in a process of its own that writes until it is killed, and says what it has acknowledged. */
final class KilledSite {
    private KilledSite() {}

    /** The first argument is the database's address. */
    public static void main(String... args) {
        Database database = Database.open(args[0]);
        TestShop shop = new TestShop(database);
        for (int item = 0; item < 4; item++) {
            String tag = "R-" + item;
            shop.opened(0, tag, Level.L3);
            Thread writer = new Thread(() -> write(shop.desk, tag));
            writer.start();
        }
    }

    private static void write(Desk desk, String tag) {
        for (int i = 0; ; i++) {
            Instant at = TestShop.at(1 + i * 0.01);
            String key = tag + "/" + i;
            String place = i % 2 == 0 ? TestShop.STORE : TestShop.BENCH;
            desk.handle(new Command.Move(new Command.Header("clerk", at, key), tag, place), at)
                    .fold(receipt -> acknowledge(key), refusals -> refuse(refusals.toString()));
        }
    }

    private static synchronized boolean acknowledge(String key) {
        System.out.println(key);
        System.out.flush();
        return true;
    }

    private static boolean refuse(String why) {
        throw new IllegalStateException(why);
    }
}
