package bagclock.core.standard;

import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the text of a cell; each method refuses with {@link IllegalArgumentException} what it does not know, and
 * nothing is guessed.
 */
final class CellText {
    private static final Pattern TIME = Pattern.compile("([1-9]\\d{0,3}) ([hd])");
    private static final Pattern DAYS = Pattern.compile("\\d{1,4}(\\.\\d{1,2})?");
    private static final Pattern WHOLE = Pattern.compile("[1-9]\\d{0,4}");
    private static final Set<String> MAY_BE_NONE = Set.of("oven %RH", "pause at most %RH");
    private static final BigDecimal MS_PER_DAY =
            BigDecimal.valueOf(Duration.ofDays(1).toMillis());

    private CellText() {}

    /** {@code 17 h} or {@code 8 d}. */
    static Duration time(Cell cell) {
        String text = cell.value();
        Matcher matcher = TIME.matcher(text);
        if (!matcher.matches()) {
            throw new IllegalArgumentException("time must look like '17 h' or '8 d', was '" + text + "'");
        }
        int amount = Integer.parseInt(matcher.group(1));
        return matcher.group(2).equals("d") ? Duration.ofDays(amount) : Duration.ofHours(amount);
    }

    /** Days above 0, up to two decimals, or {@code unlimited}. */
    static Life days(Cell cell) {
        String text = cell.value();
        if (text.equals("unlimited")) {
            return Life.UNLIMITED;
        }
        if (!DAYS.matcher(text).matches()) {
            throw new IllegalArgumentException("life must be days or 'unlimited', was '" + text + "'");
        }
        return new Life(new BigDecimal(text).multiply(MS_PER_DAY).longValueExact(), 1);
    }

    /** Whole hours above 0; {@code unlimited}; empty for level 6, where it must be {@code label}. */
    static Optional<Life> hours(Cell cell) {
        if (cell.value().equals("label") != cell.citation().row().equals("level 6")) {
            throw new IllegalArgumentException("level 6, and no other, has the time on its 'label'");
        }
        return switch (cell.value()) {
            case "label" -> Optional.empty();
            case "unlimited" -> Optional.of(Life.UNLIMITED);
            default -> Optional.of(Life.of(Duration.ofHours(whole(cell.value()))));
        };
    }

    /** A whole number above 0. */
    private static int whole(String text) {
        if (!WHOLE.matcher(text).matches()) {
            throw new IllegalArgumentException("needs a whole number above 0, was '" + text + "'");
        }
        return Integer.parseInt(text);
    }

    /** A whole number above 0, empty for {@code none}, which stands only where there may be no limit of humidity. */
    static Optional<Integer> wholeOrNone(Cell cell) {
        boolean none = cell.value().equals("none")
                && MAY_BE_NONE.contains(cell.citation().column());
        if (none) {
            return Optional.empty();
        }
        int number = whole(cell.value());
        if (cell.citation().column().endsWith("%RH") && number > 100) {
            throw new IllegalArgumentException("relative humidity must be at most 100 %, was " + number);
        }
        return Optional.of(number);
    }

    /** Whole degrees. */
    static Celsius celsius(Cell cell) {
        return new Celsius(whole(cell.value()));
    }

    static RelativeHumidity humidity(int percent) {
        return new RelativeHumidity(percent);
    }
}
