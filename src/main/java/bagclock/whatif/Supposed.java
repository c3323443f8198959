package bagclock.whatif;

import bagclock.core.Outcome;
import bagclock.core.estimate.Beside;
import bagclock.core.estimate.Estimates;
import bagclock.core.exposure.Air;
import bagclock.core.exposure.ClimateLog;
import bagclock.core.exposure.Event;
import bagclock.core.exposure.HumidityCard;
import bagclock.core.exposure.PartHistory;
import bagclock.core.exposure.Place;
import bagclock.core.exposure.Timeline;
import bagclock.core.exposure.Zone;
import bagclock.core.exposure.ZoneLog;
import bagclock.core.heat.Answer;
import bagclock.core.heat.Assess;
import bagclock.core.heat.Question;
import bagclock.core.heat.Verdict;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.core.standard.Standard;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A part's history with something supposed at its end. A bag that is closed counts as opened with a dry card where the
 * supposition needs it open. Pure; what can't be supposed, because the part is in an oven, is refused by the timeline.
 */
record Supposed(Standard standard, PartHistory history) {
    /** The model is not run further ahead. */
    private static final Duration FURTHEST = Duration.ofDays(400);

    private static final Zone SUPPOSED = new Zone("supposed");
    private static final HumidityCard DRY = new HumidityCard(Map.of(5.0, true, 10.0, true, 60.0, true));

    /**
     * What the rules answer, and what the model says beside it.
     *
     * @param beside at the moment that the answer is about
     * @param then at the end of the floor life where one is asked for, else the same
     * @param at the moment of {@code then}
     */
    record Result(Answer answer, Beside beside, Beside then, Instant at) {
        private Result(Answer answer, Beside beside, Instant at) {
            this(answer, beside, beside, at);
        }
    }

    /** As it is, at a moment. */
    Result asItIs(Instant moment) {
        return result(history.timeline(), history.climate(), moment);
    }

    /** From now on in this air, as a logger there would read it. */
    Outcome<Result> inAir(Air air) {
        Instant now = history.moment();
        List<Event> events = opened();
        events.add(new Event.ToFloor(now, Optional.of(SUPPOSED)));
        Map<Zone, ZoneLog> zones = new HashMap<>(history.climate().zones());
        zones.put(SUPPOSED, ZoneLog.of(List.of(new ZoneLog.Reading(now, air))));
        Map<Zone, Air> worstCases = new HashMap<>(history.climate().worstCases());
        worstCases.put(SUPPOSED, air);
        ClimateLog climate = new ClimateLog(zones, worstCases, history.climate().worstCase());
        return Timeline.of(events)
                .fold(timeline -> Outcome.accepted(untilTheEnd(timeline, climate, now)), Outcome.Refused::new);
    }

    /** How long it lasts is asked, so the model is asked about the end. */
    private Result untilTheEnd(Timeline timeline, ClimateLog climate, Instant now) {
        Result result = result(timeline, climate, now);
        return result.answer()
                .floorLife()
                .endsAt()
                .filter(end -> result.answer().verdict() == Verdict.CLEAR && end.isAfter(now))
                .filter(end -> end.isBefore(now.plus(FURTHEST)))
                .map(end -> new Result(
                        result.answer(), result.beside(), Estimates.of(standard, at(timeline, climate, end)), end))
                .orElse(result);
    }

    /** From now on in a cabinet that keeps its class, and out again at a later moment to where it was. */
    Outcome<Result> inCabinet(Place.CabinetClass limit, Instant until) {
        List<Event> events = opened();
        Optional<RelativeHumidity> humidity = Optional.of(limit.limit());
        events.add(new Event.ToDryStorage(history.moment(), humidity, Optional.empty()));
        events.add(new Event.ToFloor(until, Optional.empty()));
        return Timeline.of(events)
                .fold(timeline -> Outcome.accepted(result(timeline, history.climate(), until)), Outcome.Refused::new);
    }

    /** Whether the part is in a closed bag, which counts as opened. */
    boolean opensBag() {
        return history.timeline().whereabouts().place() instanceof Place.Bag;
    }

    private List<Event> opened() {
        List<Event> events = new ArrayList<>(history.timeline().events());
        if (opensBag()) {
            Instant now = history.moment();
            events.add(new Event.Opened(now, Optional.of(DRY), Optional.of(now), Optional.of(true), Optional.empty()));
        }
        return events;
    }

    private Result result(Timeline timeline, ClimateLog climate, Instant moment) {
        PartHistory supposed = at(timeline, climate, moment);
        return new Result(
                Assess.of(standard, new Question(supposed, Optional.empty())),
                Estimates.of(standard, supposed),
                moment);
    }

    private PartHistory at(Timeline timeline, ClimateLog climate, Instant moment) {
        return new PartHistory(history.part(), timeline, climate, history.rules(), moment);
    }
}
