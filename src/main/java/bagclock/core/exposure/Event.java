package bagclock.core.exposure;

import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.core.standard.CarrierLimit;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Something that happened to a part, in whole milliseconds. Where a value is empty it is not known. */
public sealed interface Event {
    /** When it happened. */
    Instant at();

    /** Dry pack closed by its maker, or by the site straight after a bake that counted; the contents are dry. */
    record Sealed(Instant at, OptionalInt shelfMonths) implements Event {}

    /** Bag opened. An empty card means that none was there or read; {@code sound} empty counts as damaged. */
    record Opened(
            Instant at,
            Optional<HumidityCard> card,
            Optional<Instant> cardReadAt,
            Optional<Boolean> sound,
            Optional<Zone> zone)
            implements Event {}

    /** Out into the air of a zone; as the first event it states that the part was dry. */
    record ToFloor(Instant at, Optional<Zone> zone) implements Event {}

    /** What happened before this moment is not known. */
    record UnknownExposure(Instant at) implements Event {}

    /** Into a dry cabinet: judged by its zone's log where a zone is given, else by its declared humidity. */
    record ToDryStorage(Instant at, Optional<RelativeHumidity> maxHumidity, Optional<Zone> zone) implements Event {}

    /** Bag closed by the site. */
    record Resealed(Instant at, boolean freshDesiccant, boolean freshCard) implements Event {
        /** Desiccant and card both fresh: the bag counts as a dry pack. */
        public boolean isDryPack() {
            return freshDesiccant && freshCard;
        }
    }

    /** Into an oven at a set-point; {@code maxHumidity} is what the oven was shown to hold. */
    record BakeStarted(Instant at, Celsius temperature, Optional<RelativeHumidity> maxHumidity) implements Event {}

    /** Out of the oven, with the time that was spent at temperature. */
    record BakeEnded(Instant at, Optional<Duration> atTemperature) implements Event {}

    /** Removal, placement or reflow pass, with the peak of the body. */
    record Heated(Instant at, Optional<Celsius> peakBody) implements Event {}

    /** Soldered onto a board. */
    record Mounted(Instant at, Optional<Zone> zone) implements Event {}

    /** Off the board again. */
    record Removed(Instant at, Optional<Zone> zone) implements Event {}

    /** Aqueous wash, flood. */
    record Wetted(Instant at) implements Event {}

    /** Into or onto something else: reel, tube, tray, board. */
    record CarrierChanged(Instant at, CarrierLimit limit) implements Event {}

    /** Put together with others; from here on the worse of each value counts. */
    record Joined(Instant at, List<Timeline> others) implements Event {}
}
