package bagclock.core.standard;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One table file, read strictly: a head of {@code # name: text} lines, the line of column names, then exactly one line
 * for each combination of the table's keys, in their order.
 */
final class Sheet {
    private static final Set<String> HEAD =
            Set.of("title", "document", "table", "units", "blanks", "read by", "checked", "marks");

    private final Table table;
    private final List<Line> lines;

    private record Line(int number, Cell cell) {}

    private Sheet(Table table, List<Line> lines) {
        this.table = table;
        this.lines = List.copyOf(lines);
    }

    /** Refuses with {@link BrokenTable} anything that is not as the table asks. */
    static Sheet parse(Table table, List<String> text) {
        int headLines =
                (int) text.stream().takeWhile(line -> line.startsWith("#")).count();
        Map<String, String> head = head(table, text.subList(0, headLines));
        int first = headLines + 1;
        requireColumnNames(table, first, first <= text.size() ? text.get(headLines) : "");
        List<List<String>> keys = Axis.lines(table.axes());
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < keys.size(); i++) {
            int number = first + 1 + i;
            if (number > text.size()) {
                throw new BrokenTable(table.fileName(), number, "missing: " + String.join(",", keys.get(i)));
            }
            lines.add(new Line(number, cell(table, head, keys.get(i), number, text.get(number - 1))));
        }
        if (text.size() > first + keys.size()) {
            throw new BrokenTable(table.fileName(), first + keys.size() + 1, "one line too many");
        }
        return new Sheet(table, lines);
    }

    private static Map<String, String> head(Table table, List<String> text) {
        Map<String, String> head = new HashMap<>();
        for (int i = 0; i < text.size(); i++) {
            String[] parts = text.get(i).substring(1).strip().split(": ", 2);
            if (parts.length < 2 || !(HEAD.contains(parts[0]) || parts[0].equals("note"))) {
                throw new BrokenTable(table.fileName(), i + 1, "unknown head line: " + text.get(i));
            }
            if (head.put(parts[0], parts[1]) != null && !parts[0].equals("note")) {
                throw new BrokenTable(table.fileName(), i + 1, "stands twice: " + parts[0]);
            }
        }
        for (String name : HEAD) {
            if (!head.containsKey(name)) {
                throw new BrokenTable(table.fileName(), 1, "no head line '" + name + "'");
            }
        }
        return head;
    }

    private static void requireColumnNames(Table table, int number, String found) {
        String wanted = Stream.concat(
                        table.axes().stream().map(Axis::name), Stream.of(table.valueName(), "status", "sources"))
                .collect(Collectors.joining(","));
        if (!found.equals(wanted)) {
            throw new BrokenTable(table.fileName(), number, "columns must be " + wanted + ", were " + found);
        }
    }

    private static Cell cell(Table table, Map<String, String> head, List<String> keys, int number, String line) {
        String[] fields = line.split(",", -1);
        int wanted = keys.size() + 3;
        if (fields.length != wanted) {
            throw new BrokenTable(
                    table.fileName(), number, "needs " + wanted + " fields, has " + fields.length + ": " + line);
        }
        List<String> found = List.of(fields).subList(0, keys.size());
        if (!found.equals(keys)) {
            throw new BrokenTable(
                    table.fileName(),
                    number,
                    "expected " + String.join(",", keys) + ", found " + String.join(",", found));
        }
        String sources = fields[wanted - 1];
        Status status = status(table, number, fields[wanted - 2]);
        if (status == Status.SEEN && sources.isEmpty()) {
            throw new BrokenTable(table.fileName(), number, "a value that was seen needs its sources");
        }
        Citation citation = new Citation(
                head.getOrDefault("document", ""),
                head.getOrDefault("table", ""),
                printed(table, keys, false),
                printed(table, keys, true),
                status,
                sources);
        return new Cell(table, fields[keys.size()], citation);
    }

    private static Status status(Table table, int number, String code) {
        try {
            return Status.ofShipped(code);
        } catch (IllegalArgumentException refused) {
            throw new BrokenTable(table.fileName(), number, String.valueOf(refused.getMessage()));
        }
    }

    private static String printed(Table table, List<String> keys, boolean column) {
        List<String> printed = new ArrayList<>();
        for (int i = 0; i < keys.size(); i++) {
            if (table.axis(i).column() == column) {
                printed.add(table.axis(i).printed(keys.get(i)));
            }
        }
        return String.join(", ", printed);
    }

    /** Refuses with {@link BrokenTable} a line that names a source without a title. */
    void requireSources(Set<String> ids) {
        for (Line line : lines) {
            String named = line.cell().citation().sources();
            for (String id : named.isEmpty() ? List.<String>of() : List.of(named.split("\\+", -1))) {
                if (!ids.contains(id)) {
                    throw new BrokenTable(table.fileName(), line.number(), "unknown source '" + id + "'");
                }
            }
        }
    }

    Sheet with(SiteValues site) {
        return new Sheet(
                table,
                lines.stream()
                        .map(line -> new Line(
                                line.number(),
                                site.of(line.cell().key())
                                        .map(line.cell()::with)
                                        .orElse(line.cell())))
                        .toList());
    }

    List<Cell> cells() {
        return lines.stream().map(Line::cell).toList();
    }

    /** All values in the order of the lines; refuses with {@link BrokenTable} one that can't be parsed. */
    <T> List<Cited<T>> values(Function<Cell, T> parse) {
        List<Cited<T>> values = new ArrayList<>();
        for (Line line : lines) {
            Cell cell = line.cell();
            try {
                values.add(new Cited<>(parse.apply(cell), cell.citation()));
            } catch (IllegalArgumentException | ArithmeticException refused) {
                String where = cell.citation().status() == Status.SITE ? "site value: " : "";
                throw new BrokenTable(table.fileName(), line.number(), where + refused.getMessage());
            }
        }
        return List.copyOf(values);
    }
}
