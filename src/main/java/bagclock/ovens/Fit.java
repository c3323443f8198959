package bagclock.ovens;

import bagclock.core.exposure.Place;
import bagclock.core.heat.BakeOffer;
import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.desk.ItemView;
import java.util.List;
import java.util.Optional;

/** Whether an item may go into an oven at a set-point: only with a bake that its answer allows there. */
final class Fit {
    private final OvenWords words;
    private final Celsius setPoint;
    private final Optional<RelativeHumidity> shown;

    /**
     * A set-point.
     *
     * @param shown humidity at or below which the oven was shown to stay
     */
    Fit(OvenWords words, Celsius setPoint, Optional<RelativeHumidity> shown) {
        this.words = words;
        this.setPoint = setPoint;
        this.shown = shown;
    }

    /** What speaks against it, in words; empty if nothing does. */
    Optional<String> objection(ItemView view) {
        Place place = view.timeline().whereabouts().place();
        if (view.item().ended()) {
            return Optional.of(words.text("ovens.fit.ended"));
        } else if (place instanceof Place.Bag) {
            return Optional.of(words.text("ovens.fit.bag"));
        } else if (place instanceof Place.Oven) {
            return Optional.of(words.text("ovens.fit.oven"));
        }
        List<BakeOffer> here = view.answer().bakes().stream()
                .filter(offer -> offer.temperature().equals(setPoint))
                .toList();
        if (here.isEmpty()) {
            return Optional.of(otherwise(view, words.text("ovens.fit.no-programme")));
        }
        List<BakeOffer> allowed = here.stream().filter(BakeOffer::isAllowed).toList();
        if (allowed.isEmpty()) {
            return Optional.of(otherwise(view, words.bars(here.get(0))));
        }
        boolean dryEnough = allowed.stream()
                .anyMatch(offer -> words.humidityMissing(offer, shown).isEmpty());
        return dryEnough ? Optional.empty() : words.humidityMissing(allowed.get(0), shown);
    }

    private String otherwise(ItemView view, String why) {
        String allowed = String.join("; ", words.allowed(view.answer()));
        String other = allowed.isEmpty() ? words.text("ovens.fit.none") : words.text("ovens.fit.others", allowed);
        return why + " " + other;
    }
}
