package bagclock.core.oven;

import java.util.List;

/**
 * One thing that makes a plan unlawful.
 *
 * @param parts what it is about: codes and tags
 */
public record Fault(Law law, List<String> parts) {
    /** What a plan has to keep. */
    public enum Law {
        /** Every lot is in the plan. Parts: lot. */
        EVERY_LOT,
        /** No lot is in it twice. Parts: lot. */
        ONCE,
        /** Lots and ovens are known. Parts: name. */
        KNOWN,
        /** Frozen runs are in it as they were. Parts: oven. */
        FROZEN,
        /** Nothing starts before the moment of planning. Parts: oven. */
        NOT_BEFORE_NOW,
        /** Runs of one oven, and the changes between them, do not overlap. Parts: oven. */
        NO_OVERLAP,
        /** What is in an oven has room. Parts: oven. */
        POSITIONS,
        /** The lot may go to the oven, and be baked so there. Parts: lot, oven. */
        PROGRAMME,
        /** Long enough at temperature. Parts: lot, oven. */
        LEAST,
        /** Not too long at temperature. Parts: lot, oven. */
        MOST,
        /** Not in before it is ready. Parts: lot, oven. */
        READY,
        /** Neither run nor change while the oven is out of service. Parts: oven. */
        IN_SERVICE,
        /** Doors are opened when somebody is there. Parts: lot, oven. */
        ATTENDED,
        /** All in and all out together, unless the site opens doors. Parts: lot, oven. */
        TOGETHER
    }

    /** Keeps its own copy. */
    public Fault {
        parts = List.copyOf(parts);
    }

    static Fault of(Law law, String... parts) {
        return new Fault(law, List.of(parts));
    }
}
