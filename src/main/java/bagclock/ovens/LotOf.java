package bagclock.ovens;

import bagclock.core.exposure.Tally;
import bagclock.core.heat.BakeOffer;
import bagclock.core.heat.BakeOffer.BarCode;
import bagclock.core.oven.Lot;
import bagclock.core.oven.Programme;
import bagclock.core.quantity.Celsius;
import bagclock.desk.ItemView;
import bagclock.ovens.Ovens.Waiting;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What waits for a bake, as a plan takes it: the bakes are those that its answer offers. */
final class LotOf {
    private static final Celsius COUNTED_ABOVE = new Celsius(90);
    private static final Duration LEAST_SPARE = Duration.ofHours(8);

    private LotOf() {}

    /** An item takes one position: items are carriers. */
    static Lot waiting(Waiting waiting, Instant now) {
        ItemView view = waiting.view();
        List<Programme> allowed = view.answer().bakes().stream()
                .filter(BakeOffer::isAllowed)
                .map(offer -> programme(view, offer, now))
                .toList();
        return new Lot(
                view.item().tag(), 1, allowed, Set.of(), new Lot.Wish(now, waiting.neededBy(), waiting.weight()));
    }

    /** Bakes that only its carrier does not bear. */
    static List<Programme> barredByCarrier(ItemView view, Instant now) {
        return view.answer().bakes().stream()
                .filter(offer ->
                        !offer.isAllowed() && offer.bars().stream().allMatch(bar -> bar.code() == BarCode.CARRIER))
                .map(offer -> programme(view, offer, now))
                .toList();
    }

    /** A lot that is not in the queue yet. */
    static Lot rush(PlanChange rush, Instant now) {
        Duration least = Duration.ofMinutes(Optional.ofNullable(rush.bakeMin()).orElse(1));
        double degrees = Optional.ofNullable(rush.tempC()).orElse(COUNTED_ABOVE.degrees());
        Programme programme = new Programme(new Celsius(degrees), least, least.plus(LEAST_SPARE), Optional.empty());
        return new Lot(
                rush.name(),
                Optional.ofNullable(rush.positions()).orElse(1),
                List.of(programme),
                Set.of(),
                new Lot.Wish(
                        now,
                        Optional.ofNullable(rush.toAt()),
                        Optional.ofNullable(rush.weight()).orElse(1)));
    }

    private static Programme programme(ItemView view, BakeOffer offer, Instant now) {
        return new Programme(offer.temperature(), offer.time(), most(view, offer, now), offer.maxHumidity());
    }

    /** Waiting for a longer run or for somebody to open the door does no harm for a while, within the hours above 90 C. */
    private static Duration most(ItemView view, BakeOffer offer, Instant now) {
        Duration half = offer.time().dividedBy(2);
        Duration most = offer.time().plus(half.compareTo(LEAST_SPARE) > 0 ? half : LEAST_SPARE);
        if (!offer.temperature().isAbove(COUNTED_ABOVE)) {
            return most;
        } else if (view.item().board().isPresent()) {
            return offer.time();
        }
        Duration left = view.limits()
                .mostAbove90()
                .minus(Tally.of(view.partType().fact().part(), view.timeline(), now)
                        .bakedAbove90());
        Duration borne = most.compareTo(left) > 0 ? left : most;
        return borne.compareTo(offer.time()) < 0 ? offer.time() : borne;
    }
}
