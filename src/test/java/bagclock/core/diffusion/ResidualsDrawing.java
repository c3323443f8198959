package bagclock.core.diffusion;

import bagclock.core.standard.Status;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/** The residuals of every cell, drawn: model divided by table on a logarithmic axis, a line for each row. */
final class ResidualsDrawing {
    private static final int WIDTH = 900;
    private static final int LEFT = 200;
    private static final int RIGHT = 880;
    private static final int LINE = 22;
    private static final int HEADING = 52;

    /** The axis reaches from half to twice. */
    private static final double MOST = 2;

    private final StringBuilder marks = new StringBuilder();
    private int y = 8;

    private ResidualsDrawing() {}

    static String text() {
        ResidualsDrawing drawing = new ResidualsDrawing();
        drawing.floorLife();
        List<BakePair> bakes = BakePair.all();
        drawing.bakes("Table 4-1, more than 72 h over the floor life", bakes, BakePair::over);
        drawing.bakes("Table 4-1, up to 72 h over the floor life", bakes, BakePair::within);
        return drawing.framed();
    }

    private void floorLife() {
        int top = heading("Table 7-1, floor life, from 20 %RH up");
        for (String thickness : ResidualsPage.CLASSES) {
            for (String level : ResidualsPage.LEVELS) {
                row(thickness + ", level " + level);
                FloorLifeFit.of(thickness, level).points().stream()
                        .filter(FloorLifeFit.Point::tried)
                        .forEach(point -> mark(
                                point.tableDays().orElse(Double.POSITIVE_INFINITY),
                                point.modelDays(),
                                point.status(),
                                point.celsius() / 5 - 5.5));
            }
        }
        frame(top);
    }

    private void bakes(String title, List<BakePair> bakes, Function<BakePair, BakePair.Column> column) {
        int top = heading(title);
        String last = "";
        for (BakePair pair : bakes) {
            String name = pair.thickness() + ", level " + pair.level();
            if (!name.equals(last)) {
                row(name);
                last = name;
            }
            BakePair.Column cell = column.apply(pair);
            mark(cell.tableHours(), cell.modelHours(), cell.status(), 0);
        }
        frame(top);
    }

    private int heading(String title) {
        add("<text x=\"8\" y=\"%d\" font-weight=\"bold\">%s</text>", y + 18, title);
        add("<text x=\"%.0f\" y=\"%d\" text-anchor=\"middle\">half</text>", x(1 / MOST), y + 40);
        add("<text x=\"%.0f\" y=\"%d\" text-anchor=\"middle\">as the table</text>", x(1), y + 40);
        add("<text x=\"%.0f\" y=\"%d\" text-anchor=\"end\">twice</text>", x(MOST), y + 40);
        y += HEADING;
        return y;
    }

    private void row(String name) {
        y += LINE;
        String escaped = name.replace("<", "&lt;").replace(">", "&gt;");
        add("<text x=\"8\" y=\"%d\">%s</text>", y - 6, escaped);
    }

    /** Both never ending is no residual. */
    private void mark(double table, double model, Status status, double lower) {
        if (Double.isFinite(table) || Double.isFinite(model)) {
            double ratio = Math.max(1 / MOST, Math.min(MOST, model / table));
            String kind = status == Status.SEEN ? "seen" : "memory";
            add("<circle class=\"%s\" cx=\"%.1f\" cy=\"%.1f\" r=\"3\"/>", kind, x(ratio), y - 11 + 2.5 * lower);
        }
    }

    private void frame(int top) {
        add(
                "<rect class=\"band\" x=\"%.1f\" y=\"%d\" width=\"%.1f\" height=\"%d\"/>",
                x(1 / 1.25), top, x(1.25) - x(1 / 1.25), y - top);
        add("<path class=\"axis\" d=\"M%.1f %dV%dM%d %dV%dM%d %dV%d\"/>", x(1), top, y, LEFT, top, y, RIGHT, top, y);
        y += LINE;
    }

    private static double x(double ratio) {
        return LEFT + (RIGHT - LEFT) * (Math.log(ratio) / Math.log(MOST) + 1) / 2;
    }

    private void add(String format, Object... parts) {
        marks.append(String.format(Locale.ROOT, format, parts)).append('\n');
    }

    /** Light and dark pages show it on white. */
    private String framed() {
        return String.format(Locale.ROOT, """
                <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 %1$d %2$d" width="%1$d" height="%2$d" font-family="sans-serif" font-size="13">
                <style>.seen{fill:#1f4e79}.memory{fill:#fff;stroke:#1f4e79}.band{fill:#1f4e79;fill-opacity:.1}.axis{fill:none;stroke:#555}</style>
                <rect width="%1$d" height="%2$d" fill="#fff"/>
                """, WIDTH, y) + marks + "</svg>\n";
    }
}
