package bagclock.register;

import bagclock.core.exposure.Air;
import bagclock.core.exposure.SiteRules;
import java.util.Optional;

/**
 * The site's own choices.
 *
 * @param worstCase the declared worst case of rooms that declare none themselves, and of rooms that cabinets stand in
 */
public record HouseRules(SiteRules rules, Optional<Air> worstCase) {
    /** What counts as long as nobody has decided: the usual rules, no worst case. */
    public static final HouseRules USUAL = new HouseRules(SiteRules.USUAL, Optional.empty());
}
