package bagclock.labels;

import bagclock.register.HouseCustoms;
import bagclock.register.LabelCode;
import java.util.ArrayList;
import java.util.List;

/** The bars of a test code under one another on a sheet of paper, each with its words above. */
final class TestSheet {
    private static final double MARGIN = 12;
    private static final double WORDS = 4;
    private static final double GAP = 2;
    private static final double BETWEEN = 8;

    private TestSheet() {}

    /** Where the site has chosen no printer for linear codes, for one of 300 or 600 dots to the inch. */
    static Drawing of(Typeface type, List<CodeSheet.Coded> bars, HouseCustoms usual) {
        double dot =
                usual.code().dot().orElseGet(() -> LabelCode.LINEAR_300.dot().orElseThrow());
        double width = usual.sheet().width();
        List<Drawing.Line> lines = new ArrayList<>();
        List<Drawing.Box> boxes = new ArrayList<>();
        double y = MARGIN;
        for (CodeSheet.Coded bar : bars) {
            lines.add(new Drawing.Line(bar.words(), MARGIN, y + WORDS, WORDS, type.width(bar.words(), WORDS)));
            y += WORDS + GAP;
            Bars drawn = Bars.of(bar.code(), dot, new Bars.Room(MARGIN, width - MARGIN, y))
                    .orElseThrow(() -> new IllegalArgumentException("too long for a sheet: " + bar.code()));
            boxes.addAll(drawn.boxes());
            y += drawn.height() + BETWEEN;
        }
        return new Drawing(width, usual.sheet().height(), lines, boxes);
    }
}
