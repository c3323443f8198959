package bagclock.tables;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;

/** Days as text. */
final class Days {
    private Days() {}

    /** A day written as 2026-03-05; empty if it is none, or later than today. */
    static Optional<LocalDate> past(String text, LocalDate today) {
        try {
            return Optional.of(LocalDate.parse(text)).filter(day -> !day.isAfter(today));
        } catch (DateTimeException notADay) {
            return Optional.empty();
        }
    }
}
