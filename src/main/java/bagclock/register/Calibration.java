package bagclock.register;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;

/**
 * When a logger or an oven must be calibrated again.
 *
 * @param name of the logger, code of the oven
 * @param dueOn the last day on which it may be trusted; empty if nobody said
 */
public record Calibration(Kind kind, String name, Optional<LocalDate> dueOn) {
    /** What is calibrated. */
    public enum Kind {
        LOGGER,
        OVEN
    }

    /** Whether it is the one of this logger or oven. */
    public boolean isOf(Kind other, String code) {
        return kind == other && name.equals(code);
    }

    /** Whether the day was over, in UTC, at a moment. */
    public boolean isPastDueAt(Instant moment) {
        return dueOn.filter(day -> day.isBefore(moment.atOffset(ZoneOffset.UTC).toLocalDate()))
                .isPresent();
    }
}
