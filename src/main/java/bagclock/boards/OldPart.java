package bagclock.boards;

import bagclock.core.heat.HeatPlan.Purpose;
import java.util.Optional;

/** What becomes of the part that a job takes off. */
enum OldPart {
    SCRAP("scrap"),
    REUSE("reuse"),
    ANALYSIS("analysis"),
    /** The location is empty already. */
    NONE("none");

    private final String code;

    OldPart(String code) {
        this.code = code;
    }

    String code() {
        return code;
    }

    static Optional<OldPart> parse(String code) {
        for (OldPart fate : values()) {
            if (fate.code.equals(code)) {
                return Optional.of(fate);
            }
        }
        return Optional.empty();
    }

    /** It goes on as an item. */
    boolean isKept() {
        return this == REUSE || this == ANALYSIS;
    }

    /** What its removal is for. */
    Purpose removal() {
        return isKept() ? Purpose.REMOVAL_REUSE : Purpose.REMOVAL_SCRAP;
    }
}
