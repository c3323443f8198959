package bagclock.core.exposure;

import bagclock.core.exposure.UnknownHistory.Cause;
import bagclock.core.standard.Level;
import java.time.Duration;
import java.util.Optional;

/** What an opening says about the contents: J-STD-033D, humidity indicator card clauses. */
public final class CardRule {
    /** A card turns with the room's air; the figure is the project's own (inference). */
    private static final Duration READ_WITHIN = Duration.ofMinutes(30);

    private static final double LEVEL_2_SPOT = 60;
    private static final double OTHER_SPOT = 10;

    private CardRule() {}

    /** Why the contents cannot be taken as dry; empty if card and bag are good. */
    static Optional<Cause> fault(Event.Opened opened, Level level) {
        if (!opened.sound().orElse(false)) {
            return Optional.of(Cause.BAG_DAMAGED);
        } else if (opened.card().isEmpty()) {
            return Optional.of(Cause.CARD_MISSING);
        } else if (isReadLate(opened)) {
            return Optional.of(Cause.CARD_READ_LATE);
        }
        return switch (opened.card().get().says(neededSpot(level))) {
            case DRY -> Optional.empty();
            case WET -> Optional.of(Cause.CARD_WET);
            case NO_PROOF -> Optional.of(Cause.CARD_WITHOUT_PROOF);
        };
    }

    /** The spot (%RH) that must not show wet: 60 for level 2, 10 for levels 2a to 5a. */
    public static double neededSpot(Level level) {
        return level == Level.L2 ? LEVEL_2_SPOT : OTHER_SPOT;
    }

    private static boolean isReadLate(Event.Opened opened) {
        return opened.cardReadAt()
                .filter(read -> read.isAfter(opened.at().plus(READ_WITHIN)))
                .isPresent();
    }
}
