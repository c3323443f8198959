package bagclock.logfile;

import bagclock.logfile.Channel.Kind;
import bagclock.logfile.Channel.Unit;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads line by line, and counts what it found. */
final class RowReader {
    private static final int MOST_FAULTS = 200;
    private static final double SATURATED = 100;

    private final LogFile file;
    private final Layout.Table table;
    private final SampleTaker taker;
    private final StampReader stamps;
    private final LocalClock clock;
    private final List<Optional<Kind>> kinds;
    private final Map<String, Integer> byName = new HashMap<>();
    private final boolean[] fahrenheit;
    private final double[] values;
    private final TimesSeen times;
    private final List<LogFault> faults = new ArrayList<>();
    private long faultCount;
    private long rows;
    private long samples;
    private long withoutValue;
    private long clipped;
    private long line;
    private Optional<Integer> lost = Optional.empty();

    RowReader(LogFile file, SampleTaker taker) {
        this.file = file;
        this.table = file.layout().table();
        this.taker = taker;
        this.times = new TimesSeen(table.isOneValueALine());
        Layout.Times layout = file.layout().times();
        Answers answers = file.answers();
        this.stamps = new StampReader(
                layout.order().or(answers::dayOrder), layout.spreadsheetDays() && answers.spreadsheetDays());
        ZoneId zone = answers.zone()
                .or(() -> layout.headerOffset().map(offset -> (ZoneId) offset))
                .orElse(ZoneOffset.UTC);
        this.clock = new LocalClock(zone, layout.newestFirst(), answers.secondOfBoth());
        List<Channel> channels = file.layout().channels();
        this.kinds = channels.stream().map(file::kind).toList();
        this.values = new double[channels.size()];
        this.fahrenheit = new boolean[channels.size()];
        for (int i = 0; i < fahrenheit.length; i++) {
            fahrenheit[i] = channels.get(i)
                    .unit()
                    .or(answers::unit)
                    .filter(unit -> unit == Unit.FAHRENHEIT)
                    .isPresent();
        }
        channels.forEach(channel -> byName.put(channel.name(), byName.size()));
    }

    void take(CsvRecord record) {
        line = record.getStartingLineNumber();
        rows++;
        if (hasTooManyCells(record)) {
            fault(LogFault.Kind.TOO_MANY_CELLS, "", String.join(" | ", record.getFields()));
            return;
        }
        boolean read = readValues(record);
        Optional<Stamp> stamp = stamps.read(time(record));
        if (stamp.isEmpty()) {
            fault(LogFault.Kind.TIME_UNREADABLE, "", time(record));
            return;
        }
        long atMs = ms(stamp.get());
        if (read) {
            samples++;
            times.add(atMs);
            taker.take(line, atMs, values);
        } else {
            withoutValue++;
            lost.ifPresent(channel -> taker.lost(atMs, channel));
        }
    }

    /** Blank cells behind the last column are a trailing separator. */
    private boolean hasTooManyCells(CsvRecord record) {
        for (int i = table.width(); i < record.getFieldCount(); i++) {
            if (!record.getField(i).isBlank()) {
                return true;
            }
        }
        return false;
    }

    private String time(CsvRecord record) {
        List<Integer> columns = file.layout().times().columns();
        String first = cell(record, columns.get(0));
        return columns.size() == 1 ? first : first + " " + cell(record, columns.get(1));
    }

    private static String cell(CsvRecord record, int column) {
        return column < record.getFieldCount() ? record.getField(column).strip() : "";
    }

    private long ms(Stamp stamp) {
        if (stamp.offset().isPresent()) {
            return stamp.local().toInstant(stamp.offset().get()).toEpochMilli();
        }
        long ms = clock.ms(stamp.local());
        if (clock.wasSkipped()) {
            fault(LogFault.Kind.TIME_SKIPPED, "", stamp.local().toString());
        }
        return ms;
    }

    /** Whether at least one value was read. */
    private boolean readValues(CsvRecord record) {
        Arrays.fill(values, Double.NaN);
        boolean any = false;
        if (table.isOneValueALine()) {
            return readValue(record);
        }
        for (int i = 0; i < values.length; i++) {
            values[i] = value(i, cell(record, table.columns().get(i)));
            any |= !Double.isNaN(values[i]);
        }
        return any;
    }

    private boolean readValue(CsvRecord record) {
        Optional<Integer> channel = Optional.ofNullable(byName.get(cell(record, table.nameColumn())));
        channel.ifPresent(one ->
                values[one] = value(one, cell(record, table.columns().get(0))));
        lost = channel.filter(one -> Double.isNaN(values[one]));
        return channel.isPresent() && lost.isEmpty();
    }

    private double value(int channel, String cell) {
        if (kinds.get(channel).isEmpty()) {
            return Double.NaN;
        }
        Kind kind = kinds.get(channel).get();
        double read = Value.read(cell, table.decimalComma());
        if (Double.isNaN(read)) {
            return read;
        }
        String name = file.layout().channels().get(channel).name();
        if (read == Value.UNREADABLE) {
            fault(LogFault.Kind.NUMBER_UNREADABLE, name, cell);
            return Double.NaN;
        }
        double value = fahrenheit[channel] && kind.isInDegrees() ? Unit.FAHRENHEIT.celsius(read) : read;
        if (!file.bounds().holds(kind, value)) {
            fault(LogFault.Kind.OUT_OF_RANGE, name, cell);
            return Double.NaN;
        }
        boolean above = kind == Kind.HUMIDITY && value > SATURATED;
        clipped += above ? 1 : 0;
        return above ? SATURATED : value;
    }

    private void fault(LogFault.Kind kind, String column, String text) {
        faultCount++;
        if (faults.size() < MOST_FAULTS) {
            faults.add(new LogFault(line, column, kind, text.length() > 80 ? text.substring(0, 80) : text));
        }
    }

    /** The rest can't be cut into cells. */
    void stopped() {
        line++;
        fault(LogFault.Kind.UNREADABLE, "", "");
    }

    LogReport report() {
        List<Question> unclear = clock.isUnclear() ? List.of(Question.DOUBLE_HOUR) : List.of();
        return new LogReport(
                rows, samples, withoutValue, clipped, faults, faultCount, times.span(), times.report(), unclear);
    }
}
