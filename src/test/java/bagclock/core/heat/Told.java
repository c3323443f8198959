package bagclock.core.heat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.Optional;

/** An answer in short, so that a test reads as one line. */
final class Told {
    private Told() {}

    static double used(Answer answer) {
        return round(answer.floorLife().usedHours());
    }

    static Optional<Double> total(Answer answer) {
        return answer.floorLife().totalHours().map(Told::round);
    }

    static Optional<Double> left(Answer answer) {
        return answer.floorLife().remainingHours().map(Told::round);
    }

    /** In hours since the start. */
    static Optional<Double> endsAt(Answer answer) {
        return hour(answer.floorLife().endsAt());
    }

    /** In hours since the start. */
    static Optional<Double> until(Answer answer) {
        return hour(answer.until());
    }

    private static Optional<Double> hour(Optional<Instant> instant) {
        return instant.map(Story::hour);
    }

    /** The hours of the bake at this temperature, allowed or not. */
    static Optional<Double> bakeHours(Answer answer, double celsius) {
        return offer(answer, celsius).map(offer -> offer.time().toMillis() / 3_600_000.0);
    }

    static Optional<BakeOffer> offer(Answer answer, double celsius) {
        return answer.bakes().stream()
                .filter(bake -> bake.temperature().degrees() == celsius)
                .findFirst();
    }

    static boolean allows(Answer answer, double celsius) {
        return offer(answer, celsius).filter(BakeOffer::isAllowed).isPresent();
    }

    /** The deciding reason. */
    static FindingCode because(Answer answer) {
        return answer.reasons().get(0).code();
    }

    private static double round(BigDecimal hours) {
        return hours.setScale(6, RoundingMode.HALF_UP).doubleValue();
    }
}
