package bagclock.labels;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Lays a label out: the Data Matrix at the left, beside it the Code 128 if the site wants one, tag, sentence and lines, the
 * caution across the foot. The type is as
 * large as the label allows.
 */
final class LabelDrawing {
    /** No line is set smaller (mm): about 4.8 points, the least that a thermal printer of 203 dpi prints legibly. */
    static final double SMALLEST = 1.7;

    private static final double MARGIN = 1.5;
    private static final double GAP = 1.2;
    private static final double LEADING = 1.16;
    private static final double LARGEST_SCALE = 2.4;
    private static final double SMALLEST_SCALE = 0.56;
    private static final double STEP = 0.02;
    private static final double TAG = 4.6;
    private static final double SENTENCE = 3.3;
    private static final double PLAIN = 2.5;
    private static final double CAUTION = 2.2;
    private static final double CODE_OF_HEIGHT = 0.42;
    private static final double CODE_OF_WIDTH = 0.24;

    private final Typeface type;
    private final LabelText text;
    private final double width;
    private final double height;

    private final Optional<Bars> bars;

    private LabelDrawing(Typeface type, LabelText text, double width, double height, Optional<Bars> bars) {
        this.type = type;
        this.text = text;
        this.width = width;
        this.height = height;
        this.bars = bars;
    }

    /**
     * The label in millimetres; lines that don't fit at the smallest type are left out from the end.
     *
     * @param dot of the printer that a Code 128 is for; it is left out where the label would lose a line by it
     */
    static Drawing of(Typeface type, LabelText text, double width, double height, OptionalDouble dot) {
        return withBars(type, text, width, height, dot).orElseGet(() -> withMatrix(type, text, width, height));
    }

    /** The label with its Code 128; empty if it does not fit, or none is wanted. */
    static Optional<Drawing> withBars(Typeface type, LabelText text, double width, double height, OptionalDouble dot) {
        return dot.stream()
                .boxed()
                .flatMap(one -> Bars.of(text.tag(), one, besideMatrix(width, height)).stream())
                .map(bars -> new LabelDrawing(type, text, width, height, Optional.of(bars)))
                .flatMap(drawing -> drawing.drawn().stream())
                .findFirst();
    }

    private static Drawing withMatrix(Typeface type, LabelText text, double width, double height) {
        LabelText rest = text;
        while (true) {
            Optional<Drawing> drawing = new LabelDrawing(type, rest, width, height, Optional.empty()).drawn();
            if (drawing.isPresent()) {
                return drawing.get();
            }
            if (rest.lines().isEmpty()) {
                throw new IllegalArgumentException("a label of " + width + " x " + height + " mm is too small");
            }
            rest = new LabelText(
                    text.tag(),
                    text.sentence(),
                    rest.lines().subList(0, rest.lines().size() - 1),
                    text.caution());
        }
    }

    /** Where a Code 128 may stand on a label of this size: its quiet zones lie within the margin. */
    static Bars.Room besideMatrix(double width, double height) {
        return new Bars.Room(MARGIN + side(width, height), width - MARGIN, MARGIN);
    }

    private Optional<Drawing> drawn() {
        for (double scale = LARGEST_SCALE; scale >= SMALLEST_SCALE; scale -= STEP) {
            List<Drawing.Line> lines = lines(scale);
            if (fits(lines)) {
                return Optional.of(new Drawing(width, height, lines, codes()));
            }
        }
        return Optional.empty();
    }

    private static double side(double width, double height) {
        return Math.min(height * CODE_OF_HEIGHT, width * CODE_OF_WIDTH);
    }

    private double side() {
        return side(width, height);
    }

    private List<Drawing.Box> codes() {
        List<Drawing.Box> matrix = Matrix.of(text.tag(), MARGIN, MARGIN, side());
        return Stream.concat(matrix.stream(), bars.stream().flatMap(linear -> linear.boxes().stream()))
                .toList();
    }

    private List<Drawing.Line> lines(double scale) {
        double x = MARGIN + side() + GAP;
        List<Drawing.Line> lines = new ArrayList<>();
        double y = MARGIN + bars.map(linear -> linear.height() + GAP / 2).orElse(0.0);
        y = set(lines, text.tag(), TAG * scale, x, y);
        y = set(lines, text.sentence(), SENTENCE * scale, x, y);
        for (String line : text.lines()) {
            y = set(lines, line, Math.max(SMALLEST, PLAIN * scale), isBelowCode(y) ? MARGIN : x, y);
        }
        double size = Math.max(SMALLEST, CAUTION * scale);
        double below = Math.max(y, MARGIN + side()) + GAP / 2;
        double foot = set(new ArrayList<>(), text.caution(), size, MARGIN, below) - below;
        set(lines, text.caution(), size, MARGIN, Math.max(below, height - MARGIN - foot));
        return lines;
    }

    /** Under the code the whole width is free. */
    private boolean isBelowCode(double y) {
        return y >= MARGIN + side();
    }

    private double set(List<Drawing.Line> lines, String words, double size, double x, double y) {
        double next = y;
        for (String line : type.wrapped(words, size, width - MARGIN - x)) {
            next += size * LEADING;
            double base = next - size * (LEADING - 0.9);
            lines.add(new Drawing.Line(line, x, base, size, type.width(line, size)));
        }
        return next;
    }

    private boolean fits(List<Drawing.Line> lines) {
        Drawing.Line last = lines.get(lines.size() - 1);
        boolean wide = lines.stream().anyMatch(line -> line.x() + line.width() > width - MARGIN + 0.01);
        return !wide && last.y() + last.size() * (LEADING - 0.9) <= height - MARGIN + 0.01 && tagOnOneLine(lines);
    }

    private boolean tagOnOneLine(List<Drawing.Line> lines) {
        return lines.get(0).text().equals(type.shown(text.tag()));
    }
}
