package bagclock.logfile;

import java.nio.charset.Charset;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How a file is laid out, as far as the file itself says it.
 *
 * @param channels in the order of the file; in a file with one line for each value those that it names
 */
public record Layout(Table table, Times times, List<Channel> channels) {
    /**
     * Its cells.
     *
     * @param firstLine the first line below the header
     * @param columns of each channel; in a file with one line for each value the only one
     * @param nameColumn where a file with one line for each value names the sensor; -1 for one line for each time
     * @param width number of columns
     */
    public record Table(
            Charset charset, char separator, long firstLine, List<Integer> columns, int nameColumn, int width) {
        /** Keeps its own copy. */
        public Table {
            columns = List.copyOf(columns);
        }

        /** Whether a comma is a decimal comma. */
        boolean decimalComma() {
            return separator != ',';
        }

        /** Whether each line holds one value of the sensor that it names. */
        public boolean isOneValueALine() {
            return nameColumn >= 0;
        }
    }

    /**
     * Its times.
     *
     * @param columns one, or one for the date and one for the time of day
     * @param withOffset whether each time has its own offset
     * @param headerOffset an offset in the header that holds for all
     * @param order of day and month, where the year stands last and the file shows it
     * @param orderOpen whether both orders are possible
     * @param spreadsheetDays whether they are numbers that may be a spreadsheet's days
     * @param newestFirst whether the newest stands first
     */
    public record Times(
            List<Integer> columns,
            boolean withOffset,
            Optional<ZoneOffset> headerOffset,
            Optional<DayOrder> order,
            boolean orderOpen,
            boolean spreadsheetDays,
            boolean newestFirst) {
        /** Keeps its own copy. */
        public Times {
            columns = List.copyOf(columns);
        }
    }

    /** Keeps its own copy. */
    public Layout {
        channels = List.copyOf(channels);
    }

    /** What a person must still say before the file can be read. */
    public List<Question> open(Answers answers) {
        List<Question> open = new ArrayList<>();
        ask(open, Question.CHANNELS, isKindOpen() && !isNamed(answers));
        ask(open, Question.UNIT, isUnitOpen() && answers.unit().isEmpty());
        ask(open, Question.DAY_ORDER, times.orderOpen() && answers.dayOrder().isEmpty());
        ask(open, Question.SPREADSHEET_DAYS, times.spreadsheetDays() && !answers.spreadsheetDays());
        ask(open, Question.ZONE, isZoneOpen() && answers.zone().isEmpty());
        return open;
    }

    private static void ask(List<Question> open, Question question, boolean isOpen) {
        if (isOpen) {
            open.add(question);
        }
    }

    private boolean isKindOpen() {
        return channels.stream().anyMatch(channel -> channel.kind().isEmpty());
    }

    private boolean isUnitOpen() {
        return channels.stream().anyMatch(channel -> channel.unit().isEmpty() && mayBeInDegrees(channel));
    }

    private boolean isZoneOpen() {
        return !times.withOffset() && times.headerOffset().isEmpty();
    }

    private boolean isNamed(Answers answers) {
        return answers.names().temperature().isPresent()
                || answers.names().humidity().isPresent();
    }

    private static boolean mayBeInDegrees(Channel channel) {
        return channel.kind().map(Channel.Kind::isInDegrees).orElse(true);
    }
}
