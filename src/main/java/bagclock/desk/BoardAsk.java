package bagclock.desk;

import bagclock.core.heat.HeatPlan;
import bagclock.core.quantity.Celsius;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * A heat that is planned on a board.
 *
 * @param location that is worked on; empty text for a heat of the whole board
 * @param placed tag of the item that a placement puts there; empty for a part of its type of which nothing is known
 * @param profile id of the heat profile to go by
 * @param peak planned peak of the part that is worked on, where no profile says it; in a heat of the whole board of
 *     every body that no profile says to be hotter
 */
public record BoardAsk(
        String serial,
        String location,
        HeatPlan.Purpose purpose,
        Optional<String> placed,
        Optional<String> profile,
        Optional<Celsius> peak,
        Duration length,
        Instant at) {
    /** A heat at a location that nobody named: every body whose peak is not measured counts. */
    public static BoardAsk everywhere(String serial, HeatPlan plan) {
        return new BoardAsk(
                serial,
                "",
                plan.purpose().orElse(HeatPlan.Purpose.WHOLE_BOARD),
                Optional.empty(),
                Optional.empty(),
                plan.peakBody(),
                plan.length(),
                plan.at());
    }

    /** All heats but those of a whole board stay at their location. */
    HeatPlan plan() {
        boolean local = purpose != HeatPlan.Purpose.WHOLE_BOARD;
        return new HeatPlan(at, length, peak, Optional.of(purpose), Optional.of(local));
    }
}
