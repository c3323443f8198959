package bagclock.register;

import bagclock.core.exposure.Air;
import bagclock.core.exposure.Place.CabinetClass;
import bagclock.core.exposure.Zone;
import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import java.time.Duration;
import java.util.Optional;

/** A place that items are brought to; its code is printed on a label and names its zone. */
public sealed interface KnownPlace {
    /** Unique among all places. */
    String code();

    /** As people call it. */
    String name();

    /** The zone of its readings. */
    default Zone zone() {
        return new Zone(code());
    }

    /** Whether readings are taken here. */
    boolean logged();

    /**
     * A bench or room.
     *
     * @param worstCase the declared worst case; empty: the site's counts
     * @param openBagsUpTo warmer or wetter than this no bag should be opened
     */
    record FloorZone(String code, String name, boolean logged, Optional<Air> worstCase, Optional<Air> openBagsUpTo)
            implements KnownPlace {}

    /** A dry cabinet: judged by its readings if it is logged, else by its class. */
    record DryCabinet(String code, String name, boolean logged, CabinetClass limit) implements KnownPlace {}

    /**
     * An oven.
     *
     * @param positions how many carriers it takes
     * @param holds humidity at or below which it was shown to stay; empty if not shown
     * @param heatUp declared time from closing the door until the load is in band
     * @param pauses what lies between its runs
     */
    record BakeOven(
            String code,
            String name,
            int positions,
            Celsius lowest,
            Celsius highest,
            Optional<RelativeHumidity> holds,
            Duration heatUp,
            Pauses pauses)
            implements KnownPlace {
        /** An oven with the site's pauses. */
        public BakeOven(
                String code,
                String name,
                int positions,
                Celsius lowest,
                Celsius highest,
                Optional<RelativeHumidity> holds,
                Duration heatUp) {
            this(code, name, positions, lowest, highest, holds, heatUp, Pauses.OF_SITE);
        }

        @Override
        public boolean logged() {
            return false;
        }

        /** Whether the set-point lies in its range, both ends included. */
        public boolean reaches(Celsius setPoint) {
            return !setPoint.isAbove(highest) && !lowest.isAbove(setPoint);
        }
    }

    /**
     * What lies between two runs of an oven; where it is empty, the site's rule for plans counts.
     *
     * @param coolDown from the end of a bake until the door may be opened
     * @param turnaround between two runs at one temperature
     * @param change between two runs at different temperatures
     */
    record Pauses(Optional<Duration> coolDown, Optional<Duration> turnaround, Optional<Duration> change) {
        /** All as the site has it. */
        public static final Pauses OF_SITE = new Pauses(Optional.empty(), Optional.empty(), Optional.empty());
    }
}
