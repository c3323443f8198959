package bagclock.desk;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.OptionalInt;

/** What is known of a carrier's history when it comes into the house. */
public sealed interface Origin {
    /**
     * In a closed dry pack.
     *
     * @param shelfMonths what the label says, empty if it says nothing
     */
    record DryPack(Instant sealedAt, OptionalInt shelfMonths) implements Origin {
        /** Cuts the time to the millisecond. */
        public DryPack {
            sealedAt = sealedAt.truncatedTo(ChronoUnit.MILLIS);
        }
    }

    /**
     * Without a dry pack; left one at a known time.
     *
     * @param placeCode the zone it stands in
     * @param howKnown in the clerk's words, not empty
     */
    record LeftDryPack(Instant at, String placeCode, String howKnown) implements Origin {
        /** Cuts the time to the millisecond. */
        public LeftDryPack {
            at = at.truncatedTo(ChronoUnit.MILLIS);
        }
    }

    /** Without a dry pack, and nobody knows since when. */
    record Unknown(Optional<String> placeCode) implements Origin {}
}
