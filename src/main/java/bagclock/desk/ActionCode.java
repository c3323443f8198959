package bagclock.desk;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * What can be scanned instead of pressed. The codes keep to letters that no common keyboard layout moves: none of A, M,
 * Q, W, Y, Z.
 */
public enum ActionCode {
    /** Open the bag of the item that was scanned. */
    OPEN(true),
    /** Dry-pack it. */
    CLOSE(true),
    SPLIT(true),
    JOIN(true),
    USE(true),
    /** Print its label. */
    PRINT(true),
    /** Receive an item. */
    RECEIVE(false),
    /** Receive many bags one after another. */
    DELIVER(false),
    /** Take the last scan back. */
    UNDO(false);

    private static final String PREFIX = "DO";

    private final boolean needsItem;

    ActionCode(boolean needsItem) {
        this.needsItem = needsItem;
    }

    /** Whether an item is scanned before it. */
    public boolean needsItem() {
        return needsItem;
    }

    /** What its label says. */
    public String code() {
        return PREFIX + name();
    }

    /** The action with this code, in capital or small letters. */
    public static Optional<ActionCode> of(String code) {
        String wanted = code.toUpperCase(Locale.ROOT);
        return Arrays.stream(values())
                .filter(action -> action.code().equals(wanted))
                .findFirst();
    }
}
