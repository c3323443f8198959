package bagclock.scan;

import java.util.Optional;

/** What the house knows, against which a reading is held: one lost character makes a number that nobody knows. */
public interface Known {
    /** Whether the label's number leads to a part type. */
    boolean isPart(String partNumber);

    /** Whether this lot of the part was received before. */
    boolean isLot(String partNumber, String lot);

    /** The level of the part type that the label's number leads to; empty if unknown. */
    Optional<String> level(String partNumber);

    /** Whether the part type that the label's number leads to names this peak body temperature (C). */
    boolean isPeak(String partNumber, String peak);

    /** Whether a package of the part with this number was received before. */
    boolean isPackage(String partNumber, String number);
}
