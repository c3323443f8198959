package bagclock.scan;

import java.util.HashMap;
import java.util.Map;

/**
 * Keys that type nothing by themselves, such as an accent that waits for its letter. The page tells such a key by its
 * place: one character of the private use area for each code of a key (UI Events, code values), with and without shift.
 */
final class UsKeys {
    private static final String SHIFTED_DIGITS = ")!@#$%^&*(";
    private static final Map<String, String> OTHERS = Map.ofEntries(
            Map.entry("Backquote", "`~"),
            Map.entry("Minus", "-_"),
            Map.entry("Equal", "=+"),
            Map.entry("BracketLeft", "[{"),
            Map.entry("BracketRight", "]}"),
            Map.entry("Backslash", "\\|"),
            Map.entry("Semicolon", ";:"),
            Map.entry("Quote", "'\""),
            Map.entry("Comma", ",<"),
            Map.entry("Period", ".>"),
            Map.entry("Slash", "/?"));

    private static final Map<Character, Character> MEANT = meant();

    private UsKeys() {}

    /** What a keyboard of the United States has there, in place of each such key. */
    static String read(String text) {
        StringBuilder out = new StringBuilder();
        text.chars().forEach(c -> out.append(MEANT.getOrDefault((char) c, (char) c)));
        return out.toString();
    }

    /** As the page's script tells it, in {@code characterOf}. */
    static char place(String code, boolean isShifted) {
        return (char) (0xe000 + 256 * code.length() + (isShifted ? 128 : 0) + code.charAt(code.length() - 1));
    }

    private static Map<Character, Character> meant() {
        Map<Character, Character> meant = new HashMap<>();
        for (char letter = 'a'; letter <= 'z'; letter++) {
            char capital = Character.toUpperCase(letter);
            put(meant, "Key" + capital, letter, capital);
        }
        for (int digit = 0; digit < SHIFTED_DIGITS.length(); digit++) {
            put(meant, "Digit" + digit, (char) ('0' + digit), SHIFTED_DIGITS.charAt(digit));
        }
        OTHERS.forEach((code, both) -> put(meant, code, both.charAt(0), both.charAt(1)));
        return Map.copyOf(meant);
    }

    private static void put(Map<Character, Character> meant, String code, char plain, char shifted) {
        meant.put(place(code, false), plain);
        meant.put(place(code, true), shifted);
    }
}
