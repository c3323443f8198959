package bagclock.core.exposure;

import bagclock.core.quantity.RelativeHumidity;
import java.util.Optional;

/** What kind of place a part is in, as far as the rules tell places apart. */
public sealed interface Place {
    /** In the air of a zone; without a zone in the site's declared worst case. */
    record Floor(Optional<Zone> zone) implements Place {}

    /**
     * In a closed bag.
     *
     * @param dryPack fresh desiccant and card, or closed by the maker; else it is floor time in {@code zone}
     * @param byMaker closed dry, so that a good card at its opening proves the contents dry
     */
    record Bag(boolean dryPack, boolean byMaker, Optional<Zone> zone) implements Place {}

    /** In a dry cabinet at or below 10 %RH; with a zone its log judges it, without one its declared class does. */
    record Cabinet(CabinetClass limit, Optional<Zone> log) implements Place {}

    /** In an oven since a bake began. */
    record Oven(Event.BakeStarted bake) implements Place {}

    /** The two classes of dry storage in J-STD-033D: at or below 5 %RH, and above that up to 10 %RH. */
    enum CabinetClass {
        UP_TO_5(5),
        UP_TO_10(10);

        private final double percent;

        CabinetClass(double percent) {
            this.percent = percent;
        }

        /** The humidity at and below which the cabinet is inside its class. */
        public RelativeHumidity limit() {
            return new RelativeHumidity(percent);
        }

        /** The class that a humidity falls into; empty above 10 %RH, which is no dry storage. */
        public static Optional<CabinetClass> of(RelativeHumidity humidity) {
            for (CabinetClass candidate : values()) {
                if (!humidity.isAbove(candidate.limit())) {
                    return Optional.of(candidate);
                }
            }
            return Optional.empty();
        }
    }
}
