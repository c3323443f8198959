package bagclock.labels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bagclock.DemoShop;
import bagclock.HandClock;
import bagclock.Site;
import bagclock.browser.Browser;
import bagclock.register.LabelSize;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.PdfOptions;
import java.time.Instant;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;

/** Labels printed from the page itself, as the browser's own print dialogue does it. */
class LabelPrintIT {
    private static final HandClock CLOCK = new HandClock(Instant.parse("2026-03-12T14:20:00Z"));
    private static final List<String> TAGS = List.of("R-401", "T-411");

    @Test
    void thePageComesOutInTheLabelsSizeOneLabelToAPage() throws Exception {
        try (Site site = DemoShop.open(CLOCK);
                Browser browser = Browser.start()) {
            Page page = browser.browser().newPage();
            String root = "http://localhost:" + site.port();
            page.navigate(root + "/sign-in");
            page.locator("button[value=CLERK]").click();
            for (LabelSize size : List.of(LabelSize.W51_H25, LabelSize.W70_H36, LabelSize.W102_H76)) {
                page.navigate(root + "/labels?size=" + size.name() + "&tag=" + String.join("&tag=", TAGS));
                check(page.pdf(new PdfOptions().setPreferCSSPageSize(true)), size);
            }
        }
    }

    /** Even printed by the browser, whose points are none of the printer's dots, the Code 128 is read. */
    @Test
    void theCode128ComesOutOfThePageToo() {
        try (Site site = DemoShop.open(CLOCK);
                Browser browser = Browser.start()) {
            Page page = browser.browser().newPage();
            String root = "http://localhost:" + site.port();
            page.navigate(root + "/sign-in");
            page.locator("button[value=ENGINEER]").click();
            page.navigate(root + "/labels/customs");
            page.locator("label:has(input[name=code][value=LINEAR_300])").click();
            page.locator("main button[type=submit]").click();
            for (LabelSize size : LabelSize.values()) {
                page.navigate(root + "/labels?size=" + size.name() + "&tag=T-418");
                PrintedPage print = PrintedPage.of(page.pdf(new PdfOptions().setPreferCSSPageSize(true)), 0);
                double right = 1.5 + Math.min(size.height() * 0.42, size.width() * 0.24);
                assertThat(print.linear(right, 1, size.width() - right, 5)).isEqualTo("T-418");
            }
        }
    }

    /** A browser rounds the sheet to whole points or pixels; the label on it stays exact. */
    private static void check(byte[] pdf, LabelSize size) throws Exception {
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
