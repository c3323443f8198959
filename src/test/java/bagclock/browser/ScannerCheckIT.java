package bagclock.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import bagclock.scan.KeyboardLayout;
import bagclock.scan.TestCode;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.datamatrix.DataMatrixReader;
import com.microsoft.playwright.Browser.NewContextOptions;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.time.Duration;
import java.util.Map;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A workstation learns what its scanner means, and puts right what is scanned, not what is typed. */
class ScannerCheckIT extends Journey {
    private static final Map<Character, String> CHORDS =
            Map.of('\u001d', "Control+BracketRight", '\u001e', "Control+Digit6", '\u0004', "Control+KeyD");

    /** Each test at a workstation of its own. */
    @BeforeEach
    void signIn() {
        signIn(new NewContextOptions(), "Stockroom clerk");
        page.waitForURL("**/stock");
        clock.passes(Duration.ofMinutes(1));
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
    @CsvSource({"de(basic), DRY-5", "fr(basic), BENCH-1", "us(intl), LINE"})
    void whatIsScannedIsPutRightWhereverItIsScanned(String name, String place) {
        KeyboardLayout layout = KeyboardLayout.named(name);
        learn(layout);
        open("/stock");
        scan(layout, "R-407");
        assertThat(page.locator("main")).containsText("R-407");
        assertThat(page.locator("input[name=held]").first()).hasValue("R-407");
        scan(layout, place);
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
