package bagclock.labels;

import bagclock.register.HouseCustoms;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Codes in rows and columns on sheets of paper, each with its words beside it and a Code 128 below, if one is wanted. */
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

    private final OptionalDouble dot;

    private CodeSheet(Typeface type, HouseCustoms usual) {
        this.type = type;
        this.width = usual.sheet().width();
        this.height = usual.sheet().height();
        this.dot = usual.code().dot();
    }

    /** A code and what it means. */
    record Coded(String code, String words) {}

    /** As many sheets as it takes. */
    static List<Drawing> of(Typeface type, List<Coded> codes, HouseCustoms usual) {
        CodeSheet sheet = new CodeSheet(type, usual);
        int rows = (int) ((sheet.height - 2 * MARGIN) / ROW);
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
            double words = set(lines, coded.code(), PLAIN, new Slot(x + CODE + GAP, end + 1, room));
            Bars.Room below = new Bars.Room(x, x + column, y + CODE + GAP);
            dot.stream()
                    .filter(one -> words <= below.top())
                    .boxed()
                    .flatMap(one -> Bars.of(coded.code(), one, below).stream())
                    .forEach(bars -> boxes.addAll(bars.boxes()));
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
