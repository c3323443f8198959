package bagclock.ledger;

import java.time.Instant;

/**
 * Who says so, and when it is written down.
 *
 * @param key the command's idempotency key
 */
public record Stamp(String who, Instant recordedAt, String key) {}
