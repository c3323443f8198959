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
import java.util.Optional;

/** Whether a bag is opened where, by the site's own limit, none should be. It is not refused, but it is recorded. */
final class OpeningAir {
    private final Register register;
    private final Readings readings;

    OpeningAir(Register register, Readings readings) {
        this.register = register;
        this.readings = readings;
    }

    void note(Transaction tx, Command.Open open, Lookup known) {
        Instant at = open.header().happenedAt();
        register.place(tx, open.placeCode(), known.now())
                .map(place -> place.fact())
                .flatMap(place -> place instanceof KnownPlace.FloorZone zone ? above(tx, zone, at) : Optional.empty())
                .ifPresent(air -> known.note(Notes.ABOVE_OPENING_LIMIT, air));
    }

    /** What was read, and the limit; empty if it is not above, or nothing that holds was read. */
    private Optional<String> above(Transaction tx, KnownPlace.FloorZone zone, Instant at) {
        Duration holdsFor = register.houseRules(tx, at).fact().rules().maxReadingGap();
        Optional<Air> air = readings.latest(tx, zone.zone(), at)
                .filter(reading -> !reading.at().plus(holdsFor).isBefore(at))
                .map(Reading::air);
        return zone.openBagsUpTo()
                .flatMap(limit -> air.filter(read -> read.isWarmerThan(limit) || read.isWetterThan(limit))
                        .map(read -> text(read) + ", limit " + text(limit)));
    }

    private static String text(Air air) {
        return air.temperature().degrees() + " C " + air.humidity().percent() + " %RH";
    }
}
