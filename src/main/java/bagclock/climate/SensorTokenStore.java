package bagclock.climate;

import bagclock.platform.Database;
import bagclock.readings.SensorToken;
import bagclock.readings.Sensors;
import bagclock.readings.Source;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** What the sensors' page and call read and write. */
final class SensorTokenStore {
    private final Database database;
    private final Sensors sensors = new Sensors();

    SensorTokenStore(Database database) {
        this.database = database;
    }

    String add(String name, List<String> places, Source source) {
        return database.inTransaction(tx -> sensors.add(tx, name, places, source));
    }

    List<SensorToken> all() {
        return database.read(sensors::all);
    }

    Optional<SensorToken> byToken(String token) {
        return database.read(tx -> sensors.byToken(tx, token));
    }

    void revoke(String id, Instant moment) {
        database.withTransaction(tx -> sensors.revoke(tx, id, moment));
    }
}
