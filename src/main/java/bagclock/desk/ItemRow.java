package bagclock.desk;

import bagclock.core.exposure.ClockState;
import bagclock.ledger.Item;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.Optional;

/**
 * One line of a list of items.
 *
 * @param level as the label prints it, empty text if unknown
 * @param clock at the strictest rating
 * @param totalHours floor life; empty if unlimited or none
 * @param usedHours used up; of an item that runs: when the row was last worked out
 * @param endsAt when the floor life, or a time after a bake, ends or ended if it stays where it is; empty if it does not
 *     run. Unknown history: when it became so
 * @param validUntil when the row must be worked out again
 */
public record ItemRow(
        Item item,
        String level,
        ClockState clock,
        Optional<BigDecimal> totalHours,
        Optional<BigDecimal> usedHours,
        Optional<Instant> endsAt,
        Optional<Instant> validUntil) {
    /** Whether the floor life had run out at a moment. */
    public boolean hasEndedBy(Instant moment) {
        return endsAt.filter(end -> end.isBefore(moment)).isPresent();
    }

    boolean isCertainAt(Instant moment) {
        return item.ended()
                || (!hasEndedBy(moment)
                        && validUntil.filter(until -> until.isBefore(moment)).isEmpty());
    }

    ItemRow with(ClockRow row) {
        return new ItemRow(
                item,
                level,
                ClockState.valueOf(row.state()),
                Optional.ofNullable(row.totalH()),
                Optional.ofNullable(row.usedH()),
                Optional.ofNullable(row.endsMs()).map(Instant::ofEpochMilli),
                Optional.empty());
    }
}
