package bagclock.desk;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.standard.Level;
import bagclock.ledger.Ledger;
import bagclock.platform.OnBothDatabases;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which items were used up for a board. */
class BoardUsesTest extends OnBothDatabases {
    /** The table of uses narrows to the items whose entries may say so; it can be built anew from the entries. */
    @Test
    void usesForABoardAreFoundByItsSerialNumber() throws IOException {
        TestShop shop = new TestShop(database);
        String one = shop.opened(0, "R-1", Level.L3);
        String two = shop.opened(0, "R-2", Level.L3);
        shop.tell(new Command.UseUp(shop.header(1), one, 4, "WO-7", List.of("B-1", "B-2", "B-1")));
        shop.tell(new Command.UseUp(shop.header(2), two, 4, "WO \"boards\":[x", List.of("B-2")));
        shop.tell(new Command.UseUp(shop.header(3), two, 4, "WO-9", List.of()));
        Ledger ledger = new Ledger();
        assertThat(database.<List<String>>read(tx -> ledger.usedFor(tx, "B-2"))).containsExactly("R-1", "R-2");

        String migration = Files.readString(Path.of("src/main/resources/db/migration/V032__board_uses.sql"));
        String fill = migration.substring(migration.indexOf("insert into"), migration.lastIndexOf(';'));
        database.withTransaction(tx -> {
            tx.handle().execute("delete from board_use");
            tx.handle().execute(fill);
        });

        assertThat(database.<List<String>>read(tx -> ledger.usedFor(tx, "B-1"))).containsExactly("R-1");
        assertThat(database.<List<String>>read(tx -> ledger.usedFor(tx, "B-2"))).containsExactly("R-1", "R-2");
    }
}
