package bagclock.climate;

import bagclock.logfile.Answers;
import bagclock.logfile.Bounds;
import bagclock.logfile.Channel.Kind;
import bagclock.logfile.LayoutFinder;
import bagclock.logfile.LogFile;
import bagclock.logfile.LogSource;
import bagclock.readings.LoggerFile;
import bagclock.readings.Source;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Finds the files that belong together: temperature in one, humidity in the other, of one logger at one place. */
final class Halves {
    private static final int MOST = 20;
    private static final Set<Kind> TEMPERATURES = Set.of(Kind.TEMPERATURE);

    private final LogStore store;

    Halves(LogStore store) {
        this.store = store;
    }

    /** A file with what was said of it; empty if no line has a time and a value. */
    Optional<LogFile> read(LoggerFile file, Answers answers) {
        LogSource source = store.source(file.id());
        try {
            return LayoutFinder.find(source).map(layout -> new LogFile(source, layout, answers, Bounds.ROOM));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** The newest files that can be its other half; none if it needs none. */
    List<LoggerFile> fitting(LoggerFile file) {
        Optional<LogFile> one = half(file);
        return one.isEmpty()
                ? List.of()
                : store.besides(file, MOST).stream()
                        .filter(other -> store.otherHalf(other.id()).isEmpty())
                        .filter(other -> half(other)
                                .filter(two -> fits(one.get(), two) || fits(two, one.get()))
                                .isPresent())
                        .toList();
    }

    private Optional<LogFile> half(LoggerFile file) {
        return read(file, Answers.NONE).filter(Half::isOnly);
    }

    /** Whether the first can hold the temperatures and the second the humidities. */
    static boolean fits(LogFile temperature, LogFile humidity) {
        return Half.canBe(temperature, TEMPERATURES) && Half.canBe(humidity, Half.HUMIDITIES);
    }

    /** Joins two new files, if each holds what the other lacks; the second is read with the first. */
    boolean joinBoth(LoggerFile first, LoggerFile second, Source source) {
        boolean isPair = fitting(second).stream().anyMatch(file -> file.id().equals(first.id()));
        if (isPair) {
            store.join(second.id(), first.id(), source);
        }
        return isPair;
    }

    /** Joins a new file with the one that waits for it, if there is just one. */
    void joinWithWaiting(LoggerFile file, Source source) {
        List<LoggerFile> waiting = fitting(file).stream()
                .filter(other -> store.readWith(other.id()).isEmpty())
                .toList();
        if (waiting.size() == 1) {
            store.join(file.id(), waiting.get(0).id(), source);
        }
    }
}
