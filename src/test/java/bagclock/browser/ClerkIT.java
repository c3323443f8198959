package bagclock.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import bagclock.Visitor;
import bagclock.platform.Role;
import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page.GetByRoleOptions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.time.Duration;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The clerk's journey, with a hand scanner and without a mouse where the work has none. */
class ClerkIT extends Journey {
    private void signIn(NewContextOptions options) {
        signIn(options, "Stockroom clerk");
    }

    /** A burst of a hand scanner that ends with Enter, wherever the focus is. */
    private void scan(String code) {
        page.waitForLoadState();
        page.keyboard().type(code);
        page.keyboard().press("Enter");
    }

    private Locator link(String name) {
        return page.getByRole(
                AriaRole.LINK, new GetByRoleOptions().setName(name).setExact(true));
    }

    private Locator button(String name) {
        return page.getByRole(AriaRole.BUTTON, new GetByRoleOptions().setName(name));
    }

    private void choose(String group, String label) {
        page.getByRole(AriaRole.GROUP, new GetByRoleOptions().setName(group))
                .getByLabel(label)
                .check();
    }

    private Locator heading(String name) {
        return page.getByRole(AriaRole.HEADING, new GetByRoleOptions().setName(name));
    }

    @ParameterizedTest
    @CsvSource({"390, DARK", "1280, LIGHT"})
    void aReelIsReceivedOpenedMovedTakenBackSplitAndLabelled(int width, ColorScheme scheme) {
        String reel = "C" + width;
        String child = "K" + width;
        signIn(new NewContextOptions().setViewportSize(width, 800).setColorScheme(scheme));
        receive(reel);
        openBag(reel);
        move(reel);
        split(reel, child);

        link("Label").click();
        assertThat(page.locator("svg.print")).hasAttribute("aria-label", Pattern.compile("^" + child));
        assertThat(button("Print")).isVisible();
        assertThat(link("As PDF")).isVisible();
        Accessibility.check(page);
    }

    private void receive(String reel) {
        link("Receive").click();
        page.getByLabel("Part type").selectOption("SNR-1003");
        page.getByLabel("How many parts").fill("40");
        page.locator("h1").click();
        scan(reel);
        assertThat(page.getByLabel("Its tag")).hasValue(reel);
        choose("How it came", "In a sealed dry pack");
        page.getByLabel("Seal date and time").fill("2026-02-01T00:00");
        Accessibility.check(page);
        button("Record it").click();
        assertThat(page.locator(".banner")).containsText("Recorded.");
        assertThat(heading("Hold")).isVisible();
        clock.passes(Duration.ofMinutes(1));
    }

    private void openBag(String reel) {
        open("/stock");
        scan(reel);
        assertThat(heading("Now scan a place")).isVisible();
        scan("DOOPEN");
        assertThat(heading("Open the bag")).isVisible();
        for (String spot : List.of("5", "10", "60")) {
            choose("Spot " + spot + " % RH", "Dry");
        }
        choose("The bag", "Sound");
        choose("Where it stands now", "Placement line");
        Accessibility.check(page);
        button("Record it").click();
        assertThat(heading("Clear")).isVisible();
        assertThat(page.locator(".sentence").first()).containsText("Heat must end by");
        clock.passes(Duration.ofMinutes(1));
    }

    private void move(String reel) {
        open("/stock");
        scan(reel);
        assertThat(heading("Now scan a place")).isVisible();
        Accessibility.check(page);
        scan("DRY-5");
        assertThat(page.getByRole(AriaRole.STATUS)).containsText(reel + " is now at Dry cabinet by the line.");
        clock.passes(Duration.ofMinutes(1));
        button("Take the last one back").click();
        assertThat(page.getByRole(AriaRole.STATUS)).containsText("Taken back");
        scan("NOTHING-4");
        assertThat(page.getByRole(AriaRole.ALERT).first()).containsText("NOTHING-4");
    }

    private void split(String reel, String child) {
        open("/stock");
        scan(reel);
        assertThat(heading("Now scan a place")).isVisible();
        scan("DOSPLIT");
        page.getByLabel("How many are taken out").fill("10");
        page.locator("h1").click();
        scan(child);
        assertThat(page.getByLabel("Tag of the new item")).hasValue(child);
        button("Record it").click();
        assertThat(heading(child)).isVisible();
        assertThat(page.locator("dl")).containsText("10 parts");
        assertThat(page.locator("dl")).containsText("LINE");
    }

    @Test
    void aDeliveryIsScannedBagByBagAndItsLabelsPrinted() {
        signIn(new NewContextOptions());
        link("Receive a delivery").click();
        page.getByLabel("Part type").selectOption("SNR-1003");
        page.getByLabel("Parts in each bag").fill("25");
        page.getByLabel("Seal date and time").fill("2026-02-01T00:00");
        page.locator("h1").click();
        for (int bag = 1; bag <= 4; bag++) {
            scan("BAG-00" + bag);
            assertThat(page.getByRole(AriaRole.STATUS))
                    .containsText("BAG-00" + bag + " is received, " + bag + " in all");
        }
        assertThat(page.getByLabel("Parts in each bag")).hasValue("25");
        link("Print their labels").click();
        assertThat(page.locator("svg.print")).hasCount(4);
    }

    /** No browser here has a reader of its own, so one is put in; else, and without a camera, the page says what to do. */
    @Test
    void aCodeIsReadWithTheCameraWhereTheBrowserCan() {
        signIn(new NewContextOptions());
        open("/stock");
        assertThat(page.getByText("This browser can't read codes with the camera"))
                .isVisible();
        assertThat(button("Read with the camera")).isHidden();
        page.addInitScript("""
                window.BarcodeDetector = class { async detect() { return [{ rawValue: "R-414" }]; } };
                HTMLMediaElement.prototype.play = async () => {};
                navigator.mediaDevices.getUserMedia = async () => new MediaStream();
                """);
        open("/stock");
        button("Read with the camera").click();
        assertThat(page.locator("main input[name=held]").first()).hasValue("R-414");
        page.evaluate("() => { navigator.mediaDevices.getUserMedia = () => Promise.reject(new Error('busy')); }");
        button("Read with the camera").click();
        assertThat(page.getByRole(AriaRole.ALERT)).containsText("The camera can't be used");
    }

    @Test
    void theWallFollowsWhatHappensWithoutASignIn() {
        page = browser.browser().newContext().newPage();
        open("/wall");
        page.waitForLoadState();
        Locator asOf = page.locator("#wall-now time");
        String before = asOf.textContent();
        clock.passes(Duration.ofMinutes(7));
        Visitor clerk = Visitor.ofDemo(site.port(), Role.CLERK);
        clerk.submit("/items/R-414/acts/move", "/items/R-414/acts/move", "place", "LINE", "at", "2026-03-12T14:00");
        assertThat(asOf).not().hasText(before);
        Accessibility.check(page);
    }

    @Test
    void thePagesFitAndAreAccessible() {
        signIn(new NewContextOptions());
        List<String> paths = List.of(
                "/stock",
                "/stock/receive",
                "/stock/delivery",
                "/stock/trolley?from=BENCH-1",
                "/stock/count",
                "/stock/count?place=STORES",
                "/stock/counts",
                "/items/R-402/acts/open",
                "/items",
                "/items/R-409",
                "/items/R-409/dry-pack",
                "/items/T-418/dry-pack",
                "/items/R-409/label",
                "/items/R-405/bag-label",
                "/places/codes",
                "/wall");
        for (String path : paths) {
            open(path);
            Accessibility.checkOnScreens(page, 390, 1280, 2560);
        }
    }
}
