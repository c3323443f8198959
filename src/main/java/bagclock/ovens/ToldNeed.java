package bagclock.ovens;

import java.time.Instant;

/**
 * By when an item was needed before anybody looked at the pages of the ovens.
 *
 * @param weight how much an hour late counts, 1 (usual) to 100
 */
public record ToldNeed(String tag, Instant by, int weight) {}
