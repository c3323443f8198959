package bagclock.parts;

import bagclock.core.Reason;
import bagclock.core.Refusal;
import bagclock.platform.CsvText;
import bagclock.register.PartType;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * A file of part types: one on a line, columns named in the first line in any order. A column that is not in the file
 * leaves what is known as it is; an empty field says that it is not known. Separated by comma, semicolon or tab.
 *
 * @param good lines that can be kept
 * @param bad what can't be read, by line
 * @param unknownColumns columns of the file that nothing is known of
 */
record PartsFile(List<Line> good, List<BadLine> bad, List<String> unknownColumns) {
    /** What a line would do. */
    enum Effect {
        NEW,
        CHANGED,
        SAME
    }

    /**
     * One line that can be kept.
     *
     * @param changed the columns that would change; empty for a new part type
     */
    record Line(long line, PartType type, Effect effect, List<Column> changed) {
        Line {
            changed = List.copyOf(changed);
        }
    }

    /** What is wrong with a line; an empty column for the line as a whole. */
    record BadLine(long line, String column, Refusal refusal) {}

    PartsFile {
        good = List.copyOf(good);
        bad = List.copyOf(bad);
        unknownColumns = List.copyOf(unknownColumns);
    }

    /**
     * Reads a file; never fails, what can't be read is named.
     *
     * @param known the part type of this number, if there is one
     */
    static PartsFile read(String text, Function<String, Optional<PartType>> known) {
        CsvText csv = CsvText.of(text, "\t;");
        Lines lines = new Lines(known);
        if (!csv.read(lines::take)) {
            lines.bad.add(new BadLine(lines.last + 1, "", Refusal.of(Reason.FILE_UNREADABLE)));
        }
        return new PartsFile(lines.good, lines.bad, lines.unknown);
    }

    private static final class Lines {
        private final Function<String, Optional<PartType>> known;
        private final List<Line> good = new ArrayList<>();
        private final List<BadLine> bad = new ArrayList<>();
        private final List<String> unknown = new ArrayList<>();
        private final Map<Column, Integer> places = new EnumMap<>(Column.class);
        private final Map<String, Long> numbers = new HashMap<>();
        private int columns;
        private boolean readable = true;
        private long last;

        Lines(Function<String, Optional<PartType>> known) {
            this.known = known;
        }

        void take(CsvRecord csv) {
            last = csv.getStartingLineNumber();
            if (columns == 0) {
                head(csv);
            } else if (readable) {
                line(csv);
            }
        }

        private void head(CsvRecord csv) {
            columns = csv.getFieldCount();
            Set<String> names = new HashSet<>();
            for (int i = 0; i < columns; i++) {
                int place = i;
                String name = csv.getField(i).strip().toLowerCase(Locale.ROOT);
                if (!names.add(name)) {
                    unreadable(name, Refusal.of(Reason.COLUMN_TWICE, name));
                }
                Column.parse(name).ifPresentOrElse(column -> places.put(column, place), () -> unknown.add(name));
            }
            if (!places.containsKey(Column.NUMBER)) {
                String name = Column.NUMBER.code();
                unreadable(name, Refusal.of(Reason.COLUMN_MISSING, name));
            }
        }

        private void unreadable(String column, Refusal refusal) {
            readable = false;
            bad.add(new BadLine(last, column, refusal));
        }

        private void line(CsvRecord csv) {
            if (csv.getFieldCount() != columns) {
                bad.add(new BadLine(last, "", Refusal.of(Reason.LINE_OF_OTHER_LENGTH, csv.getFieldCount(), columns)));
                return;
            }
            Map<Column, String> texts = new EnumMap<>(Column.class);
            places.forEach((column, place) -> texts.put(column, CellGuard.taken(column, csv.getField(place))));
            String number = texts.getOrDefault(Column.NUMBER, "");
            Long first = numbers.putIfAbsent(number, last);
            if (first != null && !number.isEmpty()) {
                bad.add(new BadLine(last, Column.NUMBER.code(), Refusal.of(Reason.NAMED_TWICE, number, first)));
                return;
            }
            Optional<PartType> before = known.apply(number);
            Map<Column, String> all = new EnumMap<>(Column.class);
            before.ifPresent(type -> all.putAll(PartWriting.of(type)));
            all.putAll(texts);
            PartReading.Read read = PartReading.of(all);
            read.faults()
                    .forEach(fault -> bad.add(new BadLine(last, fault.column().code(), fault.refusal())));
            read.type().ifPresent(type -> good.add(line(type, before)));
        }

        private Line line(PartType type, Optional<PartType> before) {
            if (before.isEmpty()) {
                return new Line(last, type, Effect.NEW, List.of());
            }
            List<Column> changed = Changed.between(before.get(), type);
            return new Line(last, type, changed.isEmpty() ? Effect.SAME : Effect.CHANGED, changed);
        }
    }
}
