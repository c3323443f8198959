package bagclock.climate;

import bagclock.core.exposure.ZoneLog.Reading;
import bagclock.logfile.Answers;
import bagclock.logfile.Bounds;
import bagclock.logfile.Layout;
import bagclock.logfile.LayoutFinder;
import bagclock.logfile.LogFile;
import bagclock.logfile.LogReport;
import bagclock.logfile.LogSource;
import bagclock.logfile.Question;
import bagclock.readings.LoggerProfile.BelowZero;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A file as it would be imported: nothing is kept yet.
 *
 * @param open what must still be said
 * @param channels which values would count; empty if temperature or humidity is missing
 * @param report empty as long as something is open
 * @param first the first readings
 * @param incomplete samples without temperature or humidity
 * @param belowZero dew points below 0 C
 */
record Preview(
        LogFile file,
        List<Question> open,
        Optional<RoomSamples.Channels> channels,
        Optional<LogReport> report,
        List<Reading> first,
        long incomplete,
        long belowZero) {
    private static final int SHOWN = 20;

    /** Empty if no line of the file has a time and a value. */
    static Optional<Preview> of(LogSource source, Answers answers, BelowZero below) {
        try {
            Optional<Layout> layout = LayoutFinder.find(source);
            return layout.isEmpty()
                    ? Optional.empty()
                    : Optional.of(of(new LogFile(source, layout.get(), answers, Bounds.ROOM), below));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static Preview of(LogFile file, BelowZero below) throws IOException {
        List<Question> open = file.layout().open(file.answers());
        Optional<RoomSamples.Channels> channels = RoomSamples.channels(file);
        if (!open.isEmpty() || channels.isEmpty()) {
            return new Preview(file, open, channels, Optional.empty(), List.of(), 0, 0);
        }
        List<Reading> first = new ArrayList<>();
        RoomSamples samples = new RoomSamples(file, channels.get(), below, (line, reading) -> {
            if (first.size() < SHOWN) {
                first.add(reading);
            }
        });
        LogReport report = file.read(samples);
        samples.finish();
        return new Preview(
                file,
                report.unclear(),
                channels,
                Optional.of(report),
                first,
                samples.incomplete(),
                samples.belowZero());
    }

    /** What would be imported; only if it is ready. */
    RoomLog log(BelowZero below) {
        LogReport found = report.orElseThrow();
        return new OneFile(
                file,
                channels.orElseThrow(),
                below,
                new RoomLog.Size(found.samples(), found.span().orElseThrow()));
    }

    boolean isReady() {
        return open.isEmpty() && channels.isPresent() && !first.isEmpty();
    }
}
