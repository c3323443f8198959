package bagclock.labels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bagclock.register.HouseCustoms;
import bagclock.register.LabelCode;
import bagclock.register.PrintSize;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Code 128 beside the Data Matrix, printed dot by dot and read by ZXing. Quiet zone: 10 modules (ISO/IEC 15417:2007);
 * module: at least 9.5 mil (EIGP 114, as an open generator quotes it); height: 5 mm or 15 % of the length (common
 * practice). An older tag may have up to 40 characters.
 */
class LinearCodeTest {
    private static final Typeface TYPE = new Typeface();
    private static final int LONGEST_TAG = 40;
    private static final String LETTERS = "Wx8-Q.z_";
    private static final List<String> DRAWN = List.of("R10014", "R1234567890123456780");

    static Stream<Arguments> sizesAndPrinters() {
        return PrintSize.labels().stream()
                .flatMap(size ->
                        Stream.of(LabelCode.LINEAR_203, LabelCode.LINEAR_300).map(code -> Arguments.of(size, code)));
    }

    private static LabelText text(String tag) {
        return new LabelText(
                tag, "Heat must end by Thu 12 Mar 14:20 (CET).", List.of("HQ-1, 50 parts, level 3"), "Dry.");
    }

    private static String tag(int length) {
        return IntStream.range(0, length)
                .mapToObj(i -> LETTERS.substring(i % LETTERS.length(), i % LETTERS.length() + 1))
                .reduce("", String::concat);
    }

    private static Drawing drawn(String tag, PrintSize size, LabelCode code) {
        return LabelDrawing.of(TYPE, text(tag), size.width(), size.height(), code.dot());
    }

    private static double side(PrintSize size) {
        return Math.min(size.height() * 0.42, size.width() * 0.24);
    }

    private static double dpi(LabelCode code) {
        return code == LabelCode.LINEAR_203 ? 203.2 : 300;
    }

    private static int longest(PrintSize size, LabelCode code) {
        Bars.Room room = LabelDrawing.besideMatrix(size.width(), size.height());
        return Bars.characters(code.dot().orElseThrow(), room);
    }

    @ParameterizedTest
    @MethodSource("sizesAndPrinters")
    void bothCodesOfTheLongestTagAreReadBackFromEverySize(PrintSize size, LabelCode code) {
        int longest = longest(size, code);
        assertThat(longest).isBetween(8, LONGEST_TAG - 1);
        Stream.concat(Stream.of(tag(longest), tag(longest - 1)), DRAWN.stream().filter(tag -> tag.length() <= longest))
                .forEach(tag -> {
                    byte[] pdf = Pdf.of(tag, List.of(drawn(tag, size, code)));
                    PrintedPage page = PrintedPage.of(pdf, 0, dpi(code));
                    double right = 1.5 + side(size);
                    assertThat(page.linear(right, 1, size.width() - right, 5)).isEqualTo(tag);
                    assertThat(PrintedPage.of(pdf, 0).code(0, 0, side(size) + 2.2, side(size) + 2.2))
                            .isEqualTo(tag);
                });
    }

    /** Whole dots: two of 1/8 mm, three of 1/300 inch; the blanks at either side are ten modules and more. */
    @ParameterizedTest
    @MethodSource("sizesAndPrinters")
    void everyBarIsOfWholeDotsAndTheQuietZonesStayBlank(PrintSize size, LabelCode code) {
        int dots = code == LabelCode.LINEAR_203 ? 2 : 3;
        String tag = tag(longest(size, code));
        PrintedPage page = PrintedPage.of(Pdf.of(tag, List.of(drawn(tag, size, code))), 0, dpi(code));
        double right = 1.5 + side(size);
        List<Integer> runs = page.runs(right, 3, size.width() - right);
        List<Integer> code128 = runs.subList(1, runs.size() - 1);
        assertThat(code128).allSatisfy(run -> assertThat(run % dots).isZero());
        assertThat(code128.stream().mapToInt(run -> run / dots).sum()).isEqualTo(11 * (tag.length() + 2) + 13);
        assertThat(runs.get(0)).isGreaterThanOrEqualTo(10 * dots);
        assertThat(runs.get(runs.size() - 1) - Math.floor(1.5 * dpi(code) / 25.4))
                .isGreaterThanOrEqualTo(10 * dots);
        double module = dots * 25.4 / dpi(code);
        assertThat(module).isGreaterThanOrEqualTo(9.5 * 0.0254);
        double height = Math.max(5, 0.15 * module * (11 * (tag.length() + 2) + 13));
        double start = right + 10 * module;
        assertThat(page.ink(start, 0, 2 * module, height + 1.7)[3]).isCloseTo(1.5 + height, within(0.15));
    }

    @ParameterizedTest
    @MethodSource("sizesAndPrinters")
    void aTagThatIsTooLongKeepsItsDataMatrixOnly(PrintSize size, LabelCode code) {
        String tag = tag(longest(size, code) + 2);
        assertThat(drawn(tag, size, code)).isEqualTo(drawn(tag, size, LabelCode.MATRIX));
        String oldest = tag(LONGEST_TAG);
        assertThat(Bars.of(oldest, code.dot().orElseThrow(), LabelDrawing.besideMatrix(size.width(), size.height())))
                .isEmpty();
    }

    @Test
    void noLineIsGivenUpForACode() {
        List<String> lines = IntStream.range(0, 12)
                .mapToObj(i -> "Bake as it is: " + i + " h at 125 °C.")
                .toList();
        LabelText full = new LabelText("R10014", "Heat must end by Thu 12 Mar 14:20 (CET).", lines, "Dry.");
        Drawing with = LabelDrawing.of(TYPE, full, 50.8, 25.4, LabelCode.LINEAR_203.dot());
        assertThat(with).isEqualTo(LabelDrawing.of(TYPE, full, 50.8, 25.4, OptionalDouble.empty()));
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void theSheetOfCodesHasBothToo(PrintSize sheet, LabelCode code) {
        HouseCustoms customs = new HouseCustoms(PrintSize.W70_H36, PrintSize.W100_H50, sheet, code, true);
        List<CodeSheet.Coded> codes = List.of(
                new CodeSheet.Coded("BENCH-1", "Bench by the window"),
                new CodeSheet.Coded(tag(17), "A place with a long code"),
                new CodeSheet.Coded(tag(18), "A place with a longer one"),
                new CodeSheet.Coded("DOUNDO", "Take back ".repeat(12).strip()));
        PrintedPage page = PrintedPage.of(Pdf.of("codes", CodeSheet.of(TYPE, codes, customs)), 0, dpi(code));
        double column = (sheet.width() - 24) / 3;
        assertThat(page.linear(12, 37, column, 4)).isEqualTo("BENCH-1");
        assertThat(page.linear(12 + column, 37, column, 4)).isEqualTo(tag(17));
        assertThat(page.runs(12 + 2 * column, 39, column)).as("too long").hasSize(1);
        assertThat(page.code(11, 45, 24, 24)).isEqualTo("DOUNDO");
        assertThat(page.runs(12, 73, 24)).as("its words need the room").hasSize(1);
    }

    static Stream<Arguments> sheets() {
        return Stream.of(
                Arguments.of(PrintSize.A4, LabelCode.LINEAR_203), Arguments.of(PrintSize.LETTER, LabelCode.LINEAR_300));
    }
}
