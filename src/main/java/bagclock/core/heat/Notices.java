package bagclock.core.heat;

import bagclock.core.exposure.ClockReading;
import bagclock.core.exposure.ClockReading.Fault;
import bagclock.core.exposure.DryPack;
import bagclock.core.exposure.Event;
import bagclock.core.exposure.FoldedHistory;
import bagclock.core.exposure.HumidityCard;
import bagclock.core.exposure.PartHistory;
import bagclock.core.exposure.Place;
import bagclock.core.standard.Level;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a careful answer mentions although it bars nothing. */
final class Notices {
    private static final int SOLDERABILITY_MONTHS = 24;

    private Notices() {}

    static List<Finding> of(PartHistory history, FoldedHistory folded, CountingRating counting) {
        List<Finding> notices = new ArrayList<>();
        ClockReading reading = folded.reading();
        add(notices, reading.has(Fault.LEVEL_1_ABOVE_30_85), FindingCode.LEVEL_1_ABOVE_30_85);
        add(notices, reading.has(Fault.AIR_DECLARED), FindingCode.AIR_DECLARED);
        add(notices, reading.has(Fault.AIR_UNKNOWN), FindingCode.AIR_UNKNOWN);
        add(notices, restsOnDeclaredStorage(history), FindingCode.NOT_LOGGED);
        boolean sensitive = counting.rating().level().filter(l -> l == Level.L1).isEmpty();
        if (sensitive) {
            shelf(history).ifPresent(notices::add);
            old(history).ifPresent(notices::add);
            add(notices, lastCard(history).filter(HumidityCard::hasWetSpot).isPresent(), FindingCode.RENEW_DESICCANT);
        }
        add(notices, !history.part().maker().bakes().isEmpty(), FindingCode.MAKERS_BAKE);
        return notices;
    }

    private static void add(List<Finding> notices, boolean holds, FindingCode code) {
        if (holds) {
            notices.add(Finding.of(code));
        }
    }

    private static boolean restsOnDeclaredStorage(PartHistory history) {
        return history.timeline().events().stream()
                .anyMatch(event -> event instanceof Event.ToDryStorage storage
                        && storage.zone().isEmpty()
                        && storage.maxHumidity().flatMap(Place.CabinetClass::of).isPresent());
    }

    private static Optional<HumidityCard> lastCard(PartHistory history) {
        Optional<HumidityCard> card = Optional.empty();
        for (Event event : history.timeline().events()) {
            if (event instanceof Event.Opened opened) {
                card = opened.card();
            }
        }
        return card;
    }

    /** The first opening, or the moment if the bag is still closed, after the shelf life. */
    private static Optional<Finding> shelf(PartHistory history) {
        Optional<DryPack> bag = DryPack.last(history);
        return bag.filter(one -> one.isPastShelfLife())
                .map(one -> Finding.of(FindingCode.SHELF_LIFE_PASSED, one.shelfEndsAt()));
    }

    private static Optional<Finding> old(PartHistory history) {
        return DryPack.last(history)
                .filter(one -> one.isOlderThan(SOLDERABILITY_MONTHS))
                .map(one -> Finding.of(FindingCode.CHECK_SOLDERABILITY, one.closedAt()));
    }
}
