package bagclock.core.standard;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The file that tells what the ids in the sources columns stand for. */
final class Sources {
    static final String FILE = "sources.csv";
    private static final String COLUMNS = "id|title|link";

    private Sources() {}

    /** Refuses with {@link BrokenTable} a line without id and title, and an id that stands twice. */
    static List<Source> parse(List<String> text) {
        int first = (int) text.stream().takeWhile(line -> line.startsWith("#")).count();
        if (first == text.size() || !text.get(first).equals(COLUMNS)) {
            throw new BrokenTable(FILE, first + 1, "columns must be " + COLUMNS);
        }
        Map<String, Source> sources = new LinkedHashMap<>();
        for (int i = first + 1; i < text.size(); i++) {
            String[] fields = text.get(i).split("\\|", -1);
            if (fields.length != 3 || fields[0].isBlank() || fields[1].isBlank()) {
                throw new BrokenTable(FILE, i + 1, "needs id, title and link: " + text.get(i));
            }
            List<String> links = fields[2].isEmpty() ? List.of() : List.of(fields[2].split(" ", -1));
            if (sources.put(fields[0], new Source(fields[0], fields[1], links)) != null) {
                throw new BrokenTable(FILE, i + 1, "stands twice: " + fields[0]);
            }
        }
        return List.copyOf(new ArrayList<>(sources.values()));
    }
}
