package bagclock.register;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;

/** The codes on a site's labels. A linear code is made of whole dots of the printer, so its resolution is named. */
public enum LabelCode {
    /** Data Matrix only. */
    MATRIX(0),
    /** Also Code 128, for a printer of 203 dots to the inch: 8 to the millimetre. */
    LINEAR_203(8),
    /** Also Code 128, for a printer of 300 dots to the inch, or 600. */
    LINEAR_300(300 / 25.4);

    private final double dotsInMm;

    LabelCode(double dotsInMm) {
        this.dotsInMm = dotsInMm;
    }

    /** How wide the printer's dot is, in millimetres; empty where no linear code is wanted. */
    public OptionalDouble dot() {
        return dotsInMm == 0 ? OptionalDouble.empty() : OptionalDouble.of(1 / dotsInMm);
    }

    /** The choice with this name, empty if there is none. */
    public static Optional<LabelCode> parse(String name) {
        return Arrays.stream(values()).filter(code -> code.name().equals(name)).findFirst();
    }
}
