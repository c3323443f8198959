package bagclock.platform;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Keeps a number and its unit on one line: the blank between them becomes a no-break space (U+00A0). */
final class Unbroken {
    private static final char NO_BREAK = '\u00a0';

    /** Symbols of units first, the words that the bundle spells out last; a letter behind it makes another word of it. */
    private static final Pattern QUANTITY =
            Pattern.compile("(?<=\\d) (?=(?:%RH|%|°C|°F|°|h|min|s|mm|cm|mm²|mm2|K|eV|kB|MB"
                    + "|days?|hours?|minutes?|weeks?|months?|years?)(?![\\p{L}\\d]))|(?<=%) (?=RH\\b)");

    private Unbroken() {}

    /** The same text with its quantities held together. */
    static String text(String text) {
        return mayHold(text)
                ? QUANTITY.matcher(text).replaceAll(Matcher.quoteReplacement(String.valueOf(NO_BREAK)))
                : text;
    }

    /** Most texts of a page hold none, and looking costs less than matching. */
    private static boolean mayHold(String text) {
        for (int blank = text.indexOf(' ', 1); blank > 0; blank = text.indexOf(' ', blank + 1)) {
            char before = text.charAt(blank - 1);
            if (before == '%' || (before >= '0' && before <= '9')) {
                return true;
            }
        }
        return false;
    }
}
