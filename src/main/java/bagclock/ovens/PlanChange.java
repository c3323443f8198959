package bagclock.ovens;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One thing that a draft supposes.
 *
 * @param name tag of the lot or of one in the run, or code of the oven that is closed
 * @param oven where a moved run goes
 * @param fromAt needed by; closed from; moved to
 * @param toAt closed until; a rush lot is needed by
 * @param positions of a rush lot
 * @param tempC of a rush lot's bake
 * @param bakeMin time at temperature of a rush lot
 * @param weight how much an hour late of a rush lot counts
 */
public record PlanChange(
        Kind kind,
        String name,
        @Nullable String oven,
        @Nullable Instant fromAt,
        @Nullable Instant toAt,
        @Nullable Integer positions,
        @Nullable Double tempC,
        @Nullable Integer bakeMin,
        @Nullable Integer weight) {
    /** What is supposed. */
    public enum Kind {
        /** Another time that a lot is needed by. */
        NEED,
        /** An oven out of service. */
        CLOSE,
        /** A lot that is not in the queue. */
        RUSH,
        /** A run somewhere else, or at another time. */
        MOVE,
        /** A run that stays where it is, whatever comes. */
        PIN,
        /** A run that may move again. */
        UNPIN
    }

    static PlanChange need(String tag, @Nullable Instant by) {
        return new PlanChange(Kind.NEED, tag, null, by, null, null, null, null, null);
    }

    static PlanChange close(String oven, Instant from, Instant to) {
        return new PlanChange(Kind.CLOSE, oven, null, from, to, null, null, null, null);
    }

    static PlanChange pin(String tag, boolean stays) {
        return new PlanChange(stays ? Kind.PIN : Kind.UNPIN, tag, null, null, null, null, null, null, null);
    }

    static PlanChange move(String tag, String oven, Instant to) {
        return new PlanChange(Kind.MOVE, tag, oven, to, null, null, null, null, null);
    }
}
