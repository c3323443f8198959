package bagclock.core.standard;

import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import java.time.Duration;
import java.util.Optional;

/**
 * A bake that the part's maker prescribes.
 *
 * @param temperature set-point (C)
 * @param time time at temperature
 * @param maxHumidity humidity that the oven must show, empty if the maker asks for none
 * @param carrierLimit a limit that the carrier must bear besides the set-point, empty if the maker names none
 */
public record MakerBake(
        Celsius temperature, Duration time, Optional<RelativeHumidity> maxHumidity, Optional<Celsius> carrierLimit) {}
