package bagclock.core.oven;

import bagclock.core.Reason;
import bagclock.core.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A shop that can be planned, and what could not be taken as it was: nothing is left out in silence.
 *
 * @param named lots that no oven can take, ovens that are told in a way that can't be, due times that are past
 */
public record Intake(Shop shop, List<Refusal> named) {
    /** Keeps its own copy. */
    public Intake {
        named = List.copyOf(named);
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
        for (Lot lot : usable.free()) {
            refusal(lot, usable).ifPresent(refusal -> {
                named.add(refusal);
                lots.remove(lot);
            });
        }
        for (Lot lot : lots) {
            lot.wish()
                    .neededBy()
                    .filter(due -> due.isBefore(told.now()))
                    .ifPresent(due -> named.add(Refusal.of(Reason.DUE_IS_PAST, lot.tag(), due)));
        }
        return new Intake(new Shop(told.now(), ovens, lots, told.frozen(), told.customs()), named);
    }

    private static Optional<Refusal> refusal(Lot lot, Shop shop) {
        if (lot.positions() < 1) {
            return Optional.of(Refusal.of(Reason.LOT_WITHOUT_POSITIONS, lot.tag()));
        }
        ShopInMinutes alone =
                ShopInMinutes.of(new Shop(shop.now(), shop.ovens(), List.of(lot), shop.frozen(), shop.customs()));
        boolean fits = new Alone(alone.problem()).firstOut(0) < Problem.NEVER;
        return fits ? Optional.empty() : Optional.of(Refusal.of(why(lot, shop), lot.tag()));
    }

    private static Reason why(Lot lot, Shop shop) {
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
