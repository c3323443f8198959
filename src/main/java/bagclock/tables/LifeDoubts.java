package bagclock.tables;

import bagclock.core.standard.Cell;
import bagclock.core.standard.Table;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Names derated floor lives that contradict a neighbour: in drier or cooler air, or at a milder level, a part lives at
 * least as long. Bodies are not compared: in wet air the table gives thin ones the shorter life. A doubt, no refusal:
 * print may say so.
 */
final class LifeDoubts {
    private static final Pattern NUMBER = Pattern.compile("\\d+(\\.\\d+)?");
    private static final BigDecimal HALF = new BigDecimal("0.5");
    private static final BigDecimal UNLIMITED = BigDecimal.valueOf(Long.MAX_VALUE);

    private LifeDoubts() {}

    /** In what a neighbour is milder. */
    enum By {
        MILDER(1),
        COOLER(2),
        DRIER(3);

        private final int place;

        By(int place) {
            this.place = place;
        }
    }

    /** A cell that is longer than its milder neighbour. */
    record Doubt(Cell longer, Cell milder, By by) {}

    /** What speaks against the value of a cell, in either direction. */
    static List<Doubt> of(Cell cell, List<Cell> all) {
        if (cell.table() != Table.DERATED_FLOOR_LIFE) {
            return List.of();
        }
        return Stream.of(By.values())
                .flatMap(by -> Stream.concat(
                        nearest(cell, all, by, -1).map(milder -> new Doubt(cell, milder, by)).stream(),
                        nearest(cell, all, by, 1).map(harsher -> new Doubt(harsher, cell, by)).stream()))
                .filter(doubt -> days(doubt.longer()).compareTo(days(doubt.milder())) > 0)
                .toList();
    }

    /** The next cell that differs in this only: below for -1, above for 1. */
    private static Optional<Cell> nearest(Cell cell, List<Cell> all, By by, int side) {
        List<String> own = places(cell);
        BigDecimal here = size(own.get(by.place));
        Comparator<Cell> bySize = Comparator.comparing(one -> size(places(one).get(by.place)));
        Stream<Cell> beside = all.stream()
                .filter(one -> one.table() == cell.table() && differsOnlyIn(by, own, places(one)))
                .filter(one -> Integer.signum(size(places(one).get(by.place)).compareTo(here)) == side);
        return side < 0 ? beside.max(bySize) : beside.min(bySize);
    }

    /** Body, level, temperature, humidity. */
    private static List<String> places(Cell cell) {
        return List.of((cell.key().row() + ", " + cell.key().column()).split(", ", -1));
    }

    private static boolean differsOnlyIn(By by, List<String> one, List<String> other) {
        if (one.size() != other.size()) {
            return false;
        }
        for (int i = 0; i < one.size(); i++) {
            if (one.get(i).equals(other.get(i)) == (i == by.place)) {
                return false;
            }
        }
        return true;
    }

    /** The number in it, and half more for the levels between, such as 2a. */
    private static BigDecimal size(String text) {
        Matcher number = NUMBER.matcher(text);
        BigDecimal size = number.find() ? new BigDecimal(number.group()) : BigDecimal.ZERO;
        return text.endsWith("a") ? size.add(HALF) : size;
    }

    private static BigDecimal days(Cell cell) {
        Matcher number = NUMBER.matcher(cell.value());
        return number.matches() ? new BigDecimal(cell.value()) : UNLIMITED;
    }
}
