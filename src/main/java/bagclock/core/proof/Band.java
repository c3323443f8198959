package bagclock.core.proof;

import bagclock.core.quantity.Celsius;
import bagclock.core.standard.BakeTimes;
import bagclock.core.standard.Standard;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Within what a value must stay, both ends included.
 *
 * @param least degrees Celsius, or %RH
 * @param most not below {@code least}
 */
public record Band(double least, double most) {
    private static final List<Integer> COLUMNS = List.of(125, 90, 40);

    /** Refuses with {@link IllegalArgumentException} an upper end below the lower one. */
    public Band {
        if (!(least <= most)) {
            throw new IllegalArgumentException("a band must not end below its start: " + least + " to " + most);
        }
    }

    /**
     * The band of a bake: never colder than the set-point, hotter by what the edition allows above the column that
     * counts (table 4-1: +10 at 125 C, +8 at 90 C, +5 at 40 C). The table's own bakes never pass 135 C; above that, where
     * only a maker's word can ask for a bake, the tightest of the three counts, since no source says another.
     */
    public static Band of(Celsius setPoint, Standard standard) {
        double degrees = setPoint.degrees();
        double hottest = BakeTimes.HOTTEST.degrees() + tolerance(standard, 125);
        if (degrees > hottest) {
            return new Band(degrees, degrees + tolerance(standard, 40));
        }
        int column = COLUMNS.stream().filter(one -> one <= degrees).findFirst().orElse(40);
        return new Band(degrees, Math.min(hottest, degrees + tolerance(standard, column)));
    }

    private static int tolerance(Standard standard, int column) {
        return standard.bakeToleranceC(column).value();
    }

    /**
     * This band, or what a site asks inside it: it can be made narrower, never wider.
     *
     * @param leastAboveC degrees above the set-point that must be reached, not below 0
     * @param mostAboveC degrees above the set-point that may not be passed; empty: as it is
     */
    public Band narrowed(Celsius setPoint, double leastAboveC, OptionalDouble mostAboveC) {
        double top = Math.min(most, setPoint.degrees() + mostAboveC.orElse(most));
        return new Band(Math.min(top, Math.max(least, setPoint.degrees() + leastAboveC)), top);
    }

    /** Whether a value lies in it. */
    public boolean holds(double value) {
        return value >= least && value <= most;
    }
}
