package bagclock.labels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bagclock.DemoShop;
import bagclock.HandClock;
import bagclock.Site;
import bagclock.browser.Browser;
import bagclock.platform.Role;
import bagclock.register.PrintSize;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.PdfOptions;
import java.time.Instant;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Labels printed from the page itself, as the browser's own print dialogue does it. */
class LabelPrintIT {
    private static final HandClock CLOCK = new HandClock(Instant.parse("2026-03-12T14:20:00Z"));
    private static final List<String> TAGS = List.of("R-401", "T-411");

    private static Site site;
    private static Browser browser;

    @BeforeAll
    static void start() {
        site = DemoShop.open(CLOCK);
        browser = Browser.start();
    }

    @AfterAll
    static void stop() {
        browser.close();
        site.close();
    }

    private static Page pageOf(Role role) {
        Page page = browser.browser().newPage();
        page.navigate(address("/sign-in"));
        page.locator("button[value=" + role + "]").click();
        return page;
    }

    private static String address(String path) {
        return "http://localhost:" + site.port() + path;
    }

    private static byte[] printed(Page page, String query) {
        page.navigate(address("/labels?" + query));
        return page.pdf(new PdfOptions().setPreferCSSPageSize(true));
    }

    @Test
    void thePageComesOutInTheLabelsSizeOneLabelToAPage() throws Exception {
        Page page = pageOf(Role.CLERK);
        for (PrintSize size : List.of(PrintSize.W51_H25, PrintSize.W70_H36, PrintSize.W102_H76)) {
            check(printed(page, "size=" + size.name() + "&tag=" + String.join("&tag=", TAGS)), size);
        }
    }

    /** An ordinary page leaves a margin all around that every printer keeps, on both usual papers. */
    @Test
    void anOrdinaryPageHasAMarginOnBothPapers() {
        Page page = pageOf(Role.CLERK);
        for (String path : List.of("/items", "/ovens/plan/print")) {
            page.navigate(address(path));
            for (PrintSize paper : PrintSize.sheets()) {
                byte[] pdf = page.pdf(new PdfOptions().setFormat(paper == PrintSize.A4 ? "A4" : "Letter"));
                PrintedPage print = PrintedPage.of(pdf, 0, 150);
                double[] ink = print.ink(0, 0, print.width, print.height);
                assertThat(print.width).as(path).isCloseTo(paper.width(), within(0.4));
                assertThat(ink[0]).as(path).isBetween(14.0, 17.0);
                assertThat(ink[1]).as(path).isBetween(14.0, 20.0);
                assertThat(paper.width() - ink[2]).as(path).isGreaterThan(14);
            }
        }
    }

    /** Even printed by the browser, whose points are none of the printer's dots, the Code 128 is read. */
    @Test
    void theCode128ComesOutOfThePageToo() {
        Page page = pageOf(Role.ENGINEER);
        page.navigate(address("/labels/customs"));
        page.locator("label:has(input[name=code][value=LINEAR_300])").click();
        page.locator("main button[type=submit]").click();
        for (PrintSize size : PrintSize.labels()) {
            PrintedPage print = PrintedPage.of(printed(page, "size=" + size.name() + "&tag=T-418"), 0);
            double right = 1.5 + Math.min(size.height() * 0.42, size.width() * 0.24);
            assertThat(print.linear(right, 1, size.width() - right, 5)).isEqualTo("T-418");
        }
    }

    /** A browser rounds the sheet to whole points or pixels; the label on it stays exact. */
    private static void check(byte[] pdf, PrintSize size) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isEqualTo(TAGS.size());
        }
        for (int i = 0; i < TAGS.size(); i++) {
            PrintedPage page = PrintedPage.of(pdf, i);
            assertThat(page.width).isCloseTo(size.width(), within(0.4));
            assertThat(page.height).isCloseTo(size.height(), within(0.4));
            double side = Math.min(size.height() * 0.42, size.width() * 0.24);
            assertThat(page.code(0, 0, side + 2.2, side + 2.2)).isEqualTo(TAGS.get(i));
            double module = side / 14;
            double[] ink = page.ink(0, 0, 1.5 + side, 1.5 + side);
            assertThat(ink[0]).isCloseTo(1.5 + module, within(0.1));
            assertThat(ink[1]).isCloseTo(1.5 + module, within(0.1));
            assertThat(ink[2]).isCloseTo(1.5 + side - module, within(0.1));
        }
    }
}
