package bagclock.core.diffusion;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The page of residuals, as text. */
final class ResidualsPage {
    static final List<String> CLASSES = List.of(">=3.1 mm", "2.1 to <3.1 mm", "<2.1 mm");
    static final List<String> LEVELS = List.of("2a", "3", "4", "5", "5a");
    private static final List<Double> TEMPERATURES = List.of(20.0, 25.0, 30.0, 35.0);

    private ResidualsPage() {}

    static String text() {
        StringBuilder page = new StringBuilder(HEAD);
        page.append(constants());
        page.append(DRAWN);
        page.append(FLOOR_LIFE);
        CLASSES.forEach(thickness -> LEVELS.forEach(level -> floorLife(page, FloorLifeFit.of(thickness, level))));
        page.append(BAKES);
        bakes(page);
        page.append(END);
        return page.toString();
    }

    private static final String HEAD = """
            # The diffusion model beside the tables

            This page is written by `ResidualsPageTest` and fails it when it is out of date. It compares every cell of
            tables 7-1 and 4-1 with the model of `bagclock.core.diffusion`: Fick's law in one dimension, one open and
            one sealed face. The model changes no answer. Cells from memory are marked so; a fit to them proves nothing.

            """;

    private static final String DRAWN = """

            ## All residuals

            ![Model divided by table, a mark for each cell: a row for each row of table 7-1, then of both columns of
            table 4-1](diffusion-residuals.svg)

            Each mark is a cell: full where it was read in a public source, open where it is from memory. In the middle the
            model agrees with the table, to the right it takes longer; the shaded band is 25 % either way. Beyond half and
            twice, and where one of both never ends, the mark stands at the edge.
            """;

    private static final String FLOOR_LIFE = """

            ## Table 7-1, floor life

            For each row one depth h and one surface energy Es, fitted by least squares of the logarithm over the cells
            from 20 %RH up. In each cell: days of the table, days of the model, and a mark for their ratio: `=` within
            10 %, `+` and `-` up to 25 % more or less, `++` and `--` up to 60 %, `>>` and `<<` beyond, `.` both
            unlimited, `!` unlimited in one of them. 5 and 10 %RH are rules and were not fitted.

            """;

    private static final String BAKES = """

            ## Table 4-1, bakes

            Hours of the table, hours of the model and the same marks. Energy of baking and depths from `Constant` and
            from the longer column itself (0.61 mm up to 1.4 mm of body, 1.10 mm up to 2.0 mm, above in proportion to
            the thickness); dryness by level 29, 22, 13, 8, 5.5 and 2.2 %RH.

            """;

    private static final String END = """

            ## What they say

            - Levels 2a and 3 from 3.1 mm up are followed within a few percent to a quarter: there an estimate is shown.
            - Levels 4, 5 and 5a are followed badly at 35 C, where the table is shorter than the model: there it only
              warns. That h falls with the level within one class is a sign of a missing piece, not a dimension.
            - The thinner classes are from memory. That they can be fitted as well is no evidence; there it is silent.
            - At 5 and 10 %RH the table never ends level 3; the model does, after 10 to 32 days. The table is a rule there.
            - The longer bake column up to 2.0 mm is followed; above 2.0 mm the table is not Fick's law: the thickness
              squared asks for several times its hours. So a bake that counted makes a part dry by the rules alone, and
              above 4.5 mm nothing is said.
            - The shorter bake column is not explained by the model.
            """;

    private static String constants() {
        String lines = Stream.of(Constant.values())
                .map(constant -> "| " + String.join(" | ", constant.line()) + " |\n")
                .collect(Collectors.joining());
        return "## Constants\n\n| symbol | value | unit | status | source |\n|---|---|---|---|---|\n" + lines;
    }

    private static void floorLife(StringBuilder page, FloorLifeFit fit) {
        page.append(String.format(
                Locale.ROOT,
                "### %s, level %s: h %.2f mm, Es %.2f eV, rms %.2f, %s\n\n",
                fit.thickness(),
                fit.level(),
                fit.depthMm(),
                fit.surfaceEv(),
                fit.rms(),
                fit.seen() > 0 ? fit.seen() + " of " + fit.points().size() + " cells seen" : "from memory"));
        page.append("    %RH      20 C             25 C             30 C             35 C\n");
        for (double percent : List.of(5.0, 10.0, 20.0, 30.0, 40.0, 50.0, 60.0, 70.0, 80.0, 90.0)) {
            StringBuilder line = new StringBuilder(String.format(Locale.ROOT, "    %3.0f ", percent));
            for (double celsius : TEMPERATURES) {
                fit.points().stream()
                        .filter(point -> point.percent() == percent && point.celsius() == celsius)
                        .forEach(point -> line.append(
                                cell(point.tableDays().orElse(Double.POSITIVE_INFINITY), point.modelDays())));
            }
            page.append(line.toString().stripTrailing()).append('\n');
        }
        page.append('\n');
    }

    private static String cell(double table, double model) {
        return String.format(
                Locale.ROOT, " %5s %6s %-2s ", number(table, "%.0f"), number(model, "%.1f"), mark(table, model));
    }

    private static String number(double value, String format) {
        return Double.isFinite(value) ? String.format(Locale.ROOT, format, value) : "never";
    }

    private static String mark(double table, double model) {
        if (!Double.isFinite(table) || !Double.isFinite(model)) {
            return Double.isFinite(table) || Double.isFinite(model) ? "!" : ".";
        }
        double ratio = model / table;
        double off = Math.max(ratio, 1 / ratio);
        if (off <= 1.10) {
            return "=";
        }
        String sign = ratio > 1 ? "+" : "-";
        return off <= 1.25 ? sign : off <= 1.6 ? sign + sign : ratio > 1 ? ">>" : "<<";
    }

    private static void bakes(StringBuilder page) {
        page.append("| thickness | level | C | over 72 h: table, model | | up to 72 h: table, model | | status |\n");
        page.append("|---|---|---|---|---|---|---|---|\n");
        BakePair.all()
                .forEach(pair -> page.append(String.format(
                        Locale.ROOT,
                        "| %s | %s | %.0f | %.0f, %.1f | `%s` | %.0f, %.1f | `%s` | %s |\n",
                        pair.thickness(),
                        pair.level(),
                        pair.celsius(),
                        pair.over().tableHours(),
                        pair.over().modelHours(),
                        mark(pair.over().tableHours(), pair.over().modelHours()),
                        pair.within().tableHours(),
                        pair.within().modelHours(),
                        mark(pair.within().tableHours(), pair.within().modelHours()),
                        pair.over().status().code())));
    }
}
