package bagclock.whatif;

import bagclock.core.exposure.ClimateLog;
import bagclock.core.exposure.Event;
import bagclock.core.exposure.PartHistory;
import bagclock.core.exposure.Timeline;
import bagclock.platform.Database;
import bagclock.register.HouseRules;
import bagclock.register.KnownPlace;
import bagclock.register.PartType;
import bagclock.register.Register;
import bagclock.register.Versioned;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a supposition needs of the register. */
final class WhatIfStore {
    private final Database database;
    private final Register register = new Register();

    WhatIfStore(Database database) {
        this.database = database;
    }

    List<KnownPlace.DryCabinet> cabinets(Instant moment) {
        return database.read(tx -> register.places(tx, KnownPlace.DryCabinet.class, moment));
    }

    Optional<PartType> partType(String number, Instant moment) {
        return database.read(tx -> register.partType(tx, number, moment)).map(Versioned::fact);
    }

    /** A part of the type that comes out of a good dry pack at this moment, in air that nobody reads. */
    PartHistory fresh(PartType type, Instant moment) {
        HouseRules rules = database.read(tx -> register.houseRules(tx, moment)).fact();
        List<Event> dry = List.of(new Event.ToFloor(moment, Optional.empty()));
        Timeline timeline = Timeline.of(dry).fold(one -> one, refusals -> Timeline.EMPTY);
        ClimateLog climate = new ClimateLog(Map.of(), Map.of(), rules.worstCase());
        return new PartHistory(type.part(), timeline, climate, rules.rules(), moment);
    }
}
