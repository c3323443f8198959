package bagclock.core.heat;

import bagclock.core.exposure.Air;
import bagclock.core.exposure.ClimateLog;
import bagclock.core.exposure.Event;
import bagclock.core.exposure.PartHistory;
import bagclock.core.exposure.SiteRules;
import bagclock.core.exposure.Timeline;
import bagclock.core.exposure.Whereabouts;
import bagclock.core.exposure.Zone;
import bagclock.core.exposure.ZoneLog;
import bagclock.core.quantity.Celsius;
import bagclock.core.standard.Body;
import bagclock.core.standard.Part;
import bagclock.core.standard.Rating;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** A question drawn at random, with one thing changed at a time. */
record RandomCase(
        Part part,
        List<Event> events,
        Map<Zone, List<ZoneLog.Reading>> readings,
        Optional<Air> worstCase,
        SiteRules rules,
        Instant moment) {
    /** A placement to a peak that no drawn rating lies below. */
    static final double MILD_PEAK = 220;

    RandomCase with(Part other) {
        return new RandomCase(other, events, readings, worstCase, rules, moment);
    }

    RandomCase withWorstCase(Optional<Air> other) {
        return new RandomCase(part, events, readings, other, rules, moment);
    }

    RandomCase with(SiteRules other) {
        return new RandomCase(part, events, readings, worstCase, other, moment);
    }

    RandomCase withReadings(Zone zone, List<ZoneLog.Reading> others) {
        Map<Zone, List<ZoneLog.Reading>> all = new HashMap<>(readings);
        all.put(zone, others);
        return new RandomCase(part, events, all, worstCase, rules, moment);
    }

    /** The same with all its air changed. */
    RandomCase withAir(UnaryOperator<Air> change) {
        RandomCase changed = withWorstCase(worstCase.map(change));
        for (Zone zone : readings.keySet()) {
            changed = changed.withReadings(
                    zone,
                    readings.get(zone).stream()
                            .map(reading -> new ZoneLog.Reading(reading.at(), change.apply(reading.air())))
                            .toList());
        }
        return changed;
    }

    RandomCase with(List<Event> others) {
        return new RandomCase(part, others, readings, worstCase, rules, moment);
    }

    RandomCase at(Instant other) {
        return new RandomCase(part, events, readings, worstCase, rules, other);
    }

    RandomCase withBody(UnaryOperator<Body> change) {
        return with(new Part(
                part.ratings(), change.apply(part.body()), part.maker(), part.maxBake(), part.carrier(), part.prior()));
    }

    RandomCase withRatings(List<Rating> ratings) {
        return with(new Part(ratings, part.body(), part.maker(), part.maxBake(), part.carrier(), part.prior()));
    }

    /** The same with every event of a kind changed. */
    <E extends Event> RandomCase withEach(Class<E> kind, UnaryOperator<E> change) {
        return with(events.stream()
                .map(event -> kind.isInstance(event) ? (Event) change.apply(kind.cast(event)) : event)
                .toList());
    }

    boolean has(Class<? extends Event> kind) {
        return events.stream().anyMatch(kind::isInstance);
    }

    Timeline timeline() {
        return Timeline.of(events).fold(timeline -> timeline, refusals -> {
            throw new AssertionError("not a history: " + refusals + " in " + events);
        });
    }

    Whereabouts whereabouts() {
        return timeline().whereabouts();
    }

    Instant lastEventAt() {
        return events.isEmpty() ? moment : events.get(events.size() - 1).at();
    }

    ClimateLog climate() {
        Map<Zone, ZoneLog> logs = new HashMap<>();
        readings.forEach((zone, list) -> logs.put(zone, ZoneLog.of(list)));
        return new ClimateLog(logs, Map.of(), worstCase);
    }

    private PartHistory history() {
        return new PartHistory(part, timeline(), climate(), rules, moment);
    }

    Answer answer() {
        return Assess.of(Story.STANDARD, new Question(history(), Optional.empty()));
    }

    Answer answer(HeatPlan plan) {
        return Assess.of(Story.STANDARD, new Question(history(), Optional.of(plan)));
    }

    HeatPlan plan(Duration length, Optional<Double> peak, Optional<HeatPlan.Purpose> purpose, Optional<Boolean> local) {
        return new HeatPlan(moment, length, peak.map(Celsius::new), purpose, local);
    }

    /** A placement of this length to a mild peak. */
    HeatPlan placement(Duration length) {
        return plan(length, Optional.of(MILD_PEAK), Optional.of(HeatPlan.Purpose.PLACEMENT), Optional.of(false));
    }
}
