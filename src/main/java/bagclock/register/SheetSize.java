package bagclock.register;

import java.util.Arrays;
import java.util.Optional;

/** Sheets of paper, upright; width by height, in millimetres. */
public enum SheetSize {
    /** ISO 216. */
    A4(210, 297),
    /** ANSI/ASME Y14.1, size A. */
    LETTER(215.9, 279.4);

    private final double width;
    private final double height;

    SheetSize(double width, double height) {
        this.width = width;
        this.height = height;
    }

    /** Millimetres. */
    public double width() {
        return width;
    }

    /** Millimetres. */
    public double height() {
        return height;
    }

    /** The size with this name, empty if there is none. */
    public static Optional<SheetSize> parse(String name) {
        return Arrays.stream(values()).filter(size -> size.name().equals(name)).findFirst();
    }
}
