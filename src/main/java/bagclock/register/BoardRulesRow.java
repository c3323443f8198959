package bagclock.register;

import bagclock.core.quantity.Celsius;
import bagclock.core.standard.SiteLimits;
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
        int mostReplacements,
        double harmlessPeakC,
        long mostAbove_90Ms) {
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
                rules.mostReplacements(),
                rules.limits().harmlessPeak().degrees(),
                rules.limits().mostAbove90().toMillis());
    }

    Versioned<BoardRules> fact() {
        return new Versioned<>(
                new BoardRules(
                        profileMonths,
                        Optional.ofNullable(useWithinMs).map(Duration::ofMillis),
                        mostReplacements,
                        new SiteLimits(new Celsius(harmlessPeakC), Duration.ofMillis(mostAbove_90Ms))),
                new Version(version, validFrom, recordedAt, who));
    }
}
