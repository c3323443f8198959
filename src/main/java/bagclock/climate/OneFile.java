package bagclock.climate;

import bagclock.logfile.LogFile;
import bagclock.logfile.LogReport;
import bagclock.readings.LoggerProfile.BelowZero;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** A file that holds temperature and humidity. */
record OneFile(LogFile file, RoomSamples.Channels channels, BelowZero below, RoomLog.Size size) implements RoomLog {
    @Override
    public Found read(RoomSamples.Taker taker) throws IOException {
        RoomSamples samples = new RoomSamples(file, channels, below, taker);
        LogReport report = file.read(samples);
        samples.finish();
        return new Found(List.of(new FileFound("", report, samples.incomplete())), report.faults(), Optional.empty());
    }
}
