package bagclock.desk;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.standard.Level;
import bagclock.ledger.Ledger;
import bagclock.ledger.Notes;
import bagclock.platform.OnBothDatabases;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Items are found by the lot number of their label, those of before the index too. */
class ItemLotsTest extends OnBothDatabases {
    private void receive(TestShop shop, String tag, String lot) {
        Origin pack = new Origin.DryPack(TestShop.START.minus(Duration.ofDays(30)), OptionalInt.empty());
        shop.tell(new Command.Receive(
                shop.header(0), tag, TestShop.number(Level.L3), 10, Optional.empty(), pack, Map.of(Notes.LOT, lot)));
    }

    @Test
    void theIndexOfEntriesOfBeforeIsTheSame() throws IOException {
        TestShop shop = new TestShop(database);
        receive(shop, "R-1", "77/A-3");
        receive(shop, "R-2", "77/A-3");
        receive(shop, "R-3", "78");
        shop.tell(shop.receive(0, "R-4", Level.L3));
        Ledger ledger = new Ledger();
        assertThat(database.<List<String>>read(tx -> ledger.ofLot(tx, "77/A-3")))
                .containsExactly("R-1", "R-2");

        String migration = Files.readString(Path.of("src/main/resources/db/migration/V071__item_lots.sql"));
        String backfill = migration.substring(migration.indexOf("insert into"), migration.lastIndexOf(';'));
        database.withTransaction(tx -> {
            tx.handle().execute("delete from item_lot");
            tx.handle().execute(backfill);
        });

        assertThat(database.<List<String>>read(tx -> ledger.ofLot(tx, "77/A-3")))
                .containsExactly("R-1", "R-2");
        assertThat(database.<List<String>>read(tx -> ledger.ofLot(tx, "78"))).containsExactly("R-3");
    }
}
