package bagclock.parts;

import bagclock.register.PartType;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** Writes part types as a file that {@link PartsFile} reads back as they are. */
final class PartsCsv {
    private PartsCsv() {}

    static String of(List<PartType> types) {
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().build(text)) {
            csv.writeRecord(Arrays.stream(Column.values()).map(Column::code).toList());
            types.forEach(type -> csv.writeRecord(fields(type)));
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.toString();
    }

    private static List<String> fields(PartType type) {
        Map<Column, String> texts = PartWriting.of(type);
        return Arrays.stream(Column.values())
                .map(column -> CellGuard.given(column, texts.getOrDefault(column, "")))
                .toList();
    }
}
