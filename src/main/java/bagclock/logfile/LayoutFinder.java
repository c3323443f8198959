package bagclock.logfile;

import bagclock.logfile.Channel.Kind;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Finds out how a file is laid out: from its first lines, and from all of them where a few can't tell. */
public final class LayoutFinder {
    private static final int MOST_SENSORS = 200;

    private final LogSource source;
    private final Charset charset;
    private final char separator;

    private LayoutFinder(LogSource source, Charset charset, char separator) {
        this.source = source;
        this.charset = charset;
        this.separator = separator;
    }

    /** The layout; empty for a file in which no line has a time and a value. */
    public static Optional<Layout> find(LogSource source) throws IOException {
        Charset charset = Decoding.of(source);
        String text = Cells.head(source, charset);
        char separator = Cells.separator(text);
        Optional<Head> head = Head.of(Cells.records(text, separator), separator != ',');
        if (head.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new LayoutFinder(source, charset, separator).layout(head.get()));
    }

    private Layout layout(Head head) throws IOException {
        List<Integer> columns = head.valueColumns();
        int nameColumn = head.nameColumn(columns);
        List<Channel> channels = new ArrayList<>();
        if (nameColumn >= 0) {
            names(head, nameColumn).forEach(name -> channels.add(channel(name, name)));
        } else {
            columns.forEach(column -> channels.add(channel(head.name(column), head.header(column))));
        }
        Layout.Table table = new Layout.Table(charset, separator, head.firstLine(), columns, nameColumn, head.width());
        return new Layout(table, times(head), distinct(channels));
    }

    private static Channel channel(String name, String words) {
        Optional<Kind> kind = Wording.kind(words);
        return new Channel(
                name, kind, kind.filter(k -> k == Kind.HUMIDITY).isPresent() ? Optional.empty() : Wording.unit(words));
    }

    /** Two columns of one name are told apart by a number. */
    private static List<Channel> distinct(List<Channel> channels) {
        Set<String> taken = new LinkedHashSet<>();
        List<Channel> distinct = new ArrayList<>();
        for (Channel channel : channels) {
            String name = channel.name();
            for (int i = 2; !taken.add(name); i++) {
                name = channel.name() + " " + i;
            }
            distinct.add(new Channel(name, channel.kind(), channel.unit()));
        }
        return distinct;
    }

    private Layout.Times times(Head head) throws IOException {
        StampReader stamps = head.stamps();
        if (stamps.isOrderOpen()) {
            forEach(head, record -> head.stamp(record, stamps));
        }
        return new Layout.Times(
                head.timeColumns(),
                head.isWithOffset(),
                head.headerOffset(),
                stamps.orderSeen(),
                stamps.isOrderOpen(),
                head.isSpreadsheetDays(),
                head.isNewestFirst());
    }

    private Set<String> names(Head head, int nameColumn) throws IOException {
        Set<String> names = new LinkedHashSet<>();
        forEach(head, record -> {
            if (nameColumn < record.getFieldCount() && names.size() < MOST_SENSORS) {
                names.add(record.getField(nameColumn).strip());
            }
        });
        names.remove("");
        return names;
    }

    private void forEach(Head head, java.util.function.Consumer<CsvRecord> taker) throws IOException {
        try (CsvReader<CsvRecord> reader = Cells.open(source, charset, separator)) {
            for (CsvRecord record : reader) {
                if (record.getStartingLineNumber() >= head.firstLine()) {
                    taker.accept(record);
                }
            }
        } catch (de.siegmar.fastcsv.reader.CsvParseException unreadable) {
            // What could be read is enough to know the layout; reading the file names the line.
            return;
        }
    }
}
