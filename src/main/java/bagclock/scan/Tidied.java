package bagclock.scan;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A scan after what lies between label and page was put right: the symbology's mark in front, pictures of control
 * characters, another keyboard layout, caps lock. The letters of the label are never folded otherwise.
 */
record Tidied(String text, Set<Flag> flags) {
    static final char GS = '\u001d';
    static final char RS = '\u001e';
    static final char EOT = '\u0004';

    /** An AIM symbology identifier, ISO/IEC 15424. */
    private static final Pattern SYMBOLOGY = Pattern.compile("^\\][A-Za-z][0-9A-Za-z](?=\\S)");

    /** How the old PC font draws the controls; private-use codes of function keys 8 and 9; pictures; spelled out. */
    private static final Map<String, Character> PICTURES = Map.ofEntries(
            Map.entry("\u2194", GS),
            Map.entry("\u25b2", RS),
            Map.entry("\uf70b", GS),
            Map.entry("\uf70c", RS),
            Map.entry("\u241d", GS),
            Map.entry("\u241e", RS),
            Map.entry("\u2404", EOT),
            Map.entry("{GS}", GS),
            Map.entry("{RS}", RS),
            Map.entry("{EOT}", EOT),
            Map.entry("<GS>", GS),
            Map.entry("<RS>", RS),
            Map.entry("<EOT>", EOT),
            Map.entry("\u001f", RS));

    private static final Pattern LOWER = Pattern.compile("\\d{0,3}[a-z].*");

    static Tidied of(String received) {
        Set<Flag> flags = EnumSet.noneOf(Flag.class);
        boolean isMapped = received.indexOf(CharacterMap.MARK) >= 0;
        String text = unwrap(isMapped ? received.replace(String.valueOf(CharacterMap.MARK), "") : received);
        if (isMapped) {
            flags.add(Flag.CHARACTERS_MAPPED);
        }
        if (text.indexOf(CharacterMap.DOUBTFUL) >= 0) {
            flags.add(Flag.CHARACTERS_DOUBTFUL);
        }
        for (Map.Entry<String, Character> picture : PICTURES.entrySet()) {
            text = text.replace(picture.getKey(), picture.getValue().toString());
        }
        if (!isMapped) {
            text = inLayout(text, flags);
        }
        return new Tidied(inCase(text, flags), flags);
    }

    private static String unwrap(String received) {
        String text = trimmed(SYMBOLOGY.matcher(trimmed(received)).replaceFirst(""));
        return text.endsWith("\0") ? text.substring(0, text.length() - 1) + EOT : text;
    }

    /** Without line ends, tabs and blanks around it; separators stay. */
    static String trimmed(String text) {
        return text.replaceAll("^[\\r\\n\\t ]+|[\\r\\n\\t ]+$", "");
    }

    private static String inLayout(String text, Set<Flag> flags) {
        boolean fits = Envelope.HEADER.matcher(text).lookingAt();
        if (fits && !text.contains("£") && !text.matches("(?s)>?\\[\\)>?\"06\".*")) {
            return accented(text, flags);
        }
        for (Layout layout : Layout.values()) {
            String mended = UsKeys.read(layout.mend(text));
            Matcher header = Envelope.HEADER.matcher(mended);
            if (fits == (layout == Layout.BRITISH) && header.lookingAt()) {
                flags.add(Flag.LAYOUT_MENDED);
                if (layout == Layout.FRENCH && mended.startsWith("@", header.end())) {
                    flags.add(Flag.SEPARATORS_DOUBTFUL);
                }
                return mended;
            }
        }
        return fits ? accented(text, flags) : text;
    }

    /** The layout of the United States itself, with accents. */
    private static String accented(String text, Set<Flag> flags) {
        String read = UsKeys.read(text);
        if (!read.equals(text)) {
            flags.add(Flag.LAYOUT_MENDED);
        }
        return read;
    }

    private static String inCase(String text, Set<Flag> flags) {
        Matcher header = Envelope.HEADER.matcher(text);
        if (!header.lookingAt() || text.indexOf(GS) < 0) {
            return text;
        }
        String rest = text.substring(header.end());
        boolean lower = Arrays.stream(rest.split("[\u001d\u001e\u0004]"))
                .filter(field -> !field.isEmpty())
                .allMatch(field -> LOWER.matcher(field).matches());
        if (!lower || rest.isBlank()) {
            return text;
        }
        flags.add(Flag.CASE_MENDED);
        StringBuilder swapped = new StringBuilder(text.substring(0, header.end()));
        rest.chars().forEach(c -> swapped.append(swapped((char) c)));
        return swapped.toString();
    }

    private static char swapped(char letter) {
        return Character.isLowerCase(letter) ? Character.toUpperCase(letter) : Character.toLowerCase(letter);
    }
}
