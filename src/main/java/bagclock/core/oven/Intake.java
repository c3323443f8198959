package bagclock.core.oven;

import bagclock.core.Reason;
import bagclock.core.Refusal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A shop that can be planned, and what could not be taken as it was: nothing is left out in silence.
 *
 * @param named lots that no oven can take, ovens that are told in a way that can't be, due times that are past
 * @param firstOut when each free lot could be out if it had the ovens for itself, by tag
 */
public record Intake(Shop shop, List<Refusal> named, Map<String, Instant> firstOut) {
    /** Keeps its own copies. */
    public Intake {
        named = List.copyOf(named);
        firstOut = Map.copyOf(firstOut);
    }

    /** Sorts out what can be planned. A lot that is needed by a time past stays in the plan, and is named. */
    public static Intake of(Shop told) {
        List<Refusal> named = new ArrayList<>();
        List<Oven> ovens = new ArrayList<>();
        for (Oven oven : told.ovens()) {
            if (oven.positions() < 1) {
                named.add(Refusal.of(Reason.OVEN_WITHOUT_POSITIONS, oven.code()));
            } else if (Span.anyOverlap(oven.habits().outOfService())) {
                named.add(Refusal.of(Reason.SPANS_OVERLAP, oven.code()));
            } else {
                ovens.add(oven);
            }
        }
        Shop usable = new Shop(told.now(), ovens, told.lots(), told.frozen(), told.customs());
        List<Lot> lots = new ArrayList<>(told.lots());
        Map<String, Instant> firstOut = new HashMap<>();
        for (Lot lot : usable.free()) {
            Optional<Instant> out = firstOut(lot, usable);
            if (out.isPresent()) {
                firstOut.put(lot.tag(), out.get());
            } else {
                named.add(Refusal.of(why(lot, usable), lot.tag()));
                lots.remove(lot);
            }
        }
        for (Lot lot : lots) {
            lot.wish()
                    .neededBy()
                    .filter(due -> due.isBefore(told.now()))
                    .ifPresent(due -> named.add(Refusal.of(Reason.DUE_IS_PAST, lot.tag(), due)));
        }
        return new Intake(new Shop(told.now(), ovens, lots, told.frozen(), told.customs()), named, firstOut);
    }

    /**
     * The same, each free lot that nobody needs by a time being needed so long after it could be out at the earliest: else
     * it might wait for months to save one run.
     */
    public Intake patientFor(Duration patience) {
        List<Lot> lots = shop.lots().stream()
                .map(lot -> lot.wish().neededBy().isPresent() || !firstOut.containsKey(lot.tag())
                        ? lot
                        : lot.neededBy(Optional.of(firstOut.get(lot.tag()).plus(patience))))
                .toList();
        return new Intake(new Shop(shop.now(), shop.ovens(), lots, shop.frozen(), shop.customs()), named, firstOut);
    }

    private static Optional<Instant> firstOut(Lot lot, Shop shop) {
        if (lot.positions() < 1) {
            return Optional.empty();
        }
        ShopInMinutes alone =
                ShopInMinutes.of(new Shop(shop.now(), shop.ovens(), List.of(lot), shop.frozen(), shop.customs()));
        int out = new Alone(alone.problem()).firstOut(0);
        return out < Problem.NEVER ? Optional.of(alone.moment(out)) : Optional.empty();
    }

    private static Reason why(Lot lot, Shop shop) {
        if (lot.positions() < 1) {
            return Reason.LOT_WITHOUT_POSITIONS;
        }
        boolean hasRoom = shop.ovens().stream().anyMatch(lot::mayGoTo);
        if (!hasRoom) {
            return Reason.LOT_TOO_LARGE;
        }
        boolean fits = shop.ovens().stream()
                .filter(lot::mayGoTo)
                .anyMatch(oven -> lot.programmes().stream().anyMatch(one -> one.fits(oven)));
        return fits ? Reason.LOT_HAS_NO_TIME : Reason.LOT_FITS_NO_OVEN;
    }
}
