package bagclock.core.exposure;

import java.util.Map;
import java.util.TreeMap;

/**
 * A humidity indicator card as read at an opening.
 *
 * @param spots the spot's humidity (%RH) and whether it shows dry; between the colours counts as wet
 */
public record HumidityCard(Map<Double, Boolean> spots) {
    /** What a card says about a needed humidity. */
    public enum Word {
        DRY,
        WET,
        NO_PROOF
    }

    /** Keeps its own copy of the spots. */
    public HumidityCard {
        spots = Map.copyOf(new TreeMap<>(spots));
    }

    /**
     * A wet spot at or above the needed value is wet; else a dry spot at or below it proves the bag dry.
     *
     * @param neededPercent the deciding spot (%RH): 60 for level 2, 10 for levels 2a to 5a (J-STD-033D, 3.3.4)
     */
    public Word says(double neededPercent) {
        boolean wet = spots.entrySet().stream().anyMatch(spot -> spot.getKey() >= neededPercent && !spot.getValue());
        if (wet) {
            return Word.WET;
        }
        boolean dry = spots.entrySet().stream().anyMatch(spot -> spot.getKey() <= neededPercent && spot.getValue());
        return dry ? Word.DRY : Word.NO_PROOF;
    }

    /** Any spot shows wet. */
    public boolean hasWetSpot() {
        return spots.containsValue(false);
    }
}
