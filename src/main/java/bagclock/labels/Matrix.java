package bagclock.labels;

import java.util.List;
import uk.org.okapibarcode.backend.DataMatrix;

/** A square Data Matrix code (ISO/IEC 16022), without its quiet zone. */
final class Matrix {
    private Matrix() {}

    /**
     * The dark modules of a code within a square.
     *
     * @param side of the square, its quiet zone of one module on each side included
     */
    static List<Drawing.Box> of(String text, double x, double y, double side) {
        DataMatrix code = new DataMatrix();
        code.setForceMode(DataMatrix.ForceMode.SQUARE);
        code.setModuleWidth(1);
        code.setQuietZoneHorizontal(0);
        code.setQuietZoneVertical(0);
        code.setContent(text);
        double module = side / (code.getWidth() + 2);
        return code.getRectangles().stream()
                .map(bar -> new Drawing.Box(
                        x + (bar.x + 1) * module, y + (bar.y + 1) * module, bar.width * module, bar.height * module))
                .toList();
    }
}
