package bagclock.logfile;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Reads times: ISO 8601 with or without T, fraction, offset, calendar or week date; year first with hyphen, slash or
 * point; day.month.year; day and month in either order before the year; twelve hours with AM and PM; seconds or
 * milliseconds since 1970; a spreadsheet's days if they are allowed. For one file, by one thread.
 */
final class StampReader {
    private static final long EARLIEST_EPOCH_S = 946_684_800L;
    private static final long LATEST_EPOCH_S = 4_102_444_800L;
    private static final LocalDateTime SPREADSHEET_START = LocalDateTime.of(1899, 12, 30, 0, 0);
    private static final int CENTURY = 2000;

    private final Optional<DayOrder> order;
    private final boolean spreadsheetDays;
    private int largestFirst;
    private int largestSecond;
    private boolean open;

    /** An order that is not known reads the day first, and notes that it mattered. */
    StampReader(Optional<DayOrder> order, boolean spreadsheetDays) {
        this.order = order;
        this.spreadsheetDays = spreadsheetDays;
    }

    /** The order that the times read so far allow; empty if both or neither. */
    Optional<DayOrder> orderSeen() {
        if (largestFirst > 12 == largestSecond > 12) {
            return Optional.empty();
        }
        return Optional.of(largestFirst > 12 ? DayOrder.DAY_FIRST : DayOrder.MONTH_FIRST);
    }

    /** Whether a time was read that has another meaning in the other order. */
    boolean isOrderOpen() {
        return open && order.isEmpty() && orderSeen().isEmpty();
    }

    Optional<Stamp> read(String text) {
        try {
            Scan scan = new Scan(text);
            return scan.isPlainNumber() ? number(text.strip().replace(',', '.')) : date(scan);
        } catch (DateTimeException | NumberFormatException notATime) {
            return Optional.empty();
        }
    }

    private Optional<Stamp> number(String text) {
        double value = Double.parseDouble(text);
        double seconds = value >= EARLIEST_EPOCH_S * 1000.0 ? value / 1000 : value;
        if (seconds >= EARLIEST_EPOCH_S && seconds < LATEST_EPOCH_S) {
            long ms = Math.round(seconds * 1000);
            int nanos = Math.toIntExact(Math.floorMod(ms, 1000L) * 1_000_000L);
            return Optional.of(Stamp.utc(LocalDateTime.ofEpochSecond(Math.floorDiv(ms, 1000L), nanos, ZoneOffset.UTC)));
        } else if (spreadsheetDays && isSpreadsheetDay(value)) {
            long ms = Math.round(value * 86_400_000L);
            return Optional.of(new Stamp(SPREADSHEET_START.plusNanos(ms * 1_000_000L), Optional.empty()));
        }
        return Optional.empty();
    }

    /** From 1982 to 2119. */
    static boolean isSpreadsheetDay(double value) {
        return value > 30_000 && value < 80_000;
    }

    private Optional<Stamp> date(Scan scan) {
        LocalDate date = scan.isWeekDate() ? scan.weekDate() : calendarDate(scan);
        scan.skip(" T,");
        if (scan.isAtEnd()) {
            return Optional.empty();
        }
        LocalDateTime local = date.atStartOfDay().plusNanos(scan.nanosOfDay());
        scan.skip(" ");
        Optional<ZoneOffset> offset = scan.offset();
        return scan.isAtEnd() ? Optional.of(new Stamp(local, offset)) : Optional.empty();
    }

    private LocalDate calendarDate(Scan scan) {
        int start = scan.position();
        int first = scan.number();
        boolean yearFirst = scan.position() - start == 4;
        char separator = scan.separator();
        int second = scan.number();
        scan.take(separator);
        int third = scan.number();
        if (yearFirst) {
            return LocalDate.of(first, second, third);
        }
        int year = third < 100 ? CENTURY + third : third;
        boolean dayFirst = separator == '.' || isDayFirst(first, second);
        return dayFirst ? LocalDate.of(year, second, first) : LocalDate.of(year, first, second);
    }

    private boolean isDayFirst(int first, int second) {
        largestFirst = Math.max(largestFirst, first);
        largestSecond = Math.max(largestSecond, second);
        open = true;
        return order.map(known -> known == DayOrder.DAY_FIRST).orElse(second <= 12);
    }

    /** Reads a text from left to right. */
    private static final class Scan {
        private static final long NANOS_OF_SECOND = 1_000_000_000L;
        private static final String ZULU = "Z";
        private static final Pattern SIGNED = Pattern.compile("[+-]\\d\\d(:?\\d\\d)?");

        private final String text;
        private int at;

        Scan(String text) {
            this.text = text.strip();
        }

        int position() {
            return at;
        }

        boolean isAtEnd() {
            return at >= text.length();
        }

        boolean isPlainNumber() {
            int points = 0;
            for (int i = 0; i < text.length(); i++) {
                char c = text.charAt(i);
                points += c == '.' || c == ',' ? 1 : 0;
                if (!isDigit(i) && c != '.' && c != ',') {
                    return false;
                }
            }
            return points <= 1 && text.length() > 1;
        }

        private boolean isDigit(int index) {
            return index < text.length() && text.charAt(index) >= '0' && text.charAt(index) <= '9';
        }

        int number() {
            int start = at;
            int value = 0;
            while (isDigit(at) && at - start < 9) {
                value = value * 10 + text.charAt(at) - '0';
                at++;
            }
            if (at == start) {
                throw new DateTimeException("a number is missing");
            }
            return value;
        }

        char separator() {
            char found = isAtEnd() ? ' ' : text.charAt(at);
            if (found != '-' && found != '/' && found != '.') {
                throw new DateTimeException("no date");
            }
            at++;
            return found;
        }

        void take(char wanted) {
            if (!is(wanted)) {
                throw new DateTimeException("no " + wanted);
            }
            at++;
        }

        private boolean is(char wanted) {
            return !isAtEnd() && text.charAt(at) == wanted;
        }

        void skip(String any) {
            while (!isAtEnd() && any.indexOf(text.charAt(at)) >= 0) {
                at++;
            }
        }

        boolean isWeekDate() {
            return text.length() >= 10 && text.startsWith("-W", 4);
        }

        LocalDate weekDate() {
            at = 10;
            return LocalDate.parse(text.substring(0, 10), DateTimeFormatter.ISO_WEEK_DATE);
        }

        long nanosOfDay() {
            int hour = number();
            take(':');
            int minute = number();
            int second = 0;
            long nanos = 0;
            if (is(':')) {
                at++;
                second = number();
                nanos = is('.') || is(',') ? fraction() : 0;
            }
            skip(" ");
            return java.time.LocalTime.of(halfDay(hour), minute, second).toNanoOfDay() + nanos;
        }

        private long fraction() {
            at++;
            int start = at;
            double value = number();
            return (long) (value / Math.pow(10, at - start) * NANOS_OF_SECOND);
        }

        private int halfDay(int hour) {
            boolean after = text.regionMatches(true, at, "PM", 0, 2);
            if (!after && !text.regionMatches(true, at, "AM", 0, 2)) {
                return hour;
            } else if (hour < 1 || hour > 12) {
                throw new DateTimeException("no hour of twelve: " + hour);
            }
            at += 2;
            return hour % 12 + (after ? 12 : 0);
        }

        Optional<ZoneOffset> offset() {
            if (isAtEnd()) {
                return Optional.empty();
            }
            String rest = text.substring(at);
            boolean named = rest.startsWith("UTC") || rest.startsWith("GMT");
            String offset = named ? rest.substring(3) : rest;
            boolean signed = SIGNED.matcher(offset).matches();
            if (!signed && !rest.equals(ZULU) && !(named && offset.isEmpty())) {
                return Optional.empty();
            }
            at = text.length();
            return Optional.of(signed ? ZoneOffset.of(offset) : ZoneOffset.UTC);
        }
    }
}
