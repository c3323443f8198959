package bagclock.parts;

import bagclock.core.Outcome;
import bagclock.core.Reason;
import bagclock.core.Refusal;
import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.core.standard.Level;
import bagclock.core.standard.MakerBake;
import bagclock.core.standard.MakerDerating;
import bagclock.core.standard.Rating;
import bagclock.parts.Numbers.Range;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The entries of a list in one text: ratings, bakes, cells of a maker's table; one on a line, or with semicolons. */
final class Entries {
    static final int MOST_RATINGS = 7;
    static final int MOST_BAKES = 12;
    static final int MOST_CELLS = 100;

    private static final String NUMBER = "([+-]?[\\d.,]+)";
    private static final Pattern RATING =
            Pattern.compile("([^@]*?)\\s*@\\s*" + NUMBER + "?\\s*(?:°?C)?", Pattern.CASE_INSENSITIVE);
    private static final Pattern BAKE = Pattern.compile(
            NUMBER + "\\s*°?C\\s+" + NUMBER + "\\s*h(?:\\s+" + NUMBER + "\\s*%\\s*(?:RH)?)?(?:\\s+carrier\\s+" + NUMBER
                    + "\\s*°?C)?",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern CELL = Pattern.compile(
            NUMBER + "(?:\\s*°?C)?\\s+" + NUMBER + "(?:\\s*%\\s*(?:RH)?)?\\s+" + NUMBER + "(?:\\s*h)?",
            Pattern.CASE_INSENSITIVE);

    private Entries() {}

    /** Reads one entry. */
    interface Parser<T> {
        Outcome<T> parse(String entry);
    }

    static List<String> split(String text) {
        return Arrays.stream(text.split("[;\\r\\n]+"))
                .map(String::strip)
                .filter(entry -> !entry.isEmpty())
                .toList();
    }

    /** The code of a level however the label puts it: {@code 2A}, {@code MSL 3}, {@code level 3}. */
    static String levelCode(String text) {
        return text.toLowerCase(Locale.ROOT)
                .replaceFirst("^(msl|level)\\s*", "")
                .strip();
    }

    static Outcome<Rating> rating(String entry) {
        Matcher matcher = RATING.matcher(entry);
        String code = matcher.matches() ? levelCode(matcher.group(1)) : "";
        Optional<Level> level = Level.parse(code);
        if (level.isEmpty() && !code.equals(PartWriting.UNKNOWN_LEVEL)) {
            return unreadable(entry, "3@260");
        }
        Parts parts = new Parts();
        Optional<BigDecimal> peak = parts.number(matcher.group(2), Range.CELSIUS);
        return parts.outcome(() -> new Rating(level, peak.map(Entries::celsius)));
    }

    static Outcome<MakerBake> bake(String entry) {
        Matcher matcher = BAKE.matcher(entry);
        if (!matcher.matches()) {
            return unreadable(entry, "90 C 48 h 5 %RH carrier 125 C");
        }
        Parts parts = new Parts();
        Optional<BigDecimal> temperature = parts.number(matcher.group(1), Range.CELSIUS);
        Optional<BigDecimal> hours = parts.number(matcher.group(2), Range.HOURS);
        Optional<BigDecimal> humidity = parts.number(matcher.group(3), Range.PERCENT);
        Optional<BigDecimal> carrier = parts.number(matcher.group(4), Range.CELSIUS);
        return parts.outcome(() -> new MakerBake(
                celsius(temperature.orElseThrow()),
                Hours.raised(hours.orElseThrow()),
                humidity.map(Entries::percent),
                carrier.map(Entries::celsius)));
    }

    static Outcome<MakerDerating.Cell> cell(String entry) {
        Matcher matcher = CELL.matcher(entry);
        if (!matcher.matches()) {
            return unreadable(entry, "30 C 60 %RH 168 h");
        }
        Parts parts = new Parts();
        Optional<BigDecimal> temperature = parts.number(matcher.group(1), Range.CELSIUS);
        Optional<BigDecimal> humidity = parts.number(matcher.group(2), Range.PERCENT);
        Optional<BigDecimal> hours = parts.number(matcher.group(3), Range.HOURS);
        return parts.outcome(() -> new MakerDerating.Cell(
                celsius(temperature.orElseThrow()),
                percent(humidity.orElseThrow()),
                Hours.floored(hours.orElseThrow())));
    }

    private static <T> Outcome<T> unreadable(String entry, String example) {
        return Outcome.refused(Refusal.of(Reason.ENTRY_UNREADABLE, entry, example));
    }

    private static Celsius celsius(BigDecimal degrees) {
        return new Celsius(degrees.doubleValue());
    }

    private static RelativeHumidity percent(BigDecimal percent) {
        return new RelativeHumidity(percent.doubleValue());
    }

    /** The numbers of one entry, and what is wrong with them. */
    private static final class Parts {
        private final List<Refusal> refusals = new ArrayList<>();

        Optional<BigDecimal> number(@Nullable String text, Range range) {
            if (text == null) {
                return Optional.empty();
            }
            return Numbers.parse(text, range).fold(Optional::of, refused -> {
                refusals.addAll(refused);
                return Optional.empty();
            });
        }

        <T> Outcome<T> outcome(Supplier<T> whole) {
            return refusals.isEmpty() ? Outcome.accepted(whole.get()) : new Outcome.Refused<>(refusals);
        }
    }
}
