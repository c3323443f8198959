package bagclock.core.exposure;

import java.util.Optional;

/**
 * A stretch of time, start included and end excluded, in which the air counts as constant.
 *
 * @param startMs milliseconds since the epoch
 * @param endMs milliseconds since the epoch
 * @param air empty if not known; in dry storage only its temperature counts
 * @param basis what the air rests on
 * @param breaksRest an excursion or a gap in a cabinet's log: no rest survives it
 */
record Span(long startMs, long endMs, Kind kind, Optional<Air> air, Basis basis, boolean breaksRest) {
    enum Kind {
        FLOOR,
        /** A dry pack. */
        PACK,
        /** At or below 5 %RH. */
        DRY_5,
        /** Above 5 up to 10 %RH. */
        DRY_10
    }

    enum Basis {
        READ,
        DECLARED,
        UNKNOWN
    }

    static Span floor(long startMs, long endMs, Optional<Air> air, Basis basis) {
        return new Span(startMs, endMs, Kind.FLOOR, air, basis, false);
    }

    long lengthMs() {
        return endMs - startMs;
    }

    boolean isFloor() {
        return kind == Kind.FLOOR;
    }

    Span from(long otherStartMs) {
        return new Span(otherStartMs, endMs, kind, air, basis, breaksRest);
    }

    Span until(long otherEndMs) {
        return new Span(startMs, otherEndMs, kind, air, basis, breaksRest);
    }

    Span breakingRest() {
        return new Span(startMs, endMs, kind, air, basis, true);
    }
}
