package bagclock.core.exposure;

import bagclock.core.standard.MakerRules;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;

/**
 * The bag that a part was last closed in.
 *
 * @param shelfEndsAt when its shelf life ends
 * @param openedAt when it was opened; the moment asked about if it is still closed
 */
public record DryPack(Instant closedAt, Instant shelfEndsAt, Instant openedAt) {
    /** The last one of a history; empty if it was in none. Months are those of the calendar (UTC). */
    public static Optional<DryPack> last(PartHistory history) {
        int usual = history.part().maker().shelfMonths().orElse(MakerRules.USUAL_SHELF_MONTHS);
        Optional<DryPack> bag = Optional.empty();
        for (Event event : history.timeline().events()) {
            if (event instanceof Event.Sealed sealed) {
                int months = sealed.shelfMonths().orElse(usual);
                bag = Optional.of(new DryPack(sealed.at(), plusMonths(sealed.at(), months), history.moment()));
            } else if (event instanceof Event.Resealed again) {
                bag = Optional.of(new DryPack(again.at(), plusMonths(again.at(), usual), history.moment()));
            } else if (event instanceof Event.Opened opened) {
                bag = bag.map(one -> new DryPack(one.closedAt(), one.shelfEndsAt(), opened.at()));
            }
        }
        return bag;
    }

    /** Whether it was opened, or is still closed, after its shelf life. */
    public boolean isPastShelfLife() {
        return shelfEndsAt.isBefore(openedAt);
    }

    /** Whether it stayed closed for longer than so many months. */
    public boolean isOlderThan(int months) {
        return plusMonths(closedAt, months).isBefore(openedAt);
    }

    private static Instant plusMonths(Instant from, int months) {
        return from.atZone(ZoneOffset.UTC).plusMonths(months).toInstant();
    }
}
