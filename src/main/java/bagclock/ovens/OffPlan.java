package bagclock.ovens;

import bagclock.core.oven.PlanMatch;
import java.time.Instant;

/**
 * A lot that went into an oven otherwise than the published plan said.
 *
 * @param plan id of the plan that it was compared with
 */
public record OffPlan(String oven, Instant loadedAt, String tag, String plan, PlanMatch how) {}
