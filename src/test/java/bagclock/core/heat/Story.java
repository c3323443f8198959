package bagclock.core.heat;

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
import bagclock.core.standard.CarrierLimit;
import bagclock.core.standard.Edition;
import bagclock.core.standard.Part;
import bagclock.core.standard.Standard;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What happened to a part, told in hours since a fixed start. Floor events are on the bench; the declared worst case is
 * 25 C / 50 %RH unless told otherwise.
 */
final class Story {
    static final Standard STANDARD = Standard.load(Edition.J_STD_033D);
    static final Instant START = Instant.parse("2026-03-02T00:00:00Z");
    static final HumidityCard DRY_CARD = new HumidityCard(Map.of(5.0, true, 10.0, true, 60.0, true));
    static final Optional<Zone> BENCH = Optional.of(new Zone("bench"));
    static final Optional<Zone> CABINET = Optional.of(new Zone("cabinet"));

    private final Part part;
    private final List<Event> events = new ArrayList<>();
    private final Map<Zone, List<ZoneLog.Reading>> readings = new HashMap<>();
    private Optional<Air> worstCase = Optional.of(Air.of(25, 50));
    private SiteRules rules = SiteRules.USUAL;

    private Story(Part part) {
        this.part = part;
    }

    static Story of(Part part) {
        return new Story(part);
    }

    static Story of(PartUnderTest part) {
        return new Story(part.get());
    }

    static Duration hours(double hours) {
        return Duration.ofMillis(Math.round(hours * 3_600_000));
    }

    static Instant at(double hour) {
        return START.plus(hours(hour));
    }

    /** Hours since the start. */
    static double hour(Instant at) {
        return Duration.between(START, at).toMillis() / 3_600_000.0;
    }

    Story event(Event event) {
        events.add(event);
        return this;
    }

    Story sealed(double hour) {
        return event(new Event.Sealed(at(hour), OptionalInt.empty()));
    }

    /** By its maker's bag: good card, sound bag. */
    Story opened(double hour) {
        return opened(hour, Optional.of(DRY_CARD), true);
    }

    Story opened(double hour, Optional<HumidityCard> card, boolean sound) {
        return event(new Event.Opened(at(hour), card, Optional.of(at(hour)), Optional.of(sound), BENCH));
    }

    Story toFloor(double hour) {
        return event(new Event.ToFloor(at(hour), BENCH));
    }

    Story toZone(double hour, String zone) {
        return event(new Event.ToFloor(at(hour), Optional.of(new Zone(zone))));
    }

    Story unknown(double hour) {
        return event(new Event.UnknownExposure(at(hour)));
    }

    Story wetted(double hour) {
        return event(new Event.Wetted(at(hour)));
    }

    /** Into a cabinet without a logger. */
    Story stored(double hour, double rhPercent) {
        return event(new Event.ToDryStorage(at(hour), Optional.of(new RelativeHumidity(rhPercent)), Optional.empty()));
    }

    /** Into a logged cabinet of a class. */
    Story storedLogged(double hour, double rhPercent) {
        return event(new Event.ToDryStorage(at(hour), Optional.of(new RelativeHumidity(rhPercent)), CABINET));
    }

    /** Into a fresh dry pack. */
    Story resealed(double hour) {
        return event(new Event.Resealed(at(hour), true, true));
    }

    Story bake(double from, double to, double celsius, double hoursAtTemperature) {
        return bake(from, to, celsius, Optional.empty(), Optional.of(hoursAtTemperature));
    }

    Story dryBake(double from, double to, double celsius, double hoursAtTemperature) {
        return bake(from, to, celsius, Optional.of(5.0), Optional.of(hoursAtTemperature));
    }

    Story bake(double from, double to, double celsius, Optional<Double> rhPercent, Optional<Double> counted) {
        event(new Event.BakeStarted(at(from), new Celsius(celsius), rhPercent.map(RelativeHumidity::new)));
        return event(new Event.BakeEnded(at(to), counted.map(Story::hours)));
    }

    Story inOven(double from, double celsius) {
        return event(new Event.BakeStarted(at(from), new Celsius(celsius), Optional.of(new RelativeHumidity(5))));
    }

    Story heated(double hour, double peakC) {
        return event(new Event.Heated(at(hour), Optional.of(new Celsius(peakC))));
    }

    Story mounted(double hour) {
        return event(new Event.Mounted(at(hour), BENCH));
    }

    Story removed(double hour) {
        return event(new Event.Removed(at(hour), BENCH));
    }

    Story into(double hour, double limitC) {
        return event(new Event.CarrierChanged(at(hour), new CarrierLimit.Of(new Celsius(limitC))));
    }

    /** The declared worst case. */
    Story air(double celsius, double rhPercent) {
        worstCase = Optional.of(Air.of(celsius, rhPercent));
        return this;
    }

    Story nothingDeclared() {
        worstCase = Optional.empty();
        return this;
    }

    Story read(String zone, double hour, double celsius, double rhPercent) {
        readings.computeIfAbsent(new Zone(zone), name -> new ArrayList<>())
                .add(new ZoneLog.Reading(at(hour), Air.of(celsius, rhPercent)));
        return this;
    }

    /** Readings every half hour, both ends included. */
    Story logged(String zone, double from, double to, double celsius, double rhPercent) {
        for (int i = 0; from + i * 0.5 <= to; i++) {
            read(zone, from + i * 0.5, celsius, rhPercent);
        }
        return this;
    }

    Story rules(boolean useDrier, double gapHours, int excursionMinutes) {
        rules = new SiteRules(useDrier, hours(gapHours), Duration.ofMinutes(excursionMinutes));
        return this;
    }

    ClimateLog climate() {
        Map<Zone, ZoneLog> logs = new HashMap<>();
        readings.forEach((zone, list) -> logs.put(zone, ZoneLog.of(list)));
        return new ClimateLog(logs, Map.of(), worstCase);
    }

    SiteRules rules() {
        return rules;
    }

    List<Event> events() {
        return events;
    }

    Timeline timeline() {
        return Timeline.of(events).fold(timeline -> timeline, refusals -> {
            throw new AssertionError("not a history: " + refusals);
        });
    }

    PartHistory history(double hour) {
        return new PartHistory(part, timeline(), climate(), rules, at(hour));
    }

    /** The answer at a moment, no heat planned. */
    Answer answer(double hour) {
        return Assess.of(STANDARD, new Question(history(hour), Optional.empty()));
    }

    Answer heat(double hour, HeatPlan.Purpose purpose, double minutes, double peakC) {
        return heat(hour, Optional.of(purpose), Optional.empty(), minutes, Optional.of(peakC));
    }

    /** A placement that reaches 245 C. */
    Answer place(double hour, double minutes) {
        return heat(hour, HeatPlan.Purpose.PLACEMENT, minutes, 245);
    }

    Answer heat(
            double hour,
            Optional<HeatPlan.Purpose> purpose,
            Optional<Boolean> local,
            double minutes,
            Optional<Double> peakC) {
        HeatPlan plan = new HeatPlan(at(hour), hours(minutes / 60), peakC.map(Celsius::new), purpose, local);
        return Assess.of(STANDARD, new Question(history(hour), Optional.of(plan)));
    }
}
