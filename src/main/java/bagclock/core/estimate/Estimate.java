package bagclock.core.estimate;

import java.time.Instant;
import java.util.List;

/**
 * Moisture in a part as the model has it. An estimate: it changes no answer.
 *
 * @param dryAt from when it was followed: dry by the rules
 * @param curve from the first stay in a room's air to the moment, ascending; the last one is the moment's
 */
public record Estimate(Instant dryAt, List<Point> curve) {
    /** Keeps its own copy. */
    public Estimate {
        curve = List.copyOf(curve);
    }

    /** One moment. */
    public record Point(Instant at, Band sealedFace, Band mean) {}

    /** At the moment asked about. */
    public Point last() {
        return curve.get(curve.size() - 1);
    }
}
