package bagclock.ledger;

import java.time.Instant;
import java.util.OptionalInt;

/**
 * One line of an item's ledger.
 *
 * @param seq 1 for the first of its item, without holes
 * @param happenedAt when it was so
 * @param stamp who said so and when
 * @param corrects seq of the entry that it replaces or takes back
 * @param payload the text whose UTF-8 bytes were hashed after the previous entry's hash
 */
public record Entry(
        String tag,
        int seq,
        Instant happenedAt,
        Stamp stamp,
        Act act,
        OptionalInt corrects,
        String payload,
        String previousHash,
        String hash) {}
