package bagclock.core.oven;

import bagclock.core.quantity.Celsius;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/** Whether a lot goes into an oven as a plan says; of several differences the first. */
public enum PlanMatch {
    /** In this oven, at this temperature, within {@link #STEADY} of its start. */
    AS_PLANNED,
    /** Planned in another oven. */
    OTHER_OVEN,
    /** Planned in this oven at another temperature. */
    OTHER_TEMPERATURE,
    /** Planned in this oven, more than {@link #STEADY} earlier or later. */
    OTHER_TIME,
    /** In no run of the plan. */
    NOT_PLANNED;

    /** A run that starts so much earlier or later is where it was, as in a plan that is made anew. */
    public static final Duration STEADY = Duration.ofMinutes(Problem.Anchor.STEADY_MIN);

    /** Compares a lot that goes into an oven with a plan. */
    public static PlanMatch of(Plan plan, String lot, String oven, Celsius temperature, Instant at) {
        Optional<Run> run = plan.runOf(lot);
        if (run.isEmpty()) {
            return NOT_PLANNED;
        } else if (!run.get().oven().equals(oven)) {
            return OTHER_OVEN;
        } else if (!run.get().temperature().equals(temperature)) {
            return OTHER_TEMPERATURE;
        }
        Instant planned = plan.stay(lot).orElseThrow().inAt();
        return Duration.between(planned, at).abs().compareTo(STEADY) > 0 ? OTHER_TIME : AS_PLANNED;
    }
}
