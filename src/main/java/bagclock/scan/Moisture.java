package bagclock.scan;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Levels, peaks and floor lives as labels write them. */
final class Moisture {
    /** Level, peak in degrees Celsius, floor life; the third part after it is the seal date, month first. */
    static final Pattern TRIPLE = Pattern.compile("([1-6]a?)/(\\d{3})C/([^;]*);//;(\\d{6})");

    static final Pattern TRIPLE_BEGUN = Pattern.compile("[1-6]?a?/?\\d{2,3}C.*|[1-6]a?/.*|.*;//;.*");

    /** Level and peak, once for each solder process. */
    static final Pattern PAIRS = Pattern.compile("[1-6]a?/\\d{3}(-[1-6]a?/\\d{3})*");

    private static final Pattern LEVEL =
            Pattern.compile("(?:MSL|LEVEL)?\\s*0?([1-6])([aA])?", Pattern.CASE_INSENSITIVE);

    /** Floor life of each level at most 30 C and 60 % RH: J-STD-020, Table 5-1. */
    private static final Map<String, List<String>> LIVES = Map.of(
            "1", List.of("UNLIM", "UNLIMITED"),
            "2", List.of("1YEAR"),
            "2a", List.of("4WEEKS", "672HRS"),
            "3", List.of("168HRS", "168HOURS"),
            "4", List.of("72HRS", "72HOURS"),
            "5", List.of("48HRS", "48HOURS"),
            "5a", List.of("24HRS", "24HOURS"),
            "6", List.of("TOL"));

    private Moisture() {}

    /** The level, or {@link Reading#NOT_SENSITIVE}; empty if it is none. */
    static Optional<String> level(String text) {
        Matcher level = LEVEL.matcher(text);
        if (text.matches("N|0|NA|N/A")) {
            return Optional.of(Reading.NOT_SENSITIVE);
        } else if (!level.matches()) {
            return Optional.empty();
        }
        String code = level.group(1) + (level.group(2) == null ? "" : "a");
        return LIVES.containsKey(code) ? Optional.of(code) : Optional.empty();
    }

    /** Whether a floor life as printed is the one of the level. */
    static boolean fits(String level, String life) {
        String bare = life.toUpperCase(Locale.ROOT).replaceAll("[\\s.-]", "").replaceAll("HRS?$|HOURS?$", "HRS");
        return LIVES.getOrDefault(level, List.of()).stream().anyMatch(known -> known.equals(bare));
    }
}
