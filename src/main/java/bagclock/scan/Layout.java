package bagclock.scan;

import java.util.Map;
import java.util.TreeMap;

/**
 * Keyboard layouts into which a scanner set to US keys may type. The tables give, for each US key in order, the
 * character that the layout puts there; after the maps of the xkeyboard-config project.
 */
enum Layout {
    GERMAN("^1234567890ß´ü+#öä,.-°!\"§$%&/()=?`Ü*'ÖÄ;:_", "yzYZ", "zyZY"),
    FRENCH("²&é\"'(-è_çà)=^$*mù;:!~1234567890°+¨£µM%./§", "aqzwAQZWmM", "qawzQAWZ,?"),
    ITALIAN("\\1234567890'ìè+ùòà,.-|!\"£$%&/()=?^é*§ç°;:_", "", ""),
    BRITISH("`1234567890-=[]#;',./¬!\"£$%^&*()_+{}~:@<>?", "", "");

    @SuppressWarnings("ImmutableEnumChecker") // filled once, then unmodifiable
    private final Map<Character, Character> typed;

    @SuppressWarnings("ImmutableEnumChecker") // filled once, then unmodifiable
    private final Map<Character, Character> meant;

    Layout(String keys, String usLetters, String letters) {
        String us = "`1234567890-=[]\\;',./~!@#$%^&*()_+{}|:\"<>?";
        String from = us + usLetters;
        String to = keys + letters;
        Map<Character, Character> shown = new TreeMap<>();
        for (int i = 0; i < from.length(); i++) {
            shown.putIfAbsent(from.charAt(i), to.charAt(i));
        }
        Map<Character, Character> pressed = new TreeMap<>();
        shown.forEach((key, sign) -> pressed.putIfAbsent(sign, key));
        this.typed = Map.copyOf(shown);
        this.meant = Map.copyOf(pressed);
    }

    /** What was meant by what arrived; controls stay. */
    String mend(String arrived) {
        return mapped(arrived, meant);
    }

    /** What arrives for what is meant. */
    String type(String text) {
        return mapped(text, typed);
    }

    private static String mapped(String text, Map<Character, Character> map) {
        StringBuilder out = new StringBuilder();
        text.chars().forEach(c -> out.append((char) map.getOrDefault((char) c, (char) c)));
        return out.toString();
    }
}
