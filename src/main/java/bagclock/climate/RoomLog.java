package bagclock.climate;

import bagclock.logfile.LogFault;
import bagclock.logfile.LogReport.Span;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** Where the readings of an import come from: one file, or two that belong together. Read again it gives the same. */
interface RoomLog {
    /** Hands on every reading; says what could not be used. */
    Found read(RoomSamples.Taker taker) throws IOException;

    /** How many readings, or samples, it has at most, and from when to when. */
    Size size();

    /** See {@link #size}. */
    record Size(long readings, Span span) {}

    /**
     * What could not be used.
     *
     * @param pairing of two files only
     */
    record Found(List<LogFault> faults, Optional<Pairing.Found> pairing) {
        /** Keeps its own copy. */
        public Found {
            faults = List.copyOf(faults);
        }
    }
}
