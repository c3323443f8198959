package bagclock.register;

import bagclock.core.standard.SiteLimits;
import java.time.Duration;
import java.util.Optional;

/**
 * What a site chooses for its boards.
 *
 * @param profileMonths how long a measured heat profile is trusted, 1 or more
 * @param useWithin how long after a board bake the board must be heated; empty: no such limit
 * @param mostReplacements how often a part may be replaced at one location, 1 or more
 * @param limits of the standard that the site makes stricter; those of bakes hold for every part
 */
public record BoardRules(int profileMonths, Optional<Duration> useWithin, int mostReplacements, SiteLimits limits) {
    /** What counts as long as nobody has decided: a year; 12 h and two replacements, as is common practice. */
    public static final BoardRules USUAL = new BoardRules(12, Optional.of(Duration.ofHours(12)), 2, SiteLimits.RULES);
}
