package bagclock.logfile;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What was found in a file.
 *
 * @param rows lines below the header
 * @param samples lines with a time and a value at least
 * @param withoutValue lines with a time only: marks of events, a sensor that was silent
 * @param clipped humidities above 100 that count as 100
 * @param faults the first of them
 * @param faultCount all of them
 * @param span from the earliest to the latest sample; empty without samples
 * @param times what the times say
 * @param unclear what must still be said after the whole file was seen
 */
public record LogReport(
        long rows,
        long samples,
        long withoutValue,
        long clipped,
        List<LogFault> faults,
        long faultCount,
        Optional<Span> span,
        Times times,
        List<Question> unclear) {
    /** Both ends included. */
    public record Span(Instant first, Instant last) {}

    /** A time without samples. */
    public record Gap(Instant from, Instant to) {
        /** How long it lasted. */
        public Duration length() {
            return Duration.between(from, to);
        }
    }

    /**
     * How samples follow each other.
     *
     * @param repeated samples at the time of another
     * @param backwards how often a time lay before the one above it
     * @param step the usual time between two, the median
     * @param gaps the longest first, not all
     * @param gapCount longer than three steps and than a quarter of an hour; of changes only, than an hour
     */
    public record Times(long repeated, long backwards, Duration step, List<Gap> gaps, long gapCount) {
        /** Keeps its own copy. */
        public Times {
            gaps = List.copyOf(gaps);
        }
    }

    /** Keeps its own copies. */
    public LogReport {
        faults = List.copyOf(faults);
        unclear = List.copyOf(unclear);
    }
}
