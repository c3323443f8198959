package bagclock.platform;

import java.util.Locale;
import java.util.regex.Pattern;

/** Texts in an order that is the same on every database: without case, numbers by their value. */
public final class SortKey {
    private static final int LONGEST = 80;
    private static final int DIGITS = 9;
    private static final Pattern NUMBER = Pattern.compile("\\d+");

    private SortKey() {}

    /** The key of a text, at most 80 characters. */
    public static String of(String text) {
        String key = NUMBER.matcher(text.toLowerCase(Locale.ROOT))
                .replaceAll(digits ->
                        "0".repeat(Math.max(0, DIGITS - digits.group().length())) + digits.group());
        return key.length() <= LONGEST ? key : key.substring(0, LONGEST);
    }
}
