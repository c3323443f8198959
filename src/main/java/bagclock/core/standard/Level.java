package bagclock.core.standard;

import java.util.Optional;

/**
 * A moisture sensitivity level of J-STD-020, from least to most sensitive; the order of the members is the order of
 * strictness.
 */
public enum Level {
    L1("1"),
    L2("2"),
    L2A("2a"),
    L3("3"),
    L4("4"),
    L5("5"),
    L5A("5a"),
    L6("6");

    private final String code;

    Level(String code) {
        this.code = code;
    }

    /** The level as the label prints it, such as {@code 2a}. */
    public String code() {
        return code;
    }

    /** The level with this code, empty if there is none. */
    public static Optional<Level> parse(String code) {
        for (Level level : values()) {
            if (level.code.equals(code)) {
                return Optional.of(level);
            }
        }
        return Optional.empty();
    }

    /** Levels 2, 2a and 3: dry storage pauses their clock (J-STD-033, clause 4 and Table 4-3). */
    public boolean isPausedByDryStorage() {
        return this == L2 || this == L2A || this == L3;
    }

    /** Levels 4, 5 and 5a: once exposed, only a bake or a short-exposure rest stops their clock. */
    public boolean runsOnOnceExposed() {
        return this == L4 || this == L5 || this == L5A;
    }

    /** Levels 2 to 5a: a floor life in hours, and rows in the bake table. */
    public boolean hasFloorLife() {
        return this != L1 && this != L6;
    }
}
