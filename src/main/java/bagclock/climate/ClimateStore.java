package bagclock.climate;

import bagclock.core.exposure.Zone;
import bagclock.core.exposure.ZoneLog.Reading;
import bagclock.platform.Database;
import bagclock.platform.NotThere;
import bagclock.readings.HourBand;
import bagclock.readings.Readings;
import bagclock.register.HouseRules;
import bagclock.register.KnownPlace;
import bagclock.register.Register;
import bagclock.register.Versioned;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** What the climate pages read. */
final class ClimateStore {
    private final Database database;
    private final Register register = new Register();
    private final Readings readings = new Readings();

    ClimateStore(Database database) {
        this.database = database;
    }

    /** Zones and cabinets, by name; ovens have their own page. */
    List<KnownPlace> places(Instant moment) {
        return database.read(tx -> register.places(tx, moment)).stream()
                .map(Versioned::fact)
                .filter(place -> !(place instanceof KnownPlace.BakeOven))
                .toList();
    }

    /** Whether any place, an oven too, has this code. */
    boolean isTaken(String code, Instant moment) {
        return database.read(tx -> register.place(tx, code, moment)).isPresent();
    }

    /** A zone or cabinet, with its version. */
    Versioned<KnownPlace> place(String code, Instant moment) {
        return database.read(tx -> register.place(tx, code, moment))
                .filter(place -> !(place.fact() instanceof KnownPlace.BakeOven))
                .orElseThrow(() -> new NotThere("no zone or cabinet " + code));
    }

    Optional<Reading> latest(Zone zone, Instant moment) {
        return database.read(tx -> readings.latest(tx, zone, moment));
    }

    /** Ascending, both ends included. */
    List<Reading> between(Zone zone, Instant from, Instant to) {
        return database.read(tx -> readings.between(tx, zone, from, to));
    }

    /** Bands of hours, ascending. */
    List<HourBand> hours(Zone zone, Instant from, Instant to) {
        return database.read(tx -> readings.hours(tx, zone, from, to));
    }

    HouseRules rules(Instant moment) {
        return siteRules(moment).fact();
    }

    /** The site's rules with their version. */
    Versioned<HouseRules> siteRules(Instant moment) {
        return database.read(tx -> register.houseRules(tx, moment));
    }
}
