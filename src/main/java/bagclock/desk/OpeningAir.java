package bagclock.desk;

import bagclock.core.exposure.Air;
import bagclock.core.exposure.ZoneLog.Reading;
import bagclock.ledger.Notes;
import bagclock.platform.Transaction;
import bagclock.readings.Readings;
import bagclock.register.KnownPlace;
import bagclock.register.Register;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Whether a bag is opened where, by the site's own limit, none should be. It is not refused, but it is recorded. */
public final class OpeningAir {
    private final Register register;
    private final Readings readings;

    /** The air that was read last, and the limit that it is above. */
    public record Above(Air read, Air limit) {}

    /** Looks at readings in the light of what the register says of zones. */
    public OpeningAir(Register register, Readings readings) {
        this.register = register;
        this.readings = readings;
    }

    void note(Transaction tx, Command.Open open, Lookup known) {
        Instant at = open.header().happenedAt();
        register.place(tx, open.placeCode(), known.now())
                .map(place -> place.fact())
                .flatMap(place -> place instanceof KnownPlace.FloorZone zone ? above(tx, zone, at) : Optional.empty())
                .ifPresent(above ->
                        known.note(Notes.ABOVE_OPENING_LIMIT, text(above.read()) + ", limit " + text(above.limit())));
        open.whyAnyway().ifPresent(why -> known.note(Notes.OPENED_ANYWAY, why));
    }

    /** The zones, by their codes, where no bag should be opened at this moment. */
    public Map<String, Above> closed(Transaction tx, Instant moment) {
        Map<String, Above> closed = new HashMap<>();
        register.places(tx, KnownPlace.FloorZone.class, moment)
                .forEach(zone -> above(tx, zone, moment).ifPresent(above -> closed.put(zone.code(), above)));
        return closed;
    }

    /** Empty if it is not above, or nothing that holds was read. */
    private Optional<Above> above(Transaction tx, KnownPlace.FloorZone zone, Instant at) {
        Duration holdsFor = register.houseRules(tx, at).fact().rules().maxReadingGap();
        Optional<Air> air = readings.latest(tx, zone.zone(), at)
                .filter(reading -> !reading.at().plus(holdsFor).isBefore(at))
                .map(Reading::air);
        return zone.openBagsUpTo()
                .flatMap(limit -> air.filter(read -> read.isWarmerThan(limit) || read.isWetterThan(limit))
                        .map(read -> new Above(read, limit)));
    }

    private static String text(Air air) {
        return air.temperature().degrees() + " C " + air.humidity().percent() + " %RH";
    }
}
