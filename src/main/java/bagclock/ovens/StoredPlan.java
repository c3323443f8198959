package bagclock.ovens;

import bagclock.core.oven.Bounds;
import bagclock.core.oven.Plan;
import bagclock.core.oven.Score;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A plan with what is known about it.
 *
 * @param basedOn the plan that was published when it was made
 * @param madeAt from when on it plans
 * @param publishedAt empty: a draft
 * @param pinned tags of lots whose runs stay
 * @param changes what it supposes
 */
record StoredPlan(
        String id,
        Optional<String> basedOn,
        Instant madeAt,
        Optional<Instant> publishedAt,
        Search search,
        Score score,
        Bounds bounds,
        Plan plan,
        Set<String> pinned,
        List<PlanChange> changes) {
    /** How far the search for a better plan, and for the proof, has come. */
    enum Search {
        SEARCHING,
        DONE,
        BROKEN_OFF,
        NO_LIBRARY,
        NOT_FOR_OPENED_DOORS
    }
}
