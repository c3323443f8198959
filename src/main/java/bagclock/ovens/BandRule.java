package bagclock.ovens;

import bagclock.core.proof.Band;
import bagclock.core.quantity.Celsius;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * The site's own band for charts, inside the table's: for the doubt that there is about a probe.
 *
 * @param leastAboveC degrees above the set-point that every probe must reach
 * @param mostAboveC degrees above the set-point that no probe may pass; null: the table's
 */
public record BandRule(double leastAboveC, @Nullable Double mostAboveC) {
    /** The table's band as it is. */
    static final BandRule TABLE = new BandRule(0, null);

    /** What the site asks of a bake that the table asks so of. */
    Band inside(Band table, Celsius setPoint) {
        OptionalDouble most = mostAboveC == null ? OptionalDouble.empty() : OptionalDouble.of(mostAboveC);
        return table.narrowed(setPoint, leastAboveC, most);
    }
}
