package bagclock.register;

import java.time.Duration;
import java.util.Optional;

/**
 * What a site chooses for its boards.
 *
 * @param profileMonths how long a measured heat profile is trusted, 1 or more
 * @param useWithin how long after a board bake the board must be heated; empty: no such limit
 * @param mostReplacements how often a part may be replaced at one location, 1 or more
 */
public record BoardRules(int profileMonths, Optional<Duration> useWithin, int mostReplacements) {
    /** What counts as long as nobody has decided: a year; 12 h and two replacements, as is common practice. */
    public static final BoardRules USUAL = new BoardRules(12, Optional.of(Duration.ofHours(12)), 2);
}
