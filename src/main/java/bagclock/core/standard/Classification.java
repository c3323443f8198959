package bagclock.core.standard;

import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.Millimetres;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * One of J-STD-020's two classification tables. Exactly 2.5 mm: edition C prints >= 2.5 mm for the last row, memory of
 * D.1 is > 2.5 mm. Read as the first, 2.5 mm and 100 mm3 lead-free give 250 C, as the second 260 C; we take the first,
 * because it is the lower.
 */
final class Classification {
    private final List<Limit> thicknesses;
    private final List<Limit> volumes;
    private final List<Cited<Celsius>> cells;

    /** Upper limit of a row or column; the last one has none. */
    private record Limit(String most, boolean inclusive) {
        boolean holds(BigDecimal value) {
            int order = value.compareTo(new BigDecimal(most));
            return order < 0 || (inclusive && order == 0);
        }
    }

    private Classification(List<Limit> thicknesses, List<Limit> volumes, List<Cited<Celsius>> cells) {
        this.thicknesses = thicknesses;
        this.volumes = volumes;
        this.cells = cells;
    }

    static Classification leadFree(List<Cited<Celsius>> cells) {
        return new Classification(
                List.of(new Limit("1.6", false), new Limit("2.5", false)),
                List.of(new Limit("350", false), new Limit("2000", true)),
                cells);
    }

    static Classification tinLead(List<Cited<Celsius>> cells) {
        return new Classification(List.of(new Limit("2.5", false)), List.of(new Limit("350", false)), cells);
    }

    /** The cells that are still possible for what is known of the body. */
    Stream<Cited<Celsius>> possible(Optional<Millimetres> thickness, Optional<BigDecimal> volumeMm3) {
        List<Integer> columns = possible(volumes, volumeMm3);
        return possible(thicknesses, thickness.map(Millimetres::value)).stream()
                .flatMap(row -> columns.stream().map(column -> cells.get(row * (volumes.size() + 1) + column)));
    }

    private static List<Integer> possible(List<Limit> limits, Optional<BigDecimal> value) {
        return value.map(known -> List.of((int)
                        limits.stream().takeWhile(limit -> !limit.holds(known)).count()))
                .orElseGet(() -> IntStream.rangeClosed(0, limits.size()).boxed().toList());
    }

    /** The lowest of all; the first of equals. */
    static Cited<Celsius> lowest(Stream<Cited<Celsius>> cells) {
        return cells.min(Comparator.comparing(Cited::value)).orElseThrow();
    }
}
