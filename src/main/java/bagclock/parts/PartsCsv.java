package bagclock.parts;

import bagclock.platform.CsvTable;
import bagclock.register.PartType;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** Writes part types as a file that {@link PartsFile} reads back as they are. */
final class PartsCsv {
    private PartsCsv() {}

    static String of(List<PartType> types) {
        return CsvTable.of(
                Arrays.stream(Column.values()).map(Column::code).toList(),
                types.stream().map(PartsCsv::fields).toList());
    }

    private static List<String> fields(PartType type) {
        Map<Column, String> texts = PartWriting.of(type);
        return Arrays.stream(Column.values())
                .map(column -> CellGuard.given(column, texts.getOrDefault(column, "")))
                .toList();
    }
}
