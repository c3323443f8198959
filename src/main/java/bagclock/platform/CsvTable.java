package bagclock.platform;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;

/** A table as other programs read it (RFC 4180). */
public final class CsvTable {
    private CsvTable() {}

    /** The text of a table: its names, then its lines, each as they are. */
    public static String of(List<String> names, List<List<String>> lines) {
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().build(text)) {
            csv.writeRecord(names);
            lines.forEach(csv::writeRecord);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.toString();
    }

    /** The text with an apostrophe before it where an office program would take it for a formula. */
    public static String defused(String text) {
        return text.matches("(?s)[=+@\\-\\t\\r].*") ? "'" + text : text;
    }
}
