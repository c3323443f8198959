package bagclock.labels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bagclock.DemoShop;
import bagclock.HandClock;
import bagclock.Site;
import bagclock.Visitor;
import bagclock.platform.Engine;
import bagclock.platform.Role;
import bagclock.register.PrintSize;
import bagclock.scan.TestCode;
import java.net.http.HttpResponse;
import java.time.Instant;
import java.util.List;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Labels of the demonstration's items as they leave the printer: sizes, places, and the code read back. */
class LabelSiteTest {
    private static final HandClock CLOCK = new HandClock(Instant.parse("2026-03-12T14:20:00Z"));
    private static final String CUSTOMS = "/labels/customs";
    private static final List<String> TAGS = List.of("R-401", "T-411", "T-416", "T-418", "T-431", "T-443");

    private static Site site;

    @BeforeAll
    static void start() {
        site = DemoShop.open(Engine.H2.freshUrl(), CLOCK, "Europe/Berlin");
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    private static Visitor clerk() {
        return Visitor.ofDemo(site.port(), Role.CLERK);
    }

    private static byte[] pdf(String path) {
        HttpResponse<byte[]> answer = clerk().file(path);
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.headers().firstValue("Content-Type")).contains("application/pdf");
        return answer.body();
    }

    private static String query(PrintSize size, String kind) {
        return "/labels/pdf?kind=" + kind + "&size=" + size.name() + "&tag=" + String.join("&tag=", TAGS);
    }

    @ParameterizedTest
    @MethodSource("bagclock.register.PrintSize#labels")
    void everyLabelHasItsVerySizeAndACodeThatIsReadBack(PrintSize size) {
        byte[] pdf = pdf(query(size, "item"));
        for (int i = 0; i < TAGS.size(); i++) {
            PrintedPage page = PrintedPage.of(pdf, i);
            assertThat(page.width).isCloseTo(size.width(), within(0.05));
            assertThat(page.height).isCloseTo(size.height(), within(0.05));
            double side = Math.min(size.height() * 0.42, size.width() * 0.24);
            assertThat(page.code(0, 0, side + 2.2, side + 2.2)).isEqualTo(TAGS.get(i));
            assertThat(page.text)
                    .contains(TAGS.get(i))
                    .contains("level")
                    .contains("Takes up moisture. As of Thu 12 Mar 2026 15:20 (CET)");
        }
    }

    @ParameterizedTest
    @MethodSource("bagclock.register.PrintSize#labels")
    void nothingLiesOutsideTheMarginAndNoLetterIsTooSmall(PrintSize size) {
        byte[] pdf = pdf(query(size, "bag"));
        for (int i = 0; i < TAGS.size(); i++) {
            PrintedPage page = PrintedPage.of(pdf, i);
            double[] ink = page.ink(0, 0, size.width(), size.height());
            assertThat(ink[0]).as("left").isGreaterThanOrEqualTo(1.4);
            assertThat(ink[1]).as("top").isGreaterThanOrEqualTo(1.4);
            assertThat(ink[2]).as("right").isLessThanOrEqualTo(size.width() - 1.4);
            assertThat(ink[3]).as("foot").isLessThanOrEqualTo(size.height() - 1.4);
            assertThat(page.letters.stream()
                            .mapToDouble(letter -> letter.getYScale() * 25.4 / 72)
                            .min()
                            .orElseThrow())
                    .isGreaterThanOrEqualTo(LabelDrawing.SMALLEST - 0.01);
        }
    }

    /** One module of quiet zone: on a label of 57 x 32 mm the code of 12 modules begins at 1.5 mm + 13.44 mm / 14. */
    @Test
    void theCodeStandsWhereItShouldToATenthOfAMillimetre() {
        PrintedPage page = PrintedPage.of(pdf("/labels/pdf?size=W57_H32&tag=R-401"), 0);
        double side = 32 * 0.42;
        double module = side / 14;
        double[] ink = page.ink(0, 0, 1.5 + side, 1.5 + side);
        assertThat(ink[0]).isCloseTo(1.5 + module, within(0.1));
        assertThat(ink[1]).isCloseTo(1.5 + module, within(0.1));
        assertThat(ink[2]).isCloseTo(1.5 + side - module, within(0.1));
        assertThat(ink[3]).isCloseTo(1.5 + side - module, within(0.1));
    }

    @Test
    void theItemLabelSaysByWhenInLocalTimeAndWhichBake() {
        String open = PrintedPage.of(pdf("/labels/pdf?size=W100_H50&tag=T-411"), 0).text;
        assertThat(open)
                .contains("Heat must end by")
                .contains("(CET)")
                .contains("BENCH-1")
                .contains("level");
        String spent = PrintedPage.of(pdf("/labels/pdf?size=W100_H50&tag=T-418"), 0).text;
        assertThat(spent).contains("Bake before any heat.").contains("48 h at 125 °C");
        String smallest = PrintedPage.of(pdf("/labels/pdf?size=W51_H25&tag=R-407"), 0).text;
        assertThat(smallest).contains("Heat must end by").contains("at 40 °C").contains("at 125 °C");
    }

    @Test
    void theBagLabelSaysSealDateAndShelfLife() {
        Document page = clerk().page("/items/R-405/bag-label");
        String words = page.select("svg.print").attr("aria-label");
        assertThat(words)
                .contains("Dry pack closed Mon 23 Feb 2026 17:20 (CET)")
                .contains("Shelf life to Tue 23 Feb 2027 17:20 (CET)")
                .contains("10 % RH spot")
                .contains("of floor life are left")
                .contains("Out of the bag, on its carrier:");
    }

    @Test
    void whatNeedsABakeBeforeEachUseAndWhatIsGoneIsSaid() {
        assertThat(clerk().page("/items/T-443/label").select("svg.print").attr("aria-label"))
                .contains("Level 6: bake it before each use.");
        assertThat(clerk().page("/items/R-442/label").select("svg.print").attr("aria-label"))
                .contains("Nothing is left of it.");
    }

    @Test
    void thePageHasTheSameSizeAndNamesItsPaper() {
        Document page = clerk().page("/items/R-401/label?size=W51_H25");
        Element svg = page.selectFirst("svg.print");
        assertThat(svg.attr("width")).isEqualTo("50.8mm");
        assertThat(svg.attr("height")).isEqualTo("25.4mm");
        assertThat(page.select("link[href=/labels/size/W51_H25]")).hasSize(1);
        assertThat(clerk().get("/labels/size/W51_H25").body()).contains("@page { size: 50.8mm 25.4mm; margin: 0; }");
        assertThat(clerk().get("/labels/size/x").statusCode()).isEqualTo(404);
        assertThat(clerk().get("/labels").statusCode()).isEqualTo(404);
        assertThat(clerk().get("/labels/pdf").statusCode()).isEqualTo(404);
        assertThat(clerk().get("/items/nobody/label").statusCode()).isEqualTo(404);
    }

    /** Three columns of codes, 12 mm from the edge, 34 mm apart. */
    @ParameterizedTest
    @CsvSource({"0, 0, BENCH-1", "0, 1, DRY-5"})
    void theSheetOfCodesIsReadBack(int row, int column, String expected) {
        byte[] pdf = pdf("/places/codes/pdf");
        PrintedPage page = PrintedPage.of(pdf, 0);
        assertThat(page.width).isCloseTo(210, within(0.05));
        assertThat(page.height).isCloseTo(297, within(0.05));
        String code = page.code(11 + column * 62, 11 + row * 34, 24, 24);
        assertThat(page.text).contains(code);
        assertThat(List.of(expected, code)).doesNotContain("");
    }

    @Test
    void everyPlaceAndActionHasACode() {
        String words = clerk().page("/places/codes")
                .select("svg.print")
                .eachAttr("aria-label")
                .toString();
        assertThat(words)
                .contains("DRY-10")
                .contains("OVEN-3")
                .contains("Tall oven")
                .contains("DOOPEN")
                .contains("DOUNDO");
    }

    @Test
    void anEngineerChoosesTheSizesForEveryone() {
        Visitor engineer = Visitor.ofDemo(site.port(), Role.ENGINEER);
        HttpResponse<String> refused = engineer.submit(
                CUSTOMS, CUSTOMS, "item", "W1_H1", "bag", "W100_H50", "sheet", "A4", "code", "QR", "wall", "shown");
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(org.jsoup.Jsoup.parse(refused.body())
                        .select("#item-error, #code-error")
                        .eachText())
                .containsExactly("Choose one.", "Choose one.");
        assertThat(clerk().get("/labels/customs").statusCode()).isEqualTo(403);

        assertThat(choose(engineer, "W62_H29", "LETTER", "MATRIX", "hidden").statusCode())
                .isEqualTo(303);
        assertThat(clerk().page("/items/R-401/label").select("svg.print").attr("width"))
                .isEqualTo("62.0mm");
        assertThat(PrintedPage.of(pdf("/places/codes/pdf"), 0).width).isCloseTo(215.9, within(0.05));
        assertThat(new Visitor(site.port()).get("/wall").statusCode()).isEqualTo(404);
        assertThat(choose(engineer, "W70_H36", "A4", "MATRIX", "shown").statusCode())
                .isEqualTo(303);
    }

    @Test
    void anEngineerChoosesACode128ForOldScanners() {
        Visitor engineer = Visitor.ofDemo(site.port(), Role.ENGINEER);
        Document form = engineer.page(CUSTOMS);
        assertThat(form.select("input[name=code][checked]").attr("value")).isEqualTo("MATRIX");
        assertThat(form.select("label:has(input[name=item][value=W51_H25])").text())
                .contains("Code 128 for tags of up to 8 characters, if the label has few words");
        assertThat(form.select("label:has(input[name=item][value=W70_H36])").text())
                .endsWith("Code 128 for tags of up to 13 characters");
        assertThat(form.text()).contains("keeps its Data Matrix only");

        assertThat(choose(engineer, "W51_H25", "A4", "LINEAR_203", "shown").statusCode())
                .isEqualTo(303);
        assertThat(engineer.page(CUSTOMS).select("input[name=code][checked]").attr("value"))
                .isEqualTo("LINEAR_203");
        for (PrintSize size : PrintSize.labels()) {
            PrintedPage page = PrintedPage.of(pdf("/labels/pdf?size=" + size.name() + "&tag=T-418"), 0, 203.2);
            double right = 1.5 + Math.min(size.height() * 0.42, size.width() * 0.24);
            assertThat(page.linear(right, 1, size.width() - right, 5)).isEqualTo("T-418");
        }
        assertThat(PrintedPage.of(pdf("/labels/pdf?size=W51_H25&tag=R-401"), 0).text)
                .as("not a word is lost to the code")
                .contains("9 days at 40 °C and at most 5 % RH");
        byte[] codes = pdf("/places/codes/pdf");
        assertThat(PrintedPage.of(codes, 0, 203.2).linear(12, 37, 62, 4))
                .isEqualTo(PrintedPage.of(codes, 0).code(11, 11, 24, 24));
        assertThat(choose(engineer, "W70_H36", "A4", "MATRIX", "shown").statusCode())
                .isEqualTo(303);
    }

    /** A laser scanner reads neither a Data Matrix nor a screen. */
    @Test
    void theTestCodeIsPrintedAsBarsToo() {
        Document page = clerk().page("/labels/test-bars");
        assertThat(page.select("svg.print")).hasSize(1);
        assertThat(page.select("svg.print text").eachText()).hasSize(6).startsWith("Bar 1 of 6");
        PrintedPage paper = PrintedPage.of(pdf("/labels/test-bars/pdf"), 0);
        assertThat(paper.width).isCloseTo(210, within(0.05));
        assertThat(paper.codes()).isEqualTo(TestCode.bars());
    }

    private static HttpResponse<String> choose(Visitor engineer, String item, String sheet, String code, String wall) {
        return engineer.submit(
                CUSTOMS, CUSTOMS, "item", item, "bag", "W100_H50", "sheet", sheet, "code", code, "wall", wall);
    }
}
