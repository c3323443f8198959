package bagclock.boards;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reference designators as lists and ranges: {@code R1-R4, R7} or {@code C1..C3}. */
final class Designators {
    /** Longer ranges are taken for slips of the pen. */
    static final int LONGEST_RANGE = 2000;

    private static final Pattern ONE = Pattern.compile("([A-Za-z]{1,6})(\\d{1,6})([A-Za-z]?)");
    private static final Pattern RANGE =
            Pattern.compile("([A-Za-z]{1,6})(\\d{1,6})(?:-|\\.\\.|\u2013)(?:([A-Za-z]{1,6}))?(\\d{1,6})");
    private static final Pattern BLANKS_AT_DASH = Pattern.compile("\\s*(-|\\.\\.|\u2013)\\s*");

    private Designators() {}

    /** Each designator in the order of the text; empty if any of it can't be read or is named twice. */
    static Optional<List<String>> read(String text) {
        Set<String> all = new LinkedHashSet<>();
        String tight = BLANKS_AT_DASH.matcher(text.strip()).replaceAll("$1");
        for (String word : tight.split("[,;\\s]+")) {
            List<String> some = one(word);
            boolean fresh = some.stream().allMatch(all::add);
            if (some.isEmpty() || !fresh) {
                return Optional.empty();
            }
        }
        return Optional.of(List.copyOf(all));
    }

    private static List<String> one(String word) {
        if (ONE.matcher(word).matches()) {
            return List.of(word);
        }
        Matcher range = RANGE.matcher(word);
        if (!range.matches()) {
            return List.of();
        }
        String letters = range.group(1);
        boolean same = range.group(3) == null || range.group(3).equals(letters);
        int first = Integer.parseInt(range.group(2));
        int last = Integer.parseInt(range.group(4));
        boolean fits = same && first <= last && last - first < LONGEST_RANGE;
        List<String> some = new ArrayList<>();
        for (int number = first; fits && number <= last; number++) {
            some.add(letters + number);
        }
        return some;
    }
}
