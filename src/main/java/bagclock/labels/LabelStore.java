package bagclock.labels;

import bagclock.platform.Database;
import bagclock.register.HouseCustoms;
import bagclock.register.KnownPlace;
import bagclock.register.Register;
import bagclock.register.Versioned;
import java.time.Instant;
import java.util.List;

/** What labels and codes need to know. */
final class LabelStore {
    private final Database database;
    private final Register register = new Register();

    LabelStore(Database database) {
        this.database = database;
    }

    List<KnownPlace> places(Instant moment) {
        return database.read(tx -> register.places(tx, moment)).stream()
                .map(Versioned::fact)
                .toList();
    }

    Versioned<HouseCustoms> customs(Instant moment) {
        return database.read(tx -> register.houseCustoms(tx, moment));
    }
}
