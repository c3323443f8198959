package bagclock.register;

import bagclock.core.standard.Part;

/**
 * A kind of part as the house knows it.
 *
 * @param number the house's number, unique
 * @param maker empty if not told
 * @param source where the facts were read
 * @param part what the rules need; its carrier is the usual one
 */
public record PartType(String number, String maker, String description, Source source, Part part) {
    /** A document and its revision; empty texts if none is named. */
    public record Source(String document, String revision) {}

    /** Refuses a number that is empty. */
    public PartType {
        if (number.isBlank()) {
            throw new IllegalArgumentException("a part type needs a number");
        }
    }
}
