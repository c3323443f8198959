package bagclock.core.heat;

import bagclock.core.exposure.ClockReading;
import bagclock.core.exposure.ClockReading.Fault;
import bagclock.core.exposure.Event;
import bagclock.core.exposure.FoldedHistory;
import bagclock.core.exposure.HumidityCard;
import bagclock.core.exposure.PartHistory;
import bagclock.core.exposure.Place;
import bagclock.core.standard.Level;
import bagclock.core.standard.MakerRules;
import java.time.Instant;
import java.time.ZoneOffset;
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
        Optional<Bag> bag = lastBag(history);
        return bag.filter(one -> one.endsAt().isBefore(one.openedAt()))
                .map(one -> Finding.of(FindingCode.SHELF_LIFE_PASSED, one.endsAt()));
    }

    private static Optional<Finding> old(PartHistory history) {
        return lastBag(history)
                .filter(one -> plusMonths(one.closedAt(), SOLDERABILITY_MONTHS).isBefore(one.openedAt()))
                .map(one -> Finding.of(FindingCode.CHECK_SOLDERABILITY, one.closedAt()));
    }

    private record Bag(Instant closedAt, Instant endsAt, Instant openedAt) {}

    private static Optional<Bag> lastBag(PartHistory history) {
        int usual = history.part().maker().shelfMonths().orElse(MakerRules.USUAL_SHELF_MONTHS);
        Optional<Bag> bag = Optional.empty();
        for (Event event : history.timeline().events()) {
            if (event instanceof Event.Sealed sealed) {
                int months = sealed.shelfMonths().orElse(usual);
                bag = Optional.of(new Bag(sealed.at(), plusMonths(sealed.at(), months), history.moment()));
            } else if (event instanceof Event.Resealed again) {
                bag = Optional.of(new Bag(again.at(), plusMonths(again.at(), usual), history.moment()));
            } else if (event instanceof Event.Opened opened) {
                bag = bag.map(one -> new Bag(one.closedAt(), one.endsAt(), opened.at()));
            }
        }
        return bag;
    }

    private static Instant plusMonths(Instant from, int months) {
        return from.atZone(ZoneOffset.UTC).plusMonths(months).toInstant();
    }
}
