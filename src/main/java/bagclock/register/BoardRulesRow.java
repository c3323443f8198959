package bagclock.register;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** One version of the site's rules for boards, as stored. */
record BoardRulesRow(
        String id,
        int version,
        Instant validFrom,
        Instant recordedAt,
        String who,
        String sortKey,
        int profileMonths,
        @Nullable Long useWithinMs,
        int mostReplacements) {
    /** There is one of them. */
    static final String ID = "site";

    static BoardRulesRow of(BoardRules rules, Version version) {
        return new BoardRulesRow(
                ID,
                version.number(),
                version.validFrom(),
                version.recordedAt(),
                version.who(),
                ID,
                rules.profileMonths(),
                rules.useWithin().map(Duration::toMillis).orElse(null),
                rules.mostReplacements());
    }

    Versioned<BoardRules> fact() {
        return new Versioned<>(
                new BoardRules(
                        profileMonths, Optional.ofNullable(useWithinMs).map(Duration::ofMillis), mostReplacements),
                new Version(version, validFrom, recordedAt, who));
    }
}
