package bagclock.climate;

import bagclock.core.exposure.ZoneLog.Reading;
import bagclock.logfile.LogReport;
import bagclock.logfile.Question;
import bagclock.readings.LoggerProfile.BelowZero;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Two halves as they would be imported together: nothing is kept yet.
 *
 * @param open what must still be said about either
 * @param reports of temperature and humidity; none as long as something is open
 * @param first the first readings
 * @param pairing empty as long as something is open
 * @param belowZero dew points below 0 C
 */
record PairPreview(
        Half temperature,
        Half humidity,
        List<Question> open,
        List<LogReport> reports,
        List<Reading> first,
        Optional<Pairing.Found> pairing,
        long belowZero) {
    private static final int SHOWN = 20;

    static PairPreview of(Half temperature, Half humidity, BelowZero below, Duration hold) {
        List<Question> open = Stream.of(temperature, humidity)
                .flatMap(half -> half.file().layout().open(half.file().answers()).stream())
                .distinct()
                .toList();
        if (!open.isEmpty()) {
            return new PairPreview(temperature, humidity, open, List.of(), List.of(), Optional.empty(), 0);
        }
        try {
            return together(temperature, humidity, below, hold);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static PairPreview together(Half temperature, Half humidity, BelowZero below, Duration hold)
            throws IOException {
        Half.Contents temperatures = temperature.read(hold);
        Half.Contents humidities = humidity.read(hold);
        List<Reading> first = new ArrayList<>();
        HumidityOf kind = HumidityOf.of(humidity.kind(), below);
        Pairing.Found found = new Pairing(kind, hold, (line, reading) -> {
                    if (first.size() < SHOWN) {
                        first.add(reading);
                    }
                })
                .of(temperatures.series(), humidities.series());
        List<LogReport> reports = List.of(temperatures.report(), humidities.report());
        List<Question> unclear = reports.stream()
                .flatMap(report -> report.unclear().stream())
                .distinct()
                .toList();
        long belowZero = humidities.series().samples().stream()
                .filter(sample -> kind.isBelowZero(sample.highest()))
                .count();
        return new PairPreview(temperature, humidity, unclear, reports, first, Optional.of(found), belowZero);
    }

    /** What would be imported; only if it is ready. */
    RoomLog log(BelowZero below, Duration hold) {
        Pairing.Found found = pairing.orElseThrow();
        return new TwoFiles(
                temperature,
                humidity,
                below,
                hold,
                new RoomLog.Size(found.paired(), found.span().orElseThrow()));
    }

    /** As long as nobody said which of both holds the temperatures, nothing was seen. */
    PairPreview unsaid() {
        return new PairPreview(
                temperature, humidity, List.of(Question.CHANNELS), List.of(), List.of(), Optional.empty(), 0);
    }

    boolean isReady() {
        return open.isEmpty() && !first.isEmpty();
    }
}
