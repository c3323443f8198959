package bagclock.core.standard;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;

/** Reads the second transcription of the tables: the text of each cell with its mark, by the name of the cell. */
final class SecondReading {
    private static final Pattern BLANKS = Pattern.compile("\\s+");
    private static final Pattern TIME = Pattern.compile("(\\d+)([hd])");

    private final Map<CellKey, String> cells = new LinkedHashMap<>();
    private final List<CellKey> twice = new ArrayList<>();
    private Table table = Table.FLOOR_LIFE;
    private String row = "";
    private String column = "";
    private List<String> head = List.of();

    static Map<CellKey, String> of(List<String> lines) {
        SecondReading reading = new SecondReading();
        lines.stream().filter(line -> !line.isBlank() && !line.startsWith("#")).forEach(reading::read);
        if (!reading.twice.isEmpty()) {
            throw new IllegalArgumentException("written twice: " + reading.twice);
        }
        return reading.cells;
    }

    private void read(String line) {
        if (line.startsWith("table ")) {
            table = Table.valueOf(line.substring(6));
        } else if (line.startsWith("row ")) {
            row = line.substring(4);
        } else if (line.equals("column") || line.startsWith("column ")) {
            column = line.substring(6).strip();
        } else if (line.startsWith(" ")) {
            head = words(line.strip());
        } else {
            readCells(words(line));
        }
    }

    private void readCells(List<String> words) {
        int keys = words.size() - head.size();
        for (int i = 0; i < head.size(); i++) {
            CellKey key = new CellKey(table, filled(row, words, head.get(i)), filled(column, words, head.get(i)));
            if (cells.put(key, cell(words.get(keys + i))) != null) {
                twice.add(key);
            }
        }
    }

    private static String cell(String word) {
        boolean memory = word.endsWith("*");
        String text = memory ? word.substring(0, word.length() - 1) : word;
        String value = text.equals("u") ? "unlimited" : TIME.matcher(text).replaceAll("$1 $2");
        return value + (memory ? " memory" : " seen");
    }

    private static String filled(String template, List<String> words, String head) {
        String filled = template.replace("{head}", head);
        for (int i = 0; i < words.size(); i++) {
            filled = filled.replace("{" + (i + 1) + "}", words.get(i));
        }
        return filled;
    }

    private static List<String> words(String line) {
        return Arrays.stream(BLANKS.split(Objects.requireNonNull(line)))
                .map(word -> word.replace('_', ' '))
                .toList();
    }
}
