package bagclock.scan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * One code with every character that labels use (ISO/IEC 646, printable) and the controls of ISO/IEC 15434, so that
 * what a scanner and a keyboard layout make of each can be seen. A letter that QWERTY, QWERTZ and AZERTY have at one
 * place, and that no accent joins with, stands before each.
 */
public final class TestCode {
    private static final char MARK = 'F';
    private static final String START = "TEST";
    private static final String END = "END";
    private static final char FIRST = ' ';
    private static final char LAST = '~';
    private static final String CONTROLS = "" + Tidied.GS + Tidied.RS + Tidied.EOT;

    private TestCode() {}

    /**
     * What came of a test code.
     *
     * @param map to put right what arrives
     * @param doubtful characters of which several arrive as one
     * @param lost characters of which nothing arrives, or more than one character
     * @param isWithoutControls whether a control character arrives as something else, or not at all
     */
    public record Learnt(CharacterMap map, String doubtful, String lost, boolean isWithoutControls) {
        /** Whether every character arrives as itself. */
        public boolean isClean() {
            return map.meant().isEmpty() && lost.isEmpty();
        }
    }

    /** What the code holds. */
    public static String text() {
        StringBuilder text = new StringBuilder(START);
        (characters() + CONTROLS).chars().forEach(c -> text.append(MARK).append((char) c));
        return text.append(MARK).append(END).toString();
    }

    private static String characters() {
        StringBuilder all = new StringBuilder();
        for (char c = FIRST; c <= LAST; c++) {
            all.append(c);
        }
        return all.toString().replace(String.valueOf(MARK), "");
    }

    /** Whether it is our code, but with capitals and small letters exchanged. */
    public static boolean isInCapsLock(String arrived) {
        return arrived.contains((START + MARK).toLowerCase(Locale.ROOT));
    }

    /** What is to be learnt; empty if something else was scanned, or the code did not come whole. */
    public static Optional<Learnt> learn(String arrived) {
        int from = arrived.indexOf(START + MARK);
        int to = arrived.lastIndexOf(MARK + END);
        if (from < 0 || to <= from + START.length()) {
            return Optional.empty();
        }
        String[] came = arrived.substring(from + START.length() + 1, to).split(String.valueOf(MARK), -1);
        String characters = characters();
        return came.length == characters.length() + CONTROLS.length()
                ? Optional.of(learnt(characters, List.of(came)))
                : Optional.empty();
    }

    private static Learnt learnt(String characters, List<String> came) {
        Map<Character, List<Character>> sources = new TreeMap<>();
        sources.put(MARK, List.of(MARK));
        StringBuilder lost = new StringBuilder();
        for (int i = 0; i < characters.length(); i++) {
            char sent = characters.charAt(i);
            if (came.get(i).length() == 1) {
                sources.computeIfAbsent(came.get(i).charAt(0), none -> new ArrayList<>())
                        .add(sent);
            } else {
                lost.append(sent);
            }
        }
        StringBuilder doubtful = new StringBuilder();
        sources.values().stream().filter(all -> all.size() > 1).forEach(all -> all.forEach(doubtful::append));
        String controls = String.join("", came.subList(characters.length(), came.size()));
        return new Learnt(map(sources), doubtful.toString(), lost.toString(), !controls.equals(CONTROLS));
    }

    /** A character that no other becomes is doubtful too: this scanner never sends it. */
    private static CharacterMap map(Map<Character, List<Character>> sources) {
        Map<Character, Character> meant = new HashMap<>();
        for (char c = FIRST; c <= LAST; c++) {
            if (!sources.containsKey(c)) {
                meant.put(c, CharacterMap.DOUBTFUL);
            }
        }
        sources.forEach((arrived, all) -> {
            if (all.size() > 1) {
                meant.put(arrived, CharacterMap.DOUBTFUL);
            } else if (!all.get(0).equals(arrived)) {
                meant.put(arrived, all.get(0));
            }
        });
        return new CharacterMap(meant);
    }
}
