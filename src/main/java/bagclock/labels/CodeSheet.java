package bagclock.labels;

import java.util.ArrayList;
import java.util.List;

/** Codes in rows and columns on sheets of paper, each with its words beside it. */
final class CodeSheet {
    private static final double MARGIN = 12;
    private static final double CODE = 22;
    private static final double ROW = 34;
    private static final double GAP = 3;
    private static final int COLUMNS = 3;
    private static final double LARGE = 4.6;
    private static final double PLAIN = 3.4;
    private static final double LEADING = 1.25;

    private final Typeface type;
    private final double width;
    private final double height;

    private CodeSheet(Typeface type, double width, double height) {
        this.type = type;
        this.width = width;
        this.height = height;
    }

    /** A code and what it means. */
    record Coded(String code, String words) {}

    /** As many sheets as it takes. */
    static List<Drawing> of(Typeface type, List<Coded> codes, double width, double height) {
        CodeSheet sheet = new CodeSheet(type, width, height);
        int rows = (int) ((height - 2 * MARGIN) / ROW);
        List<Drawing> sheets = new ArrayList<>();
        for (int from = 0; from < codes.size(); from += rows * COLUMNS) {
            sheets.add(sheet.page(codes.subList(from, Math.min(codes.size(), from + rows * COLUMNS))));
        }
        return sheets;
    }

    private Drawing page(List<Coded> codes) {
        List<Drawing.Line> lines = new ArrayList<>();
        List<Drawing.Box> boxes = new ArrayList<>();
        double column = (width - 2 * MARGIN) / COLUMNS;
        for (int i = 0; i < codes.size(); i++) {
            double x = MARGIN + i % COLUMNS * column;
            int row = i / COLUMNS;
            double y = MARGIN + row * ROW;
            Coded coded = codes.get(i);
            boxes.addAll(Matrix.of(coded.code(), x, y, CODE));
            double room = column - CODE - 2 * GAP;
            double end = set(lines, coded.words(), LARGE, new Slot(x + CODE + GAP, y, room));
            set(lines, coded.code(), PLAIN, new Slot(x + CODE + GAP, end + 1, room));
        }
        return new Drawing(width, height, lines, boxes);
    }

    private record Slot(double x, double y, double width) {}

    private double set(List<Drawing.Line> lines, String words, double size, Slot slot) {
        double y = slot.y();
        for (String line : type.wrapped(words, size, slot.width())) {
            y += size * LEADING;
            lines.add(new Drawing.Line(line, slot.x(), y, size, type.width(line, size)));
        }
        return y;
    }
}
