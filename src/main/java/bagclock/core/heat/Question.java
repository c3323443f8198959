package bagclock.core.heat;

import bagclock.core.exposure.PartHistory;
import bagclock.core.standard.CarrierLimit;
import java.util.Optional;

/**
 * The question whether a part may be heated.
 *
 * @param heat the plan, starting at the history's moment; without one the answer is for a pass of no length to the
 *     counting rating's peak, now
 * @param heldBy the limit of the board that the part is on, in place of its carrier's; empty for a part by itself
 */
public record Question(PartHistory history, Optional<HeatPlan> heat, Optional<CarrierLimit> heldBy) {
    /** Refuses a plan that starts at another moment than the one asked about. */
    public Question {
        if (heat.isPresent() && !heat.get().at().equals(history.moment())) {
            throw new IllegalArgumentException("the heat must start at the moment asked about");
        }
    }

    /** About a part by itself. */
    public Question(PartHistory history, Optional<HeatPlan> heat) {
        this(history, heat, Optional.empty());
    }
}
