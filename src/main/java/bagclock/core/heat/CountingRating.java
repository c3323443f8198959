package bagclock.core.heat;

import bagclock.core.quantity.Celsius;
import bagclock.core.standard.Body;
import bagclock.core.standard.Citation;
import bagclock.core.standard.Cited;
import bagclock.core.standard.Part;
import bagclock.core.standard.Rating;
import bagclock.core.standard.Standard;
import bagclock.core.standard.Status;
import java.util.Comparator;
import java.util.Optional;

/**
 * The rating that counts for a heat: the one with the lowest peak that still reaches the planned peak; with no planned
 * peak, or one above all, the strictest.
 *
 * @param peak rated peak, by the label or by classification of the body
 * @param reached false if the planned peak lies above every rating
 */
record CountingRating(Rating rating, Cited<Celsius> peak, boolean reached) {
    private static final Comparator<CountingRating> BY_PEAK =
            Comparator.comparing(one -> one.peak().value());
    private static final Comparator<CountingRating> BY_LEVEL =
            Comparator.comparingInt(one -> one.rating.level().map(Enum::ordinal).orElse(Integer.MAX_VALUE));

    static CountingRating of(Standard standard, Part part, Optional<Celsius> plannedPeak) {
        var all = part.ratings().stream()
                .map(rating -> new CountingRating(rating, peak(standard, part.body(), rating), true))
                .toList();
        CountingRating strictest =
                all.stream().min(BY_LEVEL.reversed().thenComparing(BY_PEAK)).orElseThrow();
        if (plannedPeak.isEmpty()) {
            return strictest;
        }
        return all.stream()
                .filter(one -> !plannedPeak.get().isAbove(one.peak.value()))
                .min(BY_PEAK.thenComparing(BY_LEVEL.reversed()))
                .orElse(new CountingRating(strictest.rating, strictest.peak, false));
    }

    private static Cited<Celsius> peak(Standard standard, Body body, Rating rating) {
        return rating.peak()
                .map(peak -> new Cited<>(peak, new Citation("the part's label", "rated peak", "", "", Status.SEEN, "")))
                .orElseGet(() -> standard.classification(body.leadFree(), body.thickness(), body.volumeMm3()));
    }
}
