package bagclock.core.oven;

import bagclock.core.quantity.Celsius;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Why a lot is late in a plan, and what would make it on time.
 *
 * @param aloneOutAt when it would be out with all ovens to itself
 * @param remedies each by itself makes it on time; empty if none of those that are tried does
 */
public record WhyLate(String lot, Cause cause, Instant aloneOutAt, List<Remedy> remedies) {
    /** What makes it late. */
    public enum Cause {
        /** It would be late with all ovens to itself. */
        LATE_EVEN_ALONE,
        /** Other lots hold the ovens that it can go to. */
        OVENS_TAKEN
    }

    /** What would make it on time. */
    public sealed interface Remedy {
        /** Into an oven before the others. */
        record FirstPlace(String oven, Instant outAt) implements Remedy {}

        /** A carrier that bears a hotter bake. */
        record HotterCarrier(Celsius temperature, Instant outAt) implements Remedy {}

        /** Ready earlier. */
        record ReadyBy(Instant at) implements Remedy {}

        /** An oven back in service. */
        record OvenBack(String oven, Instant outAt) implements Remedy {}
    }

    /** Keeps its own copy. */
    public WhyLate {
        remedies = List.copyOf(remedies);
    }

    /**
     * Of a lot that a plan for the shop has late.
     *
     * @param barredByCarrier bakes that only its carrier does not bear
     */
    public static WhyLate of(Shop shop, Lot lot, List<Programme> barredByCarrier) {
        Instant due = lot.wish().neededBy().orElse(Instant.MAX);
        Instant alone = firstOut(shop, lot).orElse(Instant.MAX);
        List<Remedy> remedies = new ArrayList<>();
        if (!alone.isAfter(due)) {
            firstPlaces(shop, lot, due).forEach(remedies::add);
        } else {
            readyBy(shop, lot, due).ifPresent(remedies::add);
        }
        for (Programme hotter : barredByCarrier) {
            Lot other = new Lot(lot.tag(), lot.positions(), List.of(hotter), lot.ovens(), lot.wish());
            firstOut(shop, other)
                    .filter(out -> !out.isAfter(due))
                    .ifPresent(out -> remedies.add(new Remedy.HotterCarrier(hotter.temperature(), out)));
        }
        for (Oven oven : shop.ovens()) {
            ovenBack(shop, lot, oven, due).ifPresent(remedies::add);
        }
        return new WhyLate(lot.tag(), alone.isAfter(due) ? Cause.LATE_EVEN_ALONE : Cause.OVENS_TAKEN, alone, remedies);
    }

    private static List<Remedy> firstPlaces(Shop shop, Lot lot, Instant due) {
        List<Remedy> places = new ArrayList<>();
        for (Oven oven : shop.ovens()) {
            firstOut(withOvens(shop, List.of(oven)), lot)
                    .filter(out -> !out.isAfter(due))
                    .ifPresent(out -> places.add(new Remedy.FirstPlace(oven.code(), out)));
        }
        return places;
    }

    /** By when it would have to be ready, with an oven waiting for it. */
    private static Optional<Remedy> readyBy(Shop shop, Lot lot, Instant due) {
        Optional<Duration> shortest = shop.ovens().stream()
                .filter(lot::mayGoTo)
                .flatMap(oven -> lot.programmes().stream()
                        .filter(one -> one.fits(oven))
                        .map(one -> oven.doorShutFor(one.least())))
                .min(Duration::compareTo);
        return shortest.map(due::minus).filter(at -> at.isAfter(shop.now())).map(Remedy.ReadyBy::new);
    }

    private static Optional<Remedy> ovenBack(Shop shop, Lot lot, Oven oven, Instant due) {
        Oven.Habits habits = oven.habits();
        if (habits.outOfService().isEmpty()) {
            return Optional.empty();
        }
        Oven back = new Oven(
                oven.code(),
                oven.lowest(),
                oven.highest(),
                oven.positions(),
                oven.holds(),
                new Oven.Habits(habits.heatUp(), habits.coolDown(), habits.changes(), habits.last(), List.of()));
        boolean isInTimeNow = firstOut(withOvens(shop, List.of(oven)), lot)
                .filter(out -> !out.isAfter(due))
                .isPresent();
        return firstOut(withOvens(shop, List.of(back)), lot)
                .filter(out -> !isInTimeNow && !out.isAfter(due))
                .map(out -> new Remedy.OvenBack(oven.code(), out));
    }

    private static Shop withOvens(Shop shop, List<Oven> ovens) {
        return new Shop(shop.now(), ovens, shop.lots(), shop.frozen(), shop.customs());
    }

    private static Optional<Instant> firstOut(Shop shop, Lot lot) {
        List<Run> others = shop.frozen().stream()
                .filter(run -> !run.lots().contains(lot.tag()))
                .filter(run -> shop.ovensByCode().containsKey(run.oven()))
                .toList();
        ShopInMinutes alone =
                ShopInMinutes.of(new Shop(shop.now(), shop.ovens(), List.of(lot), others, shop.customs()));
        int out = new Alone(alone.problem()).firstOut(0);
        return out >= Problem.NEVER ? Optional.empty() : Optional.of(alone.moment(out));
    }
}
