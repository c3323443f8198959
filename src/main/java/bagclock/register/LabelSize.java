package bagclock.register;

import java.util.Arrays;
import java.util.Optional;

/** Common sizes of labels on a roll; width by height, in millimetres. */
public enum LabelSize {
    W51_H25(50.8, 25.4),
    W57_H32(57, 32),
    W62_H29(62, 29),
    W70_H36(70, 36),
    W76_H51(76.2, 50.8),
    W100_H50(100, 50),
    W102_H76(101.6, 76.2);

    private final double width;
    private final double height;

    LabelSize(double width, double height) {
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
    public static Optional<LabelSize> parse(String name) {
        return Arrays.stream(values()).filter(size -> size.name().equals(name)).findFirst();
    }
}
