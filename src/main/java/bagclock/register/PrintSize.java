package bagclock.register;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Common sizes of labels on a roll, and of sheets of paper, upright; width by height, in millimetres. */
public enum PrintSize {
    W51_H25(50.8, 25.4),
    W57_H32(57, 32),
    W62_H29(62, 29),
    W70_H36(70, 36),
    W76_H51(76.2, 50.8),
    W100_H50(100, 50),
    W102_H76(101.6, 76.2),
    /** ISO 216. */
    A4(210, 297),
    /** ANSI/ASME Y14.1, size A. */
    LETTER(215.9, 279.4);

    private static final List<PrintSize> SHEETS = List.of(A4, LETTER);

    private final double width;
    private final double height;

    PrintSize(double width, double height) {
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

    /** All sizes of labels, the smallest first. */
    public static List<PrintSize> labels() {
        return Arrays.stream(values()).filter(size -> !SHEETS.contains(size)).toList();
    }

    /** All sizes of sheets. */
    public static List<PrintSize> sheets() {
        return SHEETS;
    }

    /** The size with this name among some, empty if there is none. */
    public static Optional<PrintSize> parse(String name, List<PrintSize> among) {
        return among.stream().filter(size -> size.name().equals(name)).findFirst();
    }
}
