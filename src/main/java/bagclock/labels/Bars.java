package bagclock.labels;

import java.util.List;
import java.util.Optional;
import uk.org.okapibarcode.backend.Code128;
import uk.org.okapibarcode.backend.HumanReadableLocation;

/**
 * A Code 128 for scanners that read no Data Matrix. Its modules are whole dots of the printer.
 *
 * <p>ISO/IEC 15417:2007 asks for a quiet zone of 10 modules at either side, and leaves the module and the height to the
 * application. Here no module is narrower than 9.5 mil, which EIGP 114 asks of linear codes on component labels (as an
 * open generator quotes it), and bars are 5 mm high or 15 % of their length, whichever is more, the common practice for
 * scanning by hand.
 *
 * @param height of the bars, in millimetres
 */
record Bars(List<Drawing.Box> boxes, double height) {
    /** Modules at either side that stay blank. */
    static final int QUIET = 10;

    private static final double LEAST_MODULE = 9.5 * 0.0254;
    private static final double LEAST_HEIGHT = 5;
    private static final double HEIGHT_OF_LENGTH = 0.15;
    private static final int CHARACTER = 11;
    private static final int START_CHECK_STOP = 35;
    private static final double TINY = 1e-9;

    /** Where bars may stand: from left to right with their quiet zones, downwards from the top; in millimetres. */
    record Room(double left, double right, double top) {}

    /**
     * The bars of a text, its left quiet zone first.
     *
     * @param dot of the printer, in millimetres
     * @return empty when the text is too long for the room
     */
    static Optional<Bars> of(String text, double dot, Room room) {
        Code128 code = new Code128();
        code.setHumanReadableLocation(HumanReadableLocation.NONE);
        code.setModuleWidth(1);
        code.setQuietZoneHorizontal(0);
        code.setQuietZoneVertical(0);
        code.setContent(text);
        double module = module(dot);
        double start = Math.ceil((room.left() + QUIET * module) / dot - TINY) * dot;
        double length = code.getWidth() * module;
        if (start + length + QUIET * module > room.right() + TINY) {
            return Optional.empty();
        }
        double height = Math.max(LEAST_HEIGHT, length * HEIGHT_OF_LENGTH);
        List<Drawing.Box> boxes = code.getRectangles().stream()
                .map(bar -> new Drawing.Box(start + bar.x * module, room.top(), bar.width * module, height))
                .toList();
        return Optional.of(new Bars(boxes, height));
    }

    /** How many characters fit at least: pairs of digits take half the room. */
    static int characters(double dot, Room room) {
        double module = module(dot);
        double modules = Math.floor((room.right() - room.left() - dot) / module + TINY) - 2 * QUIET;
        return Math.max(0, (int) ((modules - START_CHECK_STOP) / CHARACTER));
    }

    private static double module(double dot) {
        return Math.ceil(LEAST_MODULE / dot - TINY) * dot;
    }
}
