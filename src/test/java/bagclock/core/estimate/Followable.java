package bagclock.core.estimate;

import bagclock.core.exposure.Air;
import bagclock.core.exposure.ClimateLog;
import bagclock.core.exposure.Event;
import bagclock.core.exposure.HumidityCard;
import bagclock.core.exposure.PartHistory;
import bagclock.core.exposure.SiteRules;
import bagclock.core.exposure.Timeline;
import bagclock.core.exposure.Zone;
import bagclock.core.exposure.ZoneLog;
import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.core.standard.Body;
import bagclock.core.standard.BodyKind;
import bagclock.core.standard.Edition;
import bagclock.core.standard.Level;
import bagclock.core.standard.Part;
import bagclock.core.standard.Standard;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** What a part went through, told in hours, in a room that is read every hour. */
final class Followable {
    static final Standard STANDARD = Standard.load(Edition.J_STD_033D);
    static final Instant START = Instant.parse("2026-03-02T00:00:00Z");
    static final Optional<Zone> ROOM = Optional.of(new Zone("room"));

    private final Part part;
    private final List<Event> events = new ArrayList<>();
    private final List<ZoneLog.Reading> readings = new ArrayList<>();
    private Optional<Air> worstCase = Optional.of(Air.LIMIT_30_60);
    private boolean useDrier;

    private Followable(Part part) {
        this.part = part;
    }

    static Followable of(Level level) {
        return of(Part.of(level, Body.of(BodyKind.LEADLESS, "3.4")));
    }

    static Followable of(Part part) {
        return new Followable(part);
    }

    static Instant at(long hour) {
        return START.plus(Duration.ofHours(hour));
    }

    Followable event(Event event) {
        events.add(event);
        return this;
    }

    Followable toRoom(long hour) {
        return event(new Event.ToFloor(at(hour), ROOM));
    }

    Followable sealed(long hour) {
        return event(new Event.Sealed(at(hour), OptionalInt.empty()));
    }

    Followable opened(long hour) {
        HumidityCard card = new HumidityCard(Map.of(5.0, true, 10.0, true, 60.0, true));
        return event(new Event.Opened(at(hour), Optional.of(card), Optional.of(at(hour)), Optional.of(true), ROOM));
    }

    Followable toCabinet(long hour, double percent) {
        return event(new Event.ToDryStorage(at(hour), Optional.of(new RelativeHumidity(percent)), Optional.empty()));
    }

    Followable baked(long hour, double celsius, long hours) {
        event(new Event.BakeStarted(at(hour), new Celsius(celsius), Optional.empty()));
        return event(new Event.BakeEnded(at(hour + hours), Optional.of(Duration.ofHours(hours))));
    }

    /** The room from one hour to another. */
    Followable read(long from, long to, double celsius, double percent) {
        for (long hour = from; hour < to; hour++) {
            readings.add(new ZoneLog.Reading(at(hour), Air.of(celsius, percent)));
        }
        return this;
    }

    Followable usingDrierAir() {
        useDrier = true;
        return this;
    }

    Followable worstCase(Optional<Air> other) {
        worstCase = other;
        return this;
    }

    PartHistory history(long hour) {
        Timeline timeline = Timeline.of(events).fold(one -> one, refusals -> {
            throw new AssertionError(refusals.toString());
        });
        Map<Zone, ZoneLog> logs = readings.isEmpty() ? Map.of() : Map.of(ROOM.orElseThrow(), ZoneLog.of(readings));
        SiteRules rules = new SiteRules(useDrier, Duration.ofHours(2), Duration.ZERO);
        return new PartHistory(
                part, timeline.upTo(at(hour)), new ClimateLog(logs, Map.of(), worstCase), rules, at(hour));
    }

    Beside beside(long hour) {
        return Estimates.of(STANDARD, history(hour));
    }
}
