package bagclock.tables;

import bagclock.core.Reason;
import bagclock.core.Refusal;
import bagclock.core.standard.CellKey;
import bagclock.core.standard.Table;
import bagclock.platform.CsvTable;
import bagclock.platform.CsvText;
import bagclock.register.ComparedCell;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A site's comparisons as a file, so that one comparison serves many sites: one cell on a line.
 *
 * @param good lines that can be kept
 * @param bad what can't be read
 * @param unknownColumns columns of the file that nothing is known of
 */
record ConfirmationsFile(List<Line> good, List<BadLine> bad, List<String> unknownColumns) {
    private static final String EDITION = "edition";
    private static final String TABLE = "table";
    private static final String ROW = "row";
    private static final String COLUMN = "column";
    private static final String VALUE = "value";
    private static final String BY = "compared_by";
    private static final String ON = "compared_on";
    private static final String COPY = "copy";
    private static final List<String> COLUMNS = List.of(EDITION, TABLE, ROW, COLUMN, VALUE, BY, ON, COPY);
    private static final int LONGEST_NAME = 80;
    private static final int LONGEST_COPY = 120;

    /** A line that can be kept. */
    record Line(long line, ComparedCell cell) {}

    /** What is wrong with a line; an empty column for the line as a whole. */
    record BadLine(long line, String column, Refusal refusal) {}

    ConfirmationsFile {
        good = List.copyOf(good);
        bad = List.copyOf(bad);
        unknownColumns = List.copyOf(unknownColumns);
    }

    static String write(String edition, List<ComparedCell> cells) {
        return CsvTable.of(
                COLUMNS,
                cells.stream()
                        .map(cell -> List.of(
                                edition,
                                cell.key().table().name(),
                                cell.key().row(),
                                cell.key().column(),
                                cell.value().orElse(""),
                                cell.by(),
                                cell.on().toString(),
                                cell.copy()))
                        .toList());
    }

    /**
     * Reads a file; never fails, what can't be read is named.
     *
     * @param today no comparison is later
     */
    static ConfirmationsFile read(String text, CellValues values, LocalDate today) {
        CsvText csv = CsvText.of(text, ";");
        Lines lines = new Lines(values, today);
        if (!csv.read(lines::take)) {
            lines.bad.add(new BadLine(lines.last + 1, "", Refusal.of(Reason.FILE_UNREADABLE)));
        }
        return new ConfirmationsFile(lines.good, lines.bad, lines.unknown);
    }

    private static final class Lines {
        private final CellValues values;
        private final LocalDate today;
        private final List<Line> good = new ArrayList<>();
        private final List<BadLine> bad = new ArrayList<>();
        private final List<String> unknown = new ArrayList<>();
        private final Map<CellKey, Long> named = new HashMap<>();
        private List<String> head = List.of();
        private boolean readable = true;
        private long last;

        Lines(CellValues values, LocalDate today) {
            this.values = values;
            this.today = today;
        }

        void take(CsvRecord csv) {
            last = csv.getStartingLineNumber();
            if (head.isEmpty()) {
                head(csv);
            } else if (readable && csv.getFieldCount() != head.size()) {
                refuse("", Reason.LINE_OF_OTHER_LENGTH, csv.getFieldCount(), head.size());
            } else if (readable) {
                line(csv);
            }
        }

        private void head(CsvRecord csv) {
            head = csv.getFields().stream()
                    .map(name -> name.strip().toLowerCase(Locale.ROOT))
                    .toList();
            head.stream().filter(name -> !COLUMNS.contains(name)).forEach(unknown::add);
            COLUMNS.stream().filter(column -> !head.contains(column)).forEach(column -> {
                readable = false;
                refuse(column, Reason.COLUMN_MISSING, column);
            });
        }

        private void refuse(String column, Reason reason, Object... parts) {
            bad.add(new BadLine(last, column, Refusal.of(reason, parts)));
        }

        private String field(CsvRecord csv, String column) {
            return csv.getField(head.indexOf(column)).strip();
        }

        private void line(CsvRecord csv) {
            int before = bad.size();
            String edition = values.shipped().edition().name();
            if (!field(csv, EDITION).equals(edition)) {
                refuse(EDITION, Reason.EDITION_DIFFERS, field(csv, EDITION), edition);
            }
            Optional<CellKey> key = key(csv);
            String value = field(csv, VALUE);
            if (key.isPresent() && !values.takes(key.get(), value)) {
                refuse(VALUE, Reason.CELL_VALUE_UNREADABLE, value);
            }
            String by = words(csv, BY, LONGEST_NAME);
            String copy = words(csv, COPY, LONGEST_COPY);
            Optional<LocalDate> on = day(field(csv, ON));
            if (key.isPresent() && on.isPresent() && bad.size() == before) {
                good.add(new Line(last, new ComparedCell(key.get(), Optional.of(value), by, on.get(), copy)));
            }
        }

        private Optional<CellKey> key(CsvRecord csv) {
            String row = field(csv, ROW);
            String column = field(csv, COLUMN);
            Optional<CellKey> key = Arrays.stream(Table.values())
                    .filter(table -> table.name().equals(field(csv, TABLE)))
                    .map(table -> new CellKey(table, row, column))
                    .filter(values::knows)
                    .findFirst();
            if (key.isEmpty()) {
                refuse(TABLE, Reason.CELL_UNKNOWN, field(csv, TABLE), row, column);
                return key;
            }
            Long first = named.putIfAbsent(key.get(), last);
            if (first != null) {
                refuse(ROW, Reason.NAMED_TWICE, row + ", " + column, first);
            }
            return key;
        }

        private String words(CsvRecord csv, String column, int longest) {
            String text = field(csv, column);
            if (text.isEmpty()) {
                refuse(column, Reason.TEXT_MISSING, column);
            } else if (text.length() > longest) {
                refuse(column, Reason.TEXT_TOO_LONG, longest);
            }
            return text;
        }

        private Optional<LocalDate> day(String text) {
            Optional<LocalDate> day = Days.past(text, today);
            if (day.isEmpty()) {
                refuse(ON, Reason.DATE_UNREADABLE, text);
            }
            return day;
        }
    }
}
