package bagclock.scan;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The message of ISO/IEC 15434, whole or damaged, cut into its fields.
 *
 * @param fields of the first section, empty ones left out
 */
record Envelope(List<String> fields, Set<Flag> flags, char separator) {
    /** {@code [)>}, record separator, format: some labels and scanners lose or add a character. */
    static final Pattern HEADER = Pattern.compile("(>?)\\[\\)(>?)([\\x1e@\\]^|~ \\t]?)(0[56])");

    private static final String STAND_INS = "@]^|~ \t";
    private static final char NONE = 0;

    static boolean isOne(String text) {
        return HEADER.matcher(text).lookingAt();
    }

    static Envelope of(String text) {
        Matcher header = HEADER.matcher(text);
        if (!header.lookingAt()) {
            throw new IllegalArgumentException("no header");
        }
        Set<Flag> flags = EnumSet.noneOf(Flag.class);
        String body = text.substring(header.end());
        char separator = separator(body);
        if (!header.group(1).isEmpty()
                || header.group(2).isEmpty()
                || header.group(3).isEmpty()) {
            flags.add(Flag.HEADER_DAMAGED);
        }
        if (header.group(4).equals("05")) {
            flags.add(Flag.GS1);
            return new Envelope(List.of(), flags, separator);
        } else if (separator == NONE) {
            flags.add(Flag.NO_SEPARATORS);
            return new Envelope(List.of(body), flags, separator);
        } else if (!body.startsWith(String.valueOf(separator))) {
            flags.add(Flag.HEADER_DAMAGED);
        }
        return separator == Tidied.GS ? controlled(body, flags) : standing(body, separator, flags);
    }

    private static char separator(String body) {
        boolean stands = !body.isEmpty() && STAND_INS.indexOf(body.charAt(0)) >= 0;
        return stands ? body.charAt(0) : body.indexOf(Tidied.GS) >= 0 ? Tidied.GS : NONE;
    }

    private static Envelope controlled(String body, Set<Flag> flags) {
        int end = body.indexOf(Tidied.RS);
        String section = end < 0 ? body : body.substring(0, end);
        String tail = end < 0 ? "" : body.substring(end + 1);
        if (end < 0 && !body.endsWith(String.valueOf(Tidied.EOT))) {
            flags.add(Flag.NO_END);
        } else if (tail.startsWith("05")) {
            flags.add(Flag.GS1);
        } else if (!tail.equals(String.valueOf(Tidied.EOT)) && end >= 0) {
            flags.add(Flag.TAIL);
        }
        return new Envelope(fields(section.replace(String.valueOf(Tidied.EOT), ""), Tidied.GS), flags, Tidied.GS);
    }

    /** An empty field is the end here: two separators where the record's separator stood. */
    private static Envelope standing(String body, char separator, Set<Flag> flags) {
        flags.add(Flag.STAND_IN);
        String section = body.substring(1);
        int end = section.indexOf("" + separator + separator);
        int controlled = indexOfEnd(section);
        if (end >= 0) {
            String tail = section.substring(end + 2).replaceAll("[\\x04" + Pattern.quote("" + separator) + "]", "");
            flags.addAll(tail.isEmpty() ? Set.of() : Set.of(Flag.TAIL));
            section = section.substring(0, end);
        } else if (controlled >= 0) {
            section = section.substring(0, controlled);
        } else {
            flags.add(Flag.NO_END);
        }
        return new Envelope(fields(section, separator), flags, separator);
    }

    private static int indexOfEnd(String section) {
        Matcher end = Pattern.compile("[\\x1e\\x04^]+$").matcher(section);
        return end.find() ? end.start() : -1;
    }

    private static List<String> fields(String section, char separator) {
        List<String> fields = new ArrayList<>(List.of(section.split(Pattern.quote(String.valueOf(separator)))));
        fields.removeIf(String::isEmpty);
        return fields;
    }
}
