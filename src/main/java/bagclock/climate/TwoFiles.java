package bagclock.climate;

import bagclock.logfile.LogFault;
import bagclock.readings.LoggerProfile.BelowZero;
import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Temperature and humidity in a file each, put together.
 *
 * @param hold how long a reading holds
 */
record TwoFiles(Half temperature, Half humidity, BelowZero below, Duration hold, RoomLog.Size size) implements RoomLog {
    @Override
    public Found read(RoomSamples.Taker taker) throws IOException {
        Half.Contents temperatures = temperature.read(hold);
        Half.Contents humidities = humidity.read(hold);
        Pairing.Found found = new Pairing(HumidityOf.of(humidity.kind(), below), hold, taker)
                .of(temperatures.series(), humidities.series());
        List<LogFault> faults = Stream.concat(
                        named(temperature, temperatures.report().faults()),
                        named(humidity, humidities.report().faults()))
                .toList();
        List<FileFound> files = List.of(
                new FileFound(temperature.name(), temperatures.report(), 0),
                new FileFound(humidity.name(), humidities.report(), 0));
        return new Found(files, faults, Optional.of(found));
    }

    /** The same faults, with the name of the file before that of the column. */
    static Stream<LogFault> named(Half half, List<LogFault> faults) {
        return faults.stream()
                .map(fault -> new LogFault(
                        fault.line(),
                        half.name() + (fault.column().isEmpty() ? "" : ": " + fault.column()),
                        fault.kind(),
                        fault.text()));
    }
}
