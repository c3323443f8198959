package bagclock.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import bagclock.DemoShop;
import bagclock.HandClock;
import bagclock.Site;
import bagclock.scan.KeyboardLayout;
import bagclock.scan.TestCode;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.datamatrix.DataMatrixReader;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.time.Instant;
import java.util.Map;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A workstation learns what its scanner means, and puts right what is scanned, not what is typed. */
class ScannerCheckIT {
    private static final Map<Character, String> CHORDS =
            Map.of('\u001d', "Control+BracketRight", '\u001e', "Control+Digit6", '\u0004', "Control+KeyD");

    private Site site;
    private Browser browser;
    private Page page;

    @BeforeEach
    void start() {
        site = DemoShop.open(new HandClock(Instant.parse("2026-03-12T14:20:00Z")));
        browser = Browser.start();
        BrowserContext context = browser.browser().newContext();
        page = context.newPage();
        open("/sign-in");
        page.locator("button[value=CLERK]").click();
        page.waitForURL("**/stock");
    }

    @AfterEach
    void stop() {
        browser.close();
        site.close();
    }

    private void open(String path) {
        page.navigate("http://localhost:" + site.port() + path);
    }

    /** As a scanner set to US keys types into a layout. */
    private void scan(KeyboardLayout layout, String code) {
        Scanner scanner = new Scanner(page);
        for (int i = 0; i < code.length(); i++) {
            char meant = code.charAt(i);
            if (CHORDS.containsKey(meant)) {
                scanner.press(CHORDS.get(meant));
            } else {
                layout.silent(meant)
                        .ifPresentOrElse(
                                key -> scanner.accent(key.code(), key.isShifted()),
                                () -> scanner.type(layout.type(String.valueOf(meant))));
            }
        }
        scanner.scan("");
    }

    private void learn(KeyboardLayout layout) {
        open("/stock/scanner");
        scan(layout, TestCode.text());
        page.locator("form[action='/stock/scanner/keep'] button").click();
        assertThat(page.locator("#kept-title")).isVisible();
    }

    @Test
    void theTestCodeIsReadOffTheScreen() throws IOException, ReaderException {
        open("/stock/scanner");
        byte[] picture = page.locator("img.test-code").screenshot();
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(picture));
        int[] dots = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        RGBLuminanceSource light = new RGBLuminanceSource(image.getWidth(), image.getHeight(), dots);
        assertThat(new DataMatrixReader()
                        .decode(new BinaryBitmap(new HybridBinarizer(light)))
                        .getText())
                .isEqualTo(TestCode.text());
    }

    @ParameterizedTest
    @ValueSource(strings = {"de(basic)", "fr(basic)", "us(intl)"})
    void whatIsScannedIsPutRightWhereverItIsScanned(String name) {
        KeyboardLayout layout = KeyboardLayout.named(name);
        learn(layout);
        open("/stock");
        scan(layout, "R-407");
        assertThat(page.locator("main")).containsText("R-407");
        assertThat(page.locator("input[name=held]").first()).hasValue("R-407");
        scan(layout, "DRY-5");
        assertThat(page.locator("main .banner, main [data-sound=accepted]").first())
                .containsText("R-407");

        scan(layout, "[)>\u001e06\u001d1PHQ/48-D2{2}\u001dQ25\u001d1TZY'_1\u001d13E2a\u001e\u0004");
        page.waitForURL("**/stock/receive?scan=**");
        assertThat(page.locator("input[name=labelPart]")).hasValue("HQ/48-D2{2}");
        assertThat(page.locator("input[name=lot]")).hasValue("ZY'_1");
        assertThat(page.locator("main")).containsText("This workstation put right what its scanner types.");
    }

    @Test
    void whatIsTypedStaysAsItIsAndTheMapIsForgottenAgain() {
        KeyboardLayout german = KeyboardLayout.named("de(basic)");
        learn(german);
        open("/stock");
        page.locator("main input[name=code]").fill("R-407");
        page.locator("main form[data-scan] button[type=submit]").first().click();
        assertThat(page.locator("input[name=held]").first()).hasValue("R-407");

        open("/stock/scanner");
        page.locator("form[action='/stock/scanner/forget'] button").click();
        assertThat(page.locator("#kept-title")).hasCount(0);
        open("/stock");
        scan(german, "R-407");
        assertThat(page.locator("main")).containsText("Rß407");
    }
}
