package bagclock.logfile;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/**
 * A file of a logger, read by a layout and what a person said. Reading it again gives the same samples; it is never held
 * in memory.
 *
 * @param layout found by {@link LayoutFinder}
 */
public record LogFile(LogSource source, Layout layout, Answers answers, Bounds bounds) {
    /**
     * Hands on every sample, as they stand in the file, and reports on all lines.
     *
     * @throws IllegalStateException if something must be said before
     */
    public LogReport read(SampleTaker taker) throws IOException {
        List<Question> open = layout.open(answers);
        if (!open.isEmpty()) {
            throw new IllegalStateException("not said yet: " + open);
        }
        RowReader rows = new RowReader(this, taker);
        try (CsvReader<CsvRecord> reader =
                Cells.open(source, layout.table().charset(), layout.table().separator())) {
            for (CsvRecord record : reader) {
                if (record.getStartingLineNumber() >= layout.table().firstLine()) {
                    rows.take(record);
                }
            }
        } catch (CsvParseException unreadable) {
            rows.stopped();
        }
        return rows.report();
    }

    /** What a channel measures, as the file says it or as it was said about the file. */
    public Optional<Channel.Kind> kind(Channel channel) {
        Answers.Names names = answers.names();
        if (names.temperature().filter(channel.name()::equals).isPresent()) {
            return Optional.of(Channel.Kind.TEMPERATURE);
        } else if (names.humidity().filter(channel.name()::equals).isPresent()) {
            return Optional.of(channel.kind().orElse(Channel.Kind.HUMIDITY));
        }
        return channel.kind();
    }
}
