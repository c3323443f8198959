package bagclock.scan;

import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What a workstation's scanner means by what its keyboard layout makes of it.
 *
 * @param meant by each character that arrives; {@link #DOUBTFUL} where it may be one of several, or none at all
 */
public record CharacterMap(Map<Character, Character> meant) {
    /** Stands where a character can't be told. No code and no label has it, so whatever has it is asked. */
    public static final char DOUBTFUL = '\ufffd';

    /** In front of a label whose characters a workstation put right; for the page's script too. */
    public static final char MARK = '\u2328';

    /** Keeps its own copy. */
    public CharacterMap {
        meant = Map.copyOf(meant);
    }

    /** The map in the form that pages carry: first all characters that arrive, then what each means. */
    public static CharacterMap parse(String text) {
        Map<Character, Character> meant = new TreeMap<>();
        int half = text.length() / 2;
        for (int i = 0; i < half; i++) {
            meant.put(text.charAt(i), text.charAt(half + i));
        }
        return new CharacterMap(meant);
    }

    /** The same as text, in the order of the characters. */
    public String text() {
        Map<Character, Character> sorted = new TreeMap<>(meant);
        return joined(sorted.keySet()) + joined(sorted.values());
    }

    private static String joined(Iterable<Character> characters) {
        StringBuilder text = new StringBuilder();
        characters.forEach(text::append);
        return text.toString();
    }

    /** What was meant by what arrived, as the page's script works it out. */
    public String mend(String arrived) {
        StringBuilder out = new StringBuilder();
        arrived.chars().forEach(c -> out.append(meant.getOrDefault((char) c, (char) c)));
        return out.toString();
    }

    /** As it came: what arrived for a text that this map put right. */
    public String arrived(String mended) {
        Map<Character, Character> back = meant.entrySet().stream()
                .filter(pair -> pair.getValue() != DOUBTFUL)
                .collect(Collectors.toMap(Map.Entry::getValue, Map.Entry::getKey));
        StringBuilder out = new StringBuilder();
        mended.chars().forEach(c -> out.append(back.getOrDefault((char) c, (char) c)));
        return out.toString();
    }
}
