package bagclock.labels;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.Reader;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.datamatrix.DataMatrixReader;
import com.google.zxing.oned.Code128Reader;
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
    private static final double DPI = 300;

    private static final double MM = 25.4;

    final double width;
    final double height;
    final List<TextPosition> letters = new ArrayList<>();
    final String text;
    private final BufferedImage image;
    private final double dpi;

    private PrintedPage(byte[] pdf, int index, double dpi) {
        this.dpi = dpi;
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDRectangle box = document.getPage(index).getMediaBox();
            this.width = box.getWidth() / 72 * MM;
            this.height = box.getHeight() / 72 * MM;
            this.image = new PDFRenderer(document).renderImageWithDPI(index, (float) dpi, ImageType.GRAY);
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
        return of(pdf, index, DPI);
    }

    static PrintedPage of(byte[] pdf, int index, double dpi) {
        return new PrintedPage(pdf, index, dpi);
    }

    /** Reads the Data Matrix code in a rectangle, in millimetres. */
    String code(double x, double y, double w, double h) {
        return read(new DataMatrixReader(), BarcodeFormat.DATA_MATRIX, part(x, y, w, h));
    }

    /** Reads the Code 128 in a rectangle, line by line as a laser scanner does. */
    String linear(double x, double y, double w, double h) {
        return read(new Code128Reader(), BarcodeFormat.CODE_128, part(x, y, w, h));
    }

    /** How many dots wide each blank and bar of a line across is, beginning with a blank. */
    List<Integer> runs(double x, double y, double w) {
        List<Integer> runs = new ArrayList<>();
        boolean dark = false;
        int run = 0;
        for (int i = pixels(x); i < Math.min(image.getWidth(), pixels(x + w)); i++) {
            if (((image.getRGB(i, pixels(y)) & 0xff) < 128) != dark) {
                runs.add(run);
                run = 0;
                dark = !dark;
            }
            run++;
        }
        runs.add(run);
        return runs;
    }

    /** Every Code 128 on the page, from the top. */
    List<String> codes() {
        List<String> codes = new ArrayList<>();
        for (double y = 0; y < height; y++) {
            BufferedImage line = part(0, y, width, 1);
            if (runs(0, y + 0.5, width).size() > 50) {
                String code = read(new Code128Reader(), BarcodeFormat.CODE_128, line);
                if (codes.isEmpty() || !codes.get(codes.size() - 1).equals(code)) {
                    codes.add(code);
                }
            }
        }
        return codes;
    }

    private BufferedImage part(double x, double y, double w, double h) {
        int left = pixels(x);
        int top = pixels(y);
        int across = Math.min(pixels(w), image.getWidth() - left);
        int down = Math.min(pixels(h), image.getHeight() - top);
        BufferedImage part = new BufferedImage(across, down, BufferedImage.TYPE_INT_RGB);
        part.getGraphics().drawImage(image.getSubimage(left, top, across, down), 0, 0, null);
        return part;
    }

    private static String read(Reader reader, BarcodeFormat format, BufferedImage part) {
        int across = part.getWidth();
        int down = part.getHeight();
        int[] dots = part.getRGB(0, 0, across, down, null, 0, across);
        BinaryBitmap bits = new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(across, down, dots)));
        try {
            return reader.decode(
                            bits,
                            Map.of(DecodeHintType.TRY_HARDER, true, DecodeHintType.POSSIBLE_FORMATS, List.of(format)))
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
                    ink[0] = Math.min(ink[0], i * MM / dpi);
                    ink[1] = Math.min(ink[1], j * MM / dpi);
                    ink[2] = Math.max(ink[2], (i + 1) * MM / dpi);
                    ink[3] = Math.max(ink[3], (j + 1) * MM / dpi);
                }
            }
        }
        return ink;
    }

    private int pixels(double millimetres) {
        return (int) Math.round(millimetres * dpi / MM);
    }
}
