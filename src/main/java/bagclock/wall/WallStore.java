package bagclock.wall;

import bagclock.core.exposure.ZoneLog.Reading;
import bagclock.platform.Database;
import bagclock.readings.Readings;
import bagclock.register.KnownPlace;
import bagclock.register.Register;
import bagclock.register.Versioned;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** What the wall display asks beside the items. */
final class WallStore {
    private final Database database;
    private final Register register = new Register();
    private final Readings readings = new Readings();

    WallStore(Database database) {
        this.database = database;
    }

    boolean isShown(Instant moment) {
        return database.read(tx -> register.houseCustoms(tx, moment)).fact().wallShown();
    }

    List<KnownPlace> places(Instant moment) {
        return database.read(tx -> register.places(tx, moment)).stream()
                .map(Versioned::fact)
                .toList();
    }

    /** The newest reading of a place, if it still holds. */
    Optional<Reading> holding(KnownPlace place, Instant moment) {
        return database.read(tx -> {
            Duration gap = register.houseRules(tx, moment).fact().rules().maxReadingGap();
            return readings.latest(tx, place.zone(), moment)
                    .filter(reading -> !reading.at().plus(gap).isBefore(moment));
        });
    }
}
