package bagclock.core.standard;

import bagclock.core.quantity.RelativeHumidity;
import java.time.Duration;
import java.util.Optional;

/**
 * How dry storage acts on the clock of a level (J-STD-033D, table 4-3).
 *
 * @param maxExposure longest exposure at or below 30 C / 60 %RH, inclusive, that a rest resets
 * @param factor length of that rest as a multiple of the exposure
 * @param maxHumidity highest humidity of that rest
 * @param pauseHumidity highest humidity at which the clock pauses; empty for levels that have no pause
 * @param citation of the factor
 */
public record RestRule(
        Duration maxExposure,
        int factor,
        RelativeHumidity maxHumidity,
        Optional<RelativeHumidity> pauseHumidity,
        Citation citation) {}
