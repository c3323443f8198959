package bagclock.scan;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;

/** The dates of labels. Two-digit years are of this century. */
final class Dates {
    private static final int LAST_WEEK = 53;

    private Dates() {}

    /** Year and week in digits: {@code 1452} or {@code 201452} is {@code 2014-W52}. Empty if there is no such week. */
    static Optional<String> week(String digits) {
        String text = digits.length() == 4 ? "20" + digits : digits;
        int week = Integer.parseInt(text.substring(4));
        return week < 1 || week > LAST_WEEK || !isYear(text)
                ? Optional.empty()
                : Optional.of(text.substring(0, 4) + "-W" + text.substring(4));
    }

    private static boolean isYear(String text) {
        return text.startsWith("19") || text.startsWith("20");
    }

    /** YYYYMMDD, or DDMMYYYY if it starts with no year. */
    static Optional<String> eight(String digits) {
        return isYear(digits) ? yearFirst(digits) : dayFirst(digits);
    }

    /** YYMMDD or YYYYMMDD. */
    static Optional<String> yearFirst(String digits) {
        String text = digits.length() == 6 ? "20" + digits : digits;
        return date(text.substring(0, 4), text.substring(4, 6), text.substring(6));
    }

    /** DDMMYYYY. */
    static Optional<String> dayFirst(String digits) {
        return date(digits.substring(4), digits.substring(2, 4), digits.substring(0, 2));
    }

    /** MMDDYY. */
    static Optional<String> monthFirst(String digits) {
        return date("20" + digits.substring(4), digits.substring(0, 2), digits.substring(2, 4));
    }

    private static Optional<String> date(String year, String month, String day) {
        try {
            return Optional.of(LocalDate.of(Integer.parseInt(year), Integer.parseInt(month), Integer.parseInt(day))
                    .toString());
        } catch (DateTimeException none) {
            return Optional.empty();
        }
    }

    /** What a date code says; empty for text that is no date. */
    static Optional<String> code(String code) {
        String digits = code.matches("\\d{4}M|\\d{2}/\\d{2}") ? code.replaceAll("[M/]", "") : code;
        if (digits.matches("\\d{4}")) {
            return week(digits);
        } else if (digits.matches("\\d{6}")) {
            return yearFirst(digits);
        }
        return digits.matches("\\d{8}") ? eight(digits) : Optional.empty();
    }
}
