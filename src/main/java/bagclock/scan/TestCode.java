package bagclock.scan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * One code with every character that labels use (ISO/IEC 646, printable) and the controls of ISO/IEC 15434, so that
 * what a scanner and a keyboard layout make of each can be seen. A letter that QWERTY, QWERTZ and AZERTY have at one
 * place, and that no accent joins with, stands before each. For scanners that read linear codes only the same stands in
 * several bars, without the controls, which no linear code on a label has.
 */
public final class TestCode {
    private static final char MARK = 'F';
    private static final String START = "TEST";
    private static final String END = "END";
    private static final char FIRST = ' ';
    private static final char LAST = '~';
    private static final String CONTROLS = "" + Tidied.GS + Tidied.RS + Tidied.EOT;

    /** Each bar has a letter of its own behind the start, from the same places. */
    private static final String BARS = "BCDEGH";

    private static final int IN_A_BAR = 16;
    private static final Pattern IN_CAPS_LOCK =
            Pattern.compile((START + "[" + BARS + "]?" + MARK).toLowerCase(Locale.ROOT));

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
        return framed("", characters() + CONTROLS);
    }

    /** What each bar holds. */
    public static List<String> bars() {
        return numbers().mapToObj(bar -> framed(name(bar), inBar(bar))).toList();
    }

    private static String framed(String name, String characters) {
        StringBuilder text = new StringBuilder(START + name);
        characters.chars().forEach(c -> text.append(MARK).append((char) c));
        return text.append(MARK).append(END).toString();
    }

    private static IntStream numbers() {
        return IntStream.rangeClosed(1, BARS.length());
    }

    private static String name(int bar) {
        return BARS.substring(bar - 1, bar);
    }

    private static String inBar(int bar) {
        String all = characters();
        return all.substring((bar - 1) * IN_A_BAR, Math.min(all.length(), bar * IN_A_BAR));
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
        return IN_CAPS_LOCK.matcher(arrived).find();
    }

    /** Whether it is one of the bars, and whole. */
    public static boolean isBar(String arrived) {
        return missingBars(arrived).size() < BARS.length();
    }

    /** Numbers, from 1, of the bars that are not, or not whole, among these scans: one scan a line. */
    public static List<Integer> missingBars(String scans) {
        return numbers().filter(bar -> ofBar(scans, bar).isEmpty()).boxed().toList();
    }

    /**
     * What is to be learnt from scans, one a line: from the whole code, or from all bars in any order. Empty if something
     * else was scanned, or a code did not come whole.
     */
    public static Optional<Learnt> learn(String scans) {
        int all = characters().length();
        Optional<List<String>> whole = latest(scans, "", all + CONTROLS.length());
        List<String> came = whole.orElseGet(() -> numbers()
                .boxed()
                .flatMap(bar -> ofBar(scans, bar).stream().flatMap(List::stream))
                .toList());
        return came.size() < all ? Optional.empty() : Optional.of(learnt(characters(), came));
    }

    private static Optional<List<String>> ofBar(String scans, int bar) {
        return latest(scans, name(bar), inBar(bar).length());
    }

    /** What came of each character of a code, when it was scanned last. */
    private static Optional<List<String>> latest(String scans, String name, int count) {
        return scans.lines().flatMap(scan -> came(scan, name, count).stream()).reduce((earlier, later) -> later);
    }

    private static Optional<List<String>> came(String arrived, String name, int count) {
        String start = START + name + MARK;
        int from = arrived.indexOf(start) + start.length();
        int to = arrived.lastIndexOf(MARK + END);
        if (from < start.length() || to < from) {
            return Optional.empty();
        }
        List<String> came = List.of(arrived.substring(from, to).split(String.valueOf(MARK), -1));
        return came.size() == count ? Optional.of(came) : Optional.empty();
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
        List<String> controls = came.subList(characters.length(), came.size());
        boolean isWithoutControls =
                !controls.isEmpty() && !String.join("", controls).equals(CONTROLS);
        return new Learnt(map(sources), doubtful.toString(), lost.toString(), isWithoutControls);
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
