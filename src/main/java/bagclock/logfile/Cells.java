package bagclock.logfile;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.StringReader;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Cuts a file into cells, and finds out at which character. */
final class Cells {
    /** Preferred in this order where several fit: a comma may be a decimal comma. */
    private static final char[] SEPARATORS = {';', '\t', '|', ','};

    private static final int HEAD_LINES = 60;
    private static final int HEAD_CHARACTERS = 1 << 17;

    private Cells() {}

    /** The first lines as they stand there. */
    static String head(LogSource source, Charset charset) throws IOException {
        try (var in = new BufferedReader(new InputStreamReader(source.open(), charset))) {
            char[] buffer = new char[HEAD_CHARACTERS];
            int length = 0;
            int read = 0;
            while (read >= 0 && length < buffer.length) {
                read = in.read(buffer, length, buffer.length - length);
                length += Math.max(read, 0);
            }
            String text = new String(buffer, 0, length);
            return whole(text, length == buffer.length);
        }
    }

    /** At most so many lines, none cut off. */
    private static String whole(String text, boolean more) {
        List<String> lines = text.lines().limit(HEAD_LINES + 1L).toList();
        int most = Math.min(HEAD_LINES, more ? lines.size() - 1 : lines.size());
        String joined = String.join("\n", lines.subList(0, Math.max(most, 0)));
        return joined.startsWith("\uFEFF") ? joined.substring(1) : joined;
    }

    static char separator(String head) throws IOException {
        char best = ',';
        long mostAlike = 0;
        for (char separator : SEPARATORS) {
            long alike = alike(records(head, separator));
            if (alike > mostAlike) {
                mostAlike = alike;
                best = separator;
            }
        }
        return best;
    }

    /** How many lines have the usual number of cells, which must be two at least. */
    private static long alike(List<CsvRecord> records) {
        Map<Integer, Long> counts = new HashMap<>();
        records.stream()
                .filter(record -> record.getFieldCount() > 1)
                .forEach(record -> counts.merge(record.getFieldCount(), 1L, Long::sum));
        return counts.values().stream().mapToLong(count -> count).max().orElse(0);
    }

    static List<CsvRecord> records(String text, char separator) throws IOException {
        List<CsvRecord> records = new ArrayList<>();
        try (CsvReader<CsvRecord> reader = builder(separator).ofCsvRecord(new StringReader(text))) {
            reader.forEach(records::add);
        } catch (de.siegmar.fastcsv.reader.CsvParseException unreadable) {
            return records;
        }
        return records;
    }

    static CsvReader<CsvRecord> open(LogSource source, Charset charset, char separator) throws IOException {
        return builder(separator).ofCsvRecord(new InputStreamReader(source.open(), charset));
    }

    private static CsvReader.CsvReaderBuilder builder(char separator) {
        return CsvReader.builder()
                .fieldSeparator(separator)
                .skipEmptyLines(true)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .trimWhitespacesAroundQuotes(true)
                .allowUnclosedQuote(true)
                .detectBomHeader(false);
    }
}
