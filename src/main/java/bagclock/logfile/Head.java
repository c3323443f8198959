package bagclock.logfile;

import de.siegmar.fastcsv.reader.CsvRecord;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The first lines of a file: everything down to the first line that begins with data, and some lines of data. */
final class Head {
    private static final int MOST_HEADER_LINES = 25;

    private final List<CsvRecord> header;
    private final List<CsvRecord> rows;
    private final List<Integer> timeColumns;
    private final boolean decimalComma;
    private final boolean spreadsheetDays;
    private final StampReader stamps;

    private Head(List<CsvRecord> records, int first, Found found, boolean decimalComma) {
        this.header = records.subList(0, first);
        this.rows = records.subList(first, records.size());
        this.timeColumns = found.columns();
        this.spreadsheetDays = found.spreadsheetDays();
        this.decimalComma = decimalComma;
        this.stamps = new StampReader(Optional.empty(), spreadsheetDays);
        rows.forEach(row -> stamp(row, stamps));
    }

    /** Where the times of a line stand. */
    private record Found(List<Integer> columns, boolean spreadsheetDays) {}

    static Optional<Head> of(List<CsvRecord> records, boolean decimalComma) {
        for (int i = 0; i < Math.min(records.size(), MOST_HEADER_LINES); i++) {
            Optional<Found> found = times(records, i);
            if (found.isPresent() && hasValue(records.get(i), found.get().columns(), decimalComma)) {
                return Optional.of(new Head(records, i, found.get(), decimalComma));
            }
        }
        return Optional.empty();
    }

    private static Optional<Found> times(List<CsvRecord> records, int line) {
        CsvRecord row = records.get(line);
        Optional<Found> plain = firstColumns(row, false, column -> true);
        boolean isCalendar = plain.filter(found -> !isNumber(row, found)).isPresent();
        if (isCalendar) {
            return plain;
        }
        List<CsvRecord> header = records.subList(0, line);
        Optional<Found> named = firstColumns(row, false, column -> Wording.isTime(words(header, column)));
        return named.or(() -> firstColumns(row, true, column -> Wording.isTime(words(header, column))))
                .or(() -> header.isEmpty() ? plain : Optional.empty());
    }

    private static boolean isNumber(CsvRecord row, Found found) {
        String cell = row.getField(found.columns().get(0)).strip();
        return Value.read(cell, false) != Value.UNREADABLE;
    }

    private static Optional<Found> firstColumns(
            CsvRecord row, boolean spreadsheetDays, java.util.function.IntPredicate isMeant) {
        StampReader reader = new StampReader(Optional.empty(), spreadsheetDays);
        for (int column = 0; column < row.getFieldCount(); column++) {
            if (!isMeant.test(column)) {
                continue;
            }
            if (reader.read(cell(row, column)).isPresent()) {
                return Optional.of(new Found(List.of(column), spreadsheetDays));
            }
            boolean apart = column + 1 < row.getFieldCount()
                    && reader.read(cell(row, column) + " " + cell(row, column + 1))
                            .isPresent();
            if (apart) {
                return Optional.of(new Found(List.of(column, column + 1), false));
            }
        }
        return Optional.empty();
    }

    private static boolean hasValue(CsvRecord row, List<Integer> times, boolean decimalComma) {
        return IntStream.range(0, row.getFieldCount())
                .filter(column -> !times.contains(column))
                .anyMatch(column -> isNumber(cell(row, column), decimalComma));
    }

    private static String cell(CsvRecord row, int column) {
        return column < row.getFieldCount() ? row.getField(column).strip() : "";
    }

    Optional<Stamp> stamp(CsvRecord row, StampReader reader) {
        String date = cell(row, timeColumns.get(0));
        return reader.read(timeColumns.size() == 1 ? date : date + " " + cell(row, timeColumns.get(1)));
    }

    StampReader stamps() {
        return stamps;
    }

    List<Integer> timeColumns() {
        return timeColumns;
    }

    boolean isSpreadsheetDays() {
        return spreadsheetDays;
    }

    long firstLine() {
        return rows.get(0).getStartingLineNumber();
    }

    int width() {
        int inRows = rows.get(0).getFieldCount();
        int inHeader = header.stream().mapToInt(CsvRecord::getFieldCount).max().orElse(0);
        return Math.max(inHeader, header.isEmpty() ? inRows : Math.min(inRows, inHeader));
    }

    /** All that the header says about a column; lines with a single cell are titles and say nothing. */
    String header(int column) {
        return words(header, column);
    }

    private static String words(List<CsvRecord> header, int column) {
        return header.stream()
                .filter(line -> line.getFields().stream()
                                .filter(cell -> !cell.isBlank())
                                .count()
                        > 1)
                .map(line -> cell(line, column))
                .filter(cell -> !cell.isEmpty())
                .collect(Collectors.joining(" "));
    }

    /** The column as a person calls it. */
    String name(int column) {
        String words = header(column);
        return words.isEmpty() ? "column " + (column + 1) : words;
    }

    /** Columns with values whose header says what they are; where none says so, every column with numbers. */
    List<Integer> valueColumns() {
        List<Integer> numbers = IntStream.range(0, width())
                .filter(column -> !timeColumns.contains(column) && isNumbers(column) && !isCounter(column))
                .boxed()
                .toList();
        List<Integer> known = numbers.stream()
                .filter(column -> Wording.kind(header(column)).isPresent())
                .toList();
        return known.isEmpty() ? numbers : known;
    }

    private boolean isNumbers(int column) {
        List<String> cells = rows.stream().map(row -> cell(row, column)).toList();
        long readable = cells.stream()
                .filter(cell -> Value.isValueOrMissing(cell, decimalComma))
                .count();
        boolean something = cells.stream().anyMatch(cell -> isNumber(cell, decimalComma));
        boolean said = Wording.kind(header(column)).isPresent();
        boolean mostly = readable * 2 > cells.size();
        return something ? said || mostly : said && mostly;
    }

    private static boolean isNumber(String cell, boolean decimalComma) {
        return Double.isFinite(Value.read(cell, decimalComma));
    }

    /** 0, 1, 2 and so on, or whole numbers before the time: no values. */
    private boolean isCounter(int column) {
        List<Double> values = rows.stream()
                .map(row -> Value.read(cell(row, column), decimalComma))
                .filter(Double::isFinite)
                .toList();
        boolean ascends = values.size() > 1
                && values.get(0) <= 1
                && IntStream.range(1, values.size()).allMatch(i -> values.get(i) - values.get(i - 1) == 1);
        boolean isFirstAndWhole = column < Math.min(timeColumns.get(0), 1)
                && values.stream().allMatch(value -> value == Math.rint(value));
        return ascends || isFirstAndWhole;
    }

    /** Where a file with one line for each value names the sensor: beside a single column that doesn't say what it is. */
    int nameColumn(List<Integer> valueColumns) {
        if (valueColumns.size() != 1
                || Wording.kind(header(valueColumns.get(0))).isPresent()) {
            return -1;
        }
        return IntStream.range(0, width())
                .filter(column -> !timeColumns.contains(column) && !valueColumns.contains(column))
                .filter(column -> rows.stream().anyMatch(row -> isSensorName(cell(row, column))))
                .findFirst()
                .orElse(-1);
    }

    private static boolean isSensorName(String cell) {
        return Wording.kind(cell.replace('_', ' ').replace('.', ' ')).isPresent();
    }

    boolean isWithOffset() {
        return rows.stream()
                .flatMap(row -> stamp(row, stamps).stream())
                .findFirst()
                .filter(stamp -> stamp.offset().isPresent())
                .isPresent();
    }

    Optional<ZoneOffset> headerOffset() {
        return header.stream()
                .flatMap(line -> line.getFields().stream())
                .map(Wording::offset)
                .flatMap(Optional::stream)
                .findFirst();
    }

    boolean isNewestFirst() {
        List<LocalDateTime> times = new ArrayList<>();
        rows.forEach(row -> stamp(row, stamps).ifPresent(stamp -> times.add(stamp.local())));
        return times.size() > 1 && times.get(times.size() - 1).isBefore(times.get(0));
    }
}
