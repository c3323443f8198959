package bagclock.climate;

import bagclock.logfile.LogFault;
import bagclock.logfile.LogReport;
import bagclock.logfile.LogReport.Span;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** Where the readings of an import come from: one file, or two that belong together. Read again it gives the same. */
interface RoomLog {
    /** Hands on every reading; says what was found. */
    Found read(RoomSamples.Taker taker) throws IOException;

    /** How many readings, or samples, it has at most, and from when to when. */
    Size size();

    /** See {@link #size}. */
    record Size(long readings, Span span) {}

    /**
     * What was found in one file.
     *
     * @param name empty where it is the only file
     * @param incomplete samples without one of both values
     */
    record FileFound(String name, LogReport report, long incomplete) {}

    /**
     * What was found.
     *
     * @param faults of all files
     * @param pairing of two files only
     */
    record Found(List<FileFound> files, List<LogFault> faults, Optional<Pairing.Found> pairing) {
        /** Keeps its own copies. */
        public Found {
            files = List.copyOf(files);
            faults = List.copyOf(faults);
        }
    }
}
