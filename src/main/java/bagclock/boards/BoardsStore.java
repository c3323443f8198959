package bagclock.boards;

import bagclock.platform.Database;
import bagclock.register.KnownPlace.BakeOven;
import bagclock.register.PartType;
import bagclock.register.Register;
import bagclock.register.Versioned;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** What the pages of boards read beside the desk. */
final class BoardsStore {
    private final Database database;
    private final Register register = new Register();

    BoardsStore(Database database) {
        this.database = database;
    }

    List<BakeOven> ovens(Instant moment) {
        return database.read(tx -> register.places(tx, BakeOven.class, moment));
    }

    Optional<PartType> partType(String number, Instant moment) {
        return database.read(tx -> register.partType(tx, number, moment)).map(Versioned::fact);
    }
}
