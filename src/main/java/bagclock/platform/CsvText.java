package bagclock.platform;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.function.Consumer;

/**
 * A table as users' programs write it: with or without a byte order mark, separated by what its first line shows. A
 * line with more or fewer fields than the first is handed on like any other, so that the reader can name it and go on.
 *
 * @param body the text without a byte order mark
 * @param separator of the fields
 */
public record CsvText(String body, char separator) {
    private static final char BYTE_ORDER_MARK = '\uFEFF';
    private static final char COMMA = ',';

    /**
     * The text with its separator.
     *
     * @param separators that it may have beside the comma, the surest first
     */
    public static CsvText of(String text, String separators) {
        String body = text.indexOf(BYTE_ORDER_MARK) == 0 ? text.substring(1) : text;
        String head = body.lines().findFirst().orElse("");
        char separator = (char) separators
                .chars()
                .filter(mark -> head.indexOf(mark) >= 0)
                .findFirst()
                .orElse(COMMA);
        return new CsvText(body, separator);
    }

    /** Hands on every line; false if the rest of the text could not be told apart into lines. */
    public boolean read(Consumer<CsvRecord> take) {
        try (CsvReader<CsvRecord> lines = CsvReader.builder()
                .fieldSeparator(separator)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .ofCsvRecord(body)) {
            lines.forEach(take);
            return true;
        } catch (CsvParseException failure) {
            return false;
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }
}
