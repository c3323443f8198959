package bagclock.labels;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** Drawings as a PDF file, one to a page of its very size. */
final class Pdf {
    private static final double POINTS_IN_MM = 72 / 25.4;

    private Pdf() {}

    static byte[] of(String title, List<Drawing> drawings) {
        try (PDDocument document = new PDDocument();
                InputStream file = Typeface.file()) {
            PDFont font = PDType0Font.load(document, file, true);
            document.getDocumentInformation().setTitle(title);
            for (Drawing drawing : drawings) {
                draw(document, font, drawing);
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static void draw(PDDocument document, PDFont font, Drawing drawing) throws IOException {
        PDPage page = new PDPage(new PDRectangle(points(drawing.width()), points(drawing.height())));
        document.addPage(page);
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
            for (Drawing.Box box : drawing.boxes()) {
                content.addRect(
                        points(box.x()),
                        points(drawing.height() - box.y() - box.height()),
                        points(box.width()),
                        points(box.height()));
            }
            content.fill();
            for (Drawing.Line line : drawing.lines()) {
                content.beginText();
                content.setFont(font, points(line.size()));
                content.newLineAtOffset(points(line.x()), points(drawing.height() - line.y()));
                content.showText(line.text());
                content.endText();
            }
        }
    }

    private static float points(double millimetres) {
        return (float) (millimetres * POINTS_IN_MM);
    }
}
