package bagclock.core.heat;

import bagclock.core.standard.Citation;
import bagclock.core.standard.Life;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One reason of an answer, without words.
 *
 * @param parts durations, instants, temperatures and names in the order that the message of the code takes them
 * @param citation the table cell that decided, if one did
 */
public record Finding(FindingCode code, List<Object> parts, Optional<Citation> citation) {
    static final Comparator<Finding> STRICTEST_FIRST =
            Comparator.comparing((Finding finding) -> finding.code().brings()).reversed();

    /** Keeps its own copy of the parts. */
    public Finding {
        parts = List.copyOf(parts);
    }

    static Finding of(FindingCode code, Object... parts) {
        return new Finding(code, List.of(parts), Optional.empty());
    }

    /** A life as a part of a finding, in whole milliseconds. */
    static Duration time(Life life) {
        return Duration.ofMillis(life.numeratorMs() / life.denominator());
    }

    Finding citing(Optional<Citation> cell) {
        return new Finding(code, parts, cell);
    }
}
