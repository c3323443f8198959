package bagclock.core.proof;

import bagclock.core.quantity.RelativeHumidity;
import java.util.Optional;

/**
 * What a bake asks of its oven.
 *
 * @param maxHumidity what the air in it must not pass; empty where nothing is asked
 * @param humidityKnown whether the oven itself was shown to stay so dry; then a chart without humidity is enough
 */
public record Asked(Band temperature, Optional<RelativeHumidity> maxHumidity, boolean humidityKnown) {}
