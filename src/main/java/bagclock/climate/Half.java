package bagclock.climate;

import bagclock.logfile.Answers;
import bagclock.logfile.Channel;
import bagclock.logfile.Channel.Kind;
import bagclock.logfile.Layout;
import bagclock.logfile.LogFile;
import bagclock.logfile.LogReport;
import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A file that holds temperature or humidity only.
 *
 * @param name of the file
 * @param file of which the one channel has its kind
 * @param channel number of the channel that counts
 */
record Half(String name, LogFile file, int channel) {
    /** What stands for humidity. */
    static final Set<Kind> HUMIDITIES = Set.of(Kind.HUMIDITY, Kind.DEW_POINT, Kind.FROST_POINT);

    /** Whether a file can only be one: it lacks temperature or humidity, and no column could still be it. */
    static boolean isOnly(LogFile file) {
        List<Channel> channels = file.layout().channels();
        boolean isSaid = channels.stream().allMatch(channel -> channel.kind().isPresent());
        return RoomSamples.channels(file).isEmpty() && (isSaid || channels.size() == 1);
    }

    /** Whether a file can be the half with one of these quantities. */
    static boolean canBe(LogFile file, Set<Kind> kinds) {
        return file.layout().channels().stream()
                .anyMatch(channel -> channel.kind().map(kinds::contains).orElse(true));
    }

    /** The half with the temperature; empty if the file can't be it. */
    static Optional<Half> temperature(String name, LogFile file) {
        return of(name, file, file.answers().names().temperature(), List.of(Kind.TEMPERATURE));
    }

    /** The half with the humidity, or what stands for it. */
    static Optional<Half> humidity(String name, LogFile file) {
        List<Kind> kinds = List.of(Kind.HUMIDITY, Kind.DEW_POINT, Kind.FROST_POINT);
        return of(name, file, file.answers().names().humidity(), kinds);
    }

    private static Optional<Half> of(String name, LogFile file, Optional<String> named, List<Kind> kinds) {
        List<Channel> channels = file.layout().channels();
        for (Kind kind : kinds) {
            List<Channel> fitting = channels.stream()
                    .filter(channel -> channel.kind().filter(kind::equals).isPresent())
                    .toList();
            Optional<Channel> meant = fitting.stream()
                    .filter(channel -> named.filter(channel.name()::equals).isPresent())
                    .findFirst()
                    .or(() -> fitting.stream().findFirst());
            if (meant.isPresent()) {
                return Optional.of(new Half(name, unnamed(file, channels), channels.indexOf(meant.get())));
            }
        }
        Channel only = channels.get(0);
        return only.kind().isPresent()
                ? Optional.empty()
                : Optional.of(new Half(
                        name,
                        unnamed(file, List.of(new Channel(only.name(), Optional.of(kinds.get(0)), only.unit()))),
                        0));
    }

    /** Names of columns that were said for a file with both would be mistaken here. */
    private static LogFile unnamed(LogFile file, List<Channel> channels) {
        Layout layout = new Layout(file.layout().table(), file.layout().times(), channels);
        return new LogFile(file.source(), layout, file.answers().with(Answers.Names.NONE), file.bounds());
    }

    Kind kind() {
        return file.layout().channels().get(channel).kind().orElseThrow();
    }

    /** Its samples, with what was found. */
    record Contents(Series series, LogReport report) {}

    /**
     * Reads it; nothing may be open.
     *
     * @param longest how far two samples may be apart at most so that what lies between them is known
     */
    Contents read(Duration longest) throws IOException {
        List<Series.Sample> samples = new ArrayList<>();
        LogReport report = file.read((line, atMs, values) -> {
            if (!Double.isNaN(values[channel])) {
                samples.add(new Series.Sample(line, atMs, values[channel], values[channel]));
            }
        });
        Duration usual = file.layout().table().isOneValueALine()
                ? RoomSamples.LONGEST_HOLD
                : report.times().step().multipliedBy(2);
        return new Contents(Series.of(samples, usual.compareTo(longest) < 0 ? usual : longest), report);
    }
}
