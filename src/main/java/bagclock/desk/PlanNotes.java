package bagclock.desk;

import bagclock.core.heat.HeatPlan;
import bagclock.core.quantity.Celsius;
import bagclock.ledger.Notes;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;

/** A planned heat as it is noted beside entries. */
final class PlanNotes {
    private PlanNotes() {}

    static Map<String, String> of(HeatPlan plan) {
        return Map.of(
                Notes.PURPOSE, plan.purpose().map(HeatPlan.Purpose::code).orElse(""),
                Notes.LENGTH, plan.length().toString(),
                Notes.LOCAL, plan.local().map(Object::toString).orElse(""),
                Notes.PLANNED_PEAK,
                        plan.peakBody()
                                .map(peak -> Double.toString(peak.degrees()))
                                .orElse(""));
    }

    /** The heat that was noted, begun at a moment. */
    static HeatPlan read(Map<String, String> notes, Instant at) {
        return new HeatPlan(
                at,
                Duration.parse(notes.getOrDefault(Notes.LENGTH, Duration.ZERO.toString())),
                text(notes, Notes.PLANNED_PEAK).map(Double::valueOf).map(Celsius::new),
                text(notes, Notes.PURPOSE).flatMap(HeatPlan.Purpose::parse),
                text(notes, Notes.LOCAL).map(Boolean::valueOf));
    }

    private static Optional<String> text(Map<String, String> notes, String name) {
        return Optional.ofNullable(notes.get(name)).filter(text -> !text.isEmpty());
    }
}
