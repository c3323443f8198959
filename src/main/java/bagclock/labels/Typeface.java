package bagclock.labels;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.font.PDFont;

/**
 * Liberation Sans, which PDFBox brings along: how wide a text is, and how it breaks into lines. The same type, or one of
 * the same widths, is on every desktop. May be used by many threads.
 */
final class Typeface {
    private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final int UNKNOWN = '?';

    private final TrueTypeFont font;
    private final CmapLookup glyphs;
    private final Map<Integer, Double> widths = new ConcurrentHashMap<>();

    Typeface() {
        try (InputStream file = file()) {
            this.font = new TTFParser().parse(new RandomAccessReadBuffer(file));
            this.glyphs = font.getUnicodeCmapLookup();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** The font's file. */
    static InputStream file() {
        InputStream file = PDFont.class.getResourceAsStream(FILE);
        if (file == null) {
            throw new IllegalStateException("not on the class path: " + FILE);
        }
        return file;
    }

    /** The text with a question mark for each letter that the font lacks. */
    String shown(String text) {
        StringBuilder shown = new StringBuilder();
        text.codePoints()
                .map(letter -> glyphs.getGlyphId(letter) == 0 ? UNKNOWN : letter)
                .forEach(shown::appendCodePoint);
        return shown.toString();
    }

    /** How wide a text is at an em of this size. */
    double width(String text, double size) {
        return size * text.codePoints().mapToDouble(this::width).sum();
    }

    private double width(int letter) {
        return widths.computeIfAbsent(letter, this::measured);
    }

    private synchronized double measured(int letter) {
        try {
            return font.getAdvanceWidth(glyphs.getGlyphId(letter)) / (double) font.getUnitsPerEm();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** Breaks a text at blanks so that no line is wider; a word that alone is wider is broken anywhere. */
    List<String> wrapped(String text, double size, double width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : shown(text).split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (width(longer, size) <= width) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            line = word;
            while (width(line, size) > width && line.length() > 1) {
                int end = fitting(line, size, width);
                lines.add(line.substring(0, end));
                line = line.substring(end);
            }
        }
        lines.add(line);
        return lines;
    }

    private int fitting(String word, double size, double width) {
        int end = word.length() - 1;
        while (end > 1 && width(word.substring(0, end), size) > width) {
            end--;
        }
        return end;
    }
}
