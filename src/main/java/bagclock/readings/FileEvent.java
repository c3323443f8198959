package bagclock.readings;

import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What happened to a logger's file.
 *
 * @param seq 1 for the first
 * @param added readings kept; of a file taken back: readings taken back
 * @param known readings that were there already
 * @param refused readings that were not kept, for what was there before or for the future
 * @param report lines of the file that could not be used, one a line
 */
public record FileEvent(
        int seq,
        What what,
        Instant happenedAt,
        String who,
        long added,
        long known,
        long refused,
        @Nullable Instant firstAt,
        @Nullable Instant lastAt,
        String report) {
    /** Longest report that is kept, in characters. */
    public static final int LONGEST_REPORT = 8000;

    /** Kinds of event. */
    public enum What {
        BEGUN,
        DONE,
        FAILED,
        TAKEN_BACK
    }

    /** How many readings of a file were kept, were there already, and were refused. */
    public record Counts(long added, long known, long refused) {
        /** Nobody knows of any. */
        public static final Counts NONE = new Counts(0, 0, 0);
    }

    /** That an import began; its readings lie in this span. */
    public static FileEvent begun(int seq, Source source, Instant first, Instant last) {
        return new FileEvent(seq, What.BEGUN, source.recordedAt(), source.who(), 0, 0, 0, first, last, "");
    }

    /** How an import ended. */
    public static FileEvent ended(int seq, Source source, boolean well, Counts counts, String report) {
        return new FileEvent(
                seq,
                well ? What.DONE : What.FAILED,
                source.recordedAt(),
                source.who(),
                counts.added(),
                counts.known(),
                counts.refused(),
                null,
                null,
                report);
    }

    /** That its readings were taken back. */
    public static FileEvent takenBack(int seq, Source source, long count) {
        return new FileEvent(seq, What.TAKEN_BACK, source.recordedAt(), source.who(), count, 0, 0, null, null, "");
    }

    /** From when its readings may be; empty but for a beginning. */
    public Optional<Instant> first() {
        return Optional.ofNullable(firstAt);
    }

    /** Until when its readings may be. */
    public Optional<Instant> last() {
        return Optional.ofNullable(lastAt);
    }
}
