package bagclock.register;

import java.time.Instant;

/**
 * One version of a fact.
 *
 * @param number 1 for the first
 * @param validFrom from when on it holds, until a version with a later start
 * @param who id of the person who entered it
 */
public record Version(int number, Instant validFrom, Instant recordedAt, String who) {}
