package bagclock.stock;

import bagclock.desk.OpeningAir;
import bagclock.platform.Database;
import bagclock.readings.Readings;
import bagclock.register.CarrierKind;
import bagclock.register.KnownPlace;
import bagclock.register.PartType;
import bagclock.register.Register;
import bagclock.register.Versioned;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the stockroom's forms offer. */
final class StockStore {
    private final Database database;
    private final Register register = new Register();

    StockStore(Database database) {
        this.database = database;
    }

    /** Zones where no bag should be opened. */
    Map<String, OpeningAir.Above> closed(Instant moment) {
        return database.read(tx -> new OpeningAir(register, new Readings()).closed(tx, moment));
    }

    List<KnownPlace> places(Instant moment) {
        return database.read(tx -> register.places(tx, moment)).stream()
                .map(Versioned::fact)
                .toList();
    }

    Optional<KnownPlace> place(String code, Instant moment) {
        return database.read(tx -> register.place(tx, code, moment)).map(Versioned::fact);
    }

    List<PartType> partTypes(Instant moment) {
        return database.read(tx -> register.partTypes(tx, moment)).stream()
                .map(Versioned::fact)
                .toList();
    }

    List<CarrierKind> carriers(Instant moment) {
        return database.read(tx -> register.carriers(tx, moment)).stream()
                .map(Versioned::fact)
                .toList();
    }
}
