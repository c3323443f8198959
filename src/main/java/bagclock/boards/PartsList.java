package bagclock.boards;

import bagclock.core.Reason;
import bagclock.core.Refusal;
import bagclock.platform.CsvText;
import bagclock.register.BoardType.Spot;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A board's parts list: a line for each part type with its quantity and reference designators; separated by comma,
 * semicolon or tab, the first line names the columns. See docs/reference/parts-list.md.
 *
 * @param good lines that can be kept
 * @param bad what can't, by line and column
 */
record PartsList(List<Line> good, List<BadLine> bad) {
    static final String PART = "part number";
    static final String QUANTITY = "quantity";
    static final String DESIGNATORS = "reference designators";
    static final String DESCRIPTION = "description";

    private static final int LONGEST_NUMBER = 80;
    private static final Map<String, String> NAMES = Map.ofEntries(
            Map.entry(PART, PART),
            Map.entry("part", PART),
            Map.entry(QUANTITY, QUANTITY),
            Map.entry("qty", QUANTITY),
            Map.entry(DESIGNATORS, DESIGNATORS),
            Map.entry("designators", DESIGNATORS),
            Map.entry("designator", DESIGNATORS),
            Map.entry("references", DESIGNATORS),
            Map.entry("reference", DESIGNATORS),
            Map.entry(DESCRIPTION, DESCRIPTION));

    /** Keeps its own copies. */
    PartsList {
        good = List.copyOf(good);
        bad = List.copyOf(bad);
    }

    /** A part type and where it sits. */
    record Line(long line, String partNumber, String description, List<String> locations) {}

    /** Why a line can't be kept; an empty column means the line as a whole. */
    record BadLine(long line, String column, Refusal refusal) {}

    /** Reads a list; never fails, what can't be read is named. */
    static PartsList read(String text) {
        CsvText csv = CsvText.of(text, "\t;");
        Reading reading = new Reading();
        if (!csv.read(reading::take)) {
            reading.bad.add(new BadLine(reading.last + 1, "", Refusal.of(Reason.FILE_UNREADABLE)));
        }
        return new PartsList(reading.good, reading.bad);
    }

    /** Every location with its part number. */
    List<Spot> spots() {
        return good.stream()
                .flatMap(line -> line.locations().stream().map(location -> new Spot(location, line.partNumber())))
                .toList();
    }

    private static final class Reading {
        private final List<Line> good = new ArrayList<>();
        private final List<BadLine> bad = new ArrayList<>();
        private final Set<String> taken = new HashSet<>();
        private List<String> head = List.of();
        private boolean readable = true;
        private long last;

        void take(CsvRecord csv) {
            last = csv.getStartingLineNumber();
            if (head.isEmpty()) {
                head = csv.getFields().stream()
                        .map(name -> name.strip().toLowerCase(Locale.ROOT))
                        .map(name -> NAMES.getOrDefault(name, name))
                        .toList();
                List.of(PART, QUANTITY, DESIGNATORS).stream()
                        .filter(column -> !head.contains(column))
                        .forEach(this::missing);
            } else if (readable && csv.getFields().stream().anyMatch(field -> !field.isBlank())) {
                line(csv);
            }
        }

        private void missing(String column) {
            readable = false;
            bad.add(new BadLine(last, column, Refusal.of(Reason.COLUMN_MISSING, column)));
        }

        private void line(CsvRecord csv) {
            if (csv.getFieldCount() == head.size()) {
                read(csv);
            } else {
                refuse("", Reason.LINE_OF_OTHER_LENGTH, csv.getFieldCount(), head.size());
            }
        }

        private void read(CsvRecord csv) {
            Optional<String> part = part(field(csv, PART));
            Optional<List<String>> locations = locations(field(csv, DESIGNATORS));
            Optional<Integer> quantity = quantity(field(csv, QUANTITY));
            if (part.isEmpty() || locations.isEmpty() || quantity.isEmpty()) {
                return;
            }
            int named = locations.get().size();
            Optional<String> twice =
                    locations.get().stream().filter(taken::contains).findFirst();
            if (quantity.get() != named) {
                refuse(QUANTITY, Reason.QUANTITY_DIFFERS, quantity.get(), named);
            } else if (twice.isPresent()) {
                refuse(DESIGNATORS, Reason.LOCATION_TWICE, twice.get());
            } else {
                taken.addAll(locations.get());
                good.add(new Line(last, part.get(), field(csv, DESCRIPTION), locations.get()));
            }
        }

        private String field(CsvRecord csv, String column) {
            int index = head.indexOf(column);
            return index < 0 ? "" : csv.getField(index).strip();
        }

        private Optional<String> part(String text) {
            boolean fits = !text.isEmpty() && text.length() <= LONGEST_NUMBER && text.indexOf('\t') < 0;
            return fits ? Optional.of(text) : refuse(PART, Reason.TEXT_MISSING, PART);
        }

        private Optional<List<String>> locations(String text) {
            Optional<List<String>> all = Designators.read(text);
            return all.isPresent() ? all : refuse(DESIGNATORS, Reason.DESIGNATORS_UNREADABLE, text);
        }

        private Optional<Integer> quantity(String text) {
            return text.matches("\\d{1,6}")
                    ? Optional.of(Integer.valueOf(text))
                    : refuse(QUANTITY, Reason.NUMBER_UNREADABLE, text);
        }

        private <T> Optional<T> refuse(String column, Reason reason, Object... parts) {
            bad.add(new BadLine(last, column, Refusal.of(reason, parts)));
            return Optional.empty();
        }
    }
}
