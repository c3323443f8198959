package bagclock.labels;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.datamatrix.DataMatrixReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** A page of a PDF file as a printer would print it, and what a reader that knows nothing of us sees on it. */
final class PrintedPage {
    /** A common thermal printer. */
    static final int DPI = 300;

    private static final double MM = 25.4;

    final double width;
    final double height;
    final List<TextPosition> letters = new ArrayList<>();
    final String text;
    private final BufferedImage image;

    private PrintedPage(byte[] pdf, int index) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDRectangle box = document.getPage(index).getMediaBox();
            this.width = box.getWidth() / 72 * MM;
            this.height = box.getHeight() / 72 * MM;
            this.image = new PDFRenderer(document).renderImageWithDPI(index, DPI, ImageType.GRAY);
            PDFTextStripper stripper = new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition letter) {
                    letters.add(letter);
                    super.processTextPosition(letter);
                }
            };
            stripper.setStartPage(index + 1);
            stripper.setEndPage(index + 1);
            this.text = stripper.getText(document).replaceAll("\\s+", " ");
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    static PrintedPage of(byte[] pdf, int index) {
        return new PrintedPage(pdf, index);
    }

    /** Reads the Data Matrix code in a rectangle, in millimetres. */
    String code(double x, double y, double w, double h) {
        int left = pixels(x);
        int top = pixels(y);
        int across = Math.min(pixels(w), image.getWidth() - left);
        int down = Math.min(pixels(h), image.getHeight() - top);
        BufferedImage part = new BufferedImage(across, down, BufferedImage.TYPE_INT_RGB);
        part.getGraphics().drawImage(image.getSubimage(left, top, across, down), 0, 0, null);
        int[] dots = part.getRGB(0, 0, across, down, null, 0, across);
        BinaryBitmap bits = new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(across, down, dots)));
        try {
            return new DataMatrixReader()
                    .decode(
                            bits,
                            Map.of(
                                    DecodeHintType.TRY_HARDER,
                                    true,
                                    DecodeHintType.POSSIBLE_FORMATS,
                                    List.of(BarcodeFormat.DATA_MATRIX)))
                    .getText();
        } catch (NotFoundException none) {
            throw new AssertionError("no code there", none);
        } catch (ReaderException broken) {
            throw new AssertionError("a code that can't be read", broken);
        }
    }

    /** The first and last dark dot of a rectangle, in millimetres: left, top, right, bottom. */
    double[] ink(double x, double y, double w, double h) {
        double[] ink = {Double.MAX_VALUE, Double.MAX_VALUE, 0, 0};
        for (int i = pixels(x); i < Math.min(image.getWidth(), pixels(x + w)); i++) {
            for (int j = pixels(y); j < Math.min(image.getHeight(), pixels(y + h)); j++) {
                if ((image.getRGB(i, j) & 0xff) < 128) {
                    ink[0] = Math.min(ink[0], i * MM / DPI);
                    ink[1] = Math.min(ink[1], j * MM / DPI);
                    ink[2] = Math.max(ink[2], (i + 1) * MM / DPI);
                    ink[3] = Math.max(ink[3], (j + 1) * MM / DPI);
                }
            }
        }
        return ink;
    }

    private static int pixels(double millimetres) {
        return (int) Math.round(millimetres * DPI / MM);
    }
}
