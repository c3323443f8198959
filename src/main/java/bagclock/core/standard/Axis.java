package bagclock.core.standard;

import java.util.List;
import java.util.stream.Stream;

/**
 * A key column of a table file: its name, how a key is printed in a citation, and the keys in their order.
 *
 * @param print with one {@code %s} for the key
 * @param column whether its keys are columns of the printed table; else rows
 */
record Axis(String name, String print, boolean column, List<String> keys) {
    static Axis row(String name, String print, String... keys) {
        return new Axis(name, print, false, List.of(keys));
    }

    static Axis column(String name, String print, String... keys) {
        return new Axis(name, print, true, List.of(keys));
    }

    /** Every level from 2 to 5a. */
    static Axis levels() {
        return row("level", "level %s", "2", "2a", "3", "4", "5", "5a");
    }

    /** The thickness rows of the bake tables, see {@link BakeRow}. */
    static Axis bakeThickness() {
        return row("thickness", "%s", "<=1.4 mm", ">1.4 to 2.0 mm", ">2.0 to 4.5 mm");
    }

    String printed(String key) {
        return print.replace("%s", key);
    }

    double[] numbers() {
        return keys.stream().mapToDouble(Double::parseDouble).toArray();
    }

    /** All combinations of keys, the last axis running fastest. */
    static List<List<String>> lines(List<Axis> axes) {
        List<List<String>> lines = List.of(List.of());
        for (Axis axis : axes) {
            lines = lines.stream()
                    .flatMap(line -> axis.keys.stream()
                            .map(key ->
                                    Stream.concat(line.stream(), Stream.of(key)).toList()))
                    .toList();
        }
        return lines;
    }
}
