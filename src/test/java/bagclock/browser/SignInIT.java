package bagclock.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import bagclock.Site;
import bagclock.platform.Engine;
import bagclock.platform.Settings;
import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Keyboard;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.GetByRoleOptions;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class SignInIT {
    private static final String PASSWORD = "tide gauge and teapot";

    private static Site site;
    private static Browser browser;

    private final List<String> complaints = new ArrayList<>();
    private Page page;

    @BeforeAll
    static void start() {
        Settings settings =
                new Settings("localhost", 0, Path.of("target"), Engine.H2.freshUrl(), ZoneId.of("UTC"), true);
        site = Site.start(settings, Clock.systemUTC());
        browser = Browser.start();
    }

    @AfterAll
    static void stop() {
        browser.close();
        site.close();
    }

    @BeforeEach
    void openPage() {
        open(new NewContextOptions());
    }

    @AfterEach
    void closePage() {
        page.context().close();
        org.assertj.core.api.Assertions.assertThat(complaints).isEmpty();
    }

    @Test
    void thePagesFitAndAreAccessible() {
        for (String path : List.of("/sign-in", "/people", "/people/new", "/people/demo-clerk")) {
            if (path.equals("/people")) {
                enterAs("Administrator");
            }
            page.navigate(address(path));
            Accessibility.checkOnScreens(page, 360, 1280, 3840);
        }
    }

    @Test
    void anAdministratorAddsAPersonWithTheKeyboardAlone() {
        enterAs("Administrator");
        page.navigate(address("/people/new"));
        Keyboard keyboard = page.keyboard();
        page.getByLabel("Name on pages").focus();
        fingers("Bench three");
        keyboard.press("Tab");
        fingers("bench.three");
        keyboard.press("Tab");
        keyboard.press("Tab");
        keyboard.press("Space");
        page.getByLabel("Password").focus();
        fingers("too short");
        keyboard.press("Enter");

        assertThat(page.getByText("This password is too short")).isVisible();
        assertThat(page.getByLabel("Password")).isFocused();
        assertThat(page.getByLabel("Rework technician")).isChecked();
        fingers(PASSWORD);
        keyboard.press("Enter");

        assertThat(page.getByRole(AriaRole.STATUS)).hasText("The person was added.");
        Accessibility.check(page);
    }

    @Test
    void aScanIsHeardWhereverTheFocusIs() {
        enterAs("Administrator");
        page.navigate(address("/people"));
        scan("R-1042");

        page.waitForURL(address("/scan?code=R-1042"));
        complaints.clear();
    }

    @Test
    void aScanIntoAHalfFilledFormLosesNothing() {
        enterAs("Administrator");
        page.navigate(address("/people/new"));
        page.getByLabel("Name on pages").fill("Bench four");
        page.getByLabel("Sign-in name").fill("bench");
        page.getByLabel("Sign-in name").focus();
        scan("R-1042");

        assertThat(page.getByLabel("Sign-in name")).hasValue("bench");
        assertThat(page.getByLabel("Sign-in name")).isFocused();
        assertThat(page.getByLabel("Scan or type a tag")).hasValue("R-1042");
        assertThat(page.getByRole(AriaRole.ALERT)).containsText("Your scan waits");
    }

    @Test
    void whatFingersTypeIsNoScan() {
        enterAs("Administrator");
        page.navigate(address("/people/new"));
        page.getByLabel("Name on pages").focus();
        fingers("R-1042");

        assertThat(page.getByLabel("Name on pages")).hasValue("R-1042");
        assertThat(page.getByLabel("Scan or type a tag")).hasValue("");
    }

    @Test
    void aBadgeScanLeadsToThePin() {
        enterAs("Administrator");
        page.navigate(address("/people/demo-clerk"));
        scan("HQ-0042");

        assertThat(page.getByLabel("Badge code")).hasValue("HQ-0042");
        assertThat(page.getByLabel("PIN", new Page.GetByLabelOptions().setExact(true)))
                .isFocused();
    }

    @Test
    void aChosenLookStaysAndShortcutsCanBeSwitchedOff() {
        enterAs("Administrator");
        page.navigate(address("/people"));
        page.locator("summary")
                .filter(new Locator.FilterOptions().setHasText("Administrator"))
                .click();
        page.getByLabel("Dark").check();
        page.getByLabel("Keyboard shortcuts").uncheck();
        page.navigate(address("/people"));

        assertThat(page.locator("html")).hasAttribute("data-theme", "dark");
        page.keyboard().press("Alt+Shift+KeyF");
        assertThat(page.getByLabel("Scan or type a tag")).not().isFocused();
        page.evaluate("localStorage.clear()");
        page.keyboard().press("Alt+Shift+KeyF");
        assertThat(page.getByLabel("Scan or type a tag")).isFocused();
    }

    @Test
    void theFormsWorkWithoutScript() {
        page.context().close();
        open(new NewContextOptions().setJavaScriptEnabled(false));
        enterAs("Administrator");
        page.navigate(address("/people/demo-planner"));
        page.getByLabel("Name on pages").fill("Ovens");
        page.getByRole(AriaRole.BUTTON, new GetByRoleOptions().setName("Save")).click();

        assertThat(page.getByRole(AriaRole.STATUS)).hasText("Name and roles were saved.");
    }

    private void open(NewContextOptions options) {
        BrowserContext context = browser.browser().newContext(options);
        page = context.newPage();
        page.onConsoleMessage(message -> {
            if (message.type().equals("error") && !message.text().contains("422")) {
                complaints.add(message.text());
            }
        });
        page.onPageError(complaints::add);
    }

    private void enterAs(String role) {
        page.navigate(address("/sign-in"));
        page.getByRole(AriaRole.BUTTON, new GetByRoleOptions().setName(role)).click();
        page.waitForURL(url -> !url.endsWith("/sign-in"));
        complaints.clear();
    }

    /** As a hand scanner types: no pause between the keys, Enter at the end. */
    private void scan(String text) {
        page.keyboard().type(text);
        page.keyboard().press("Enter");
    }

    /** Slower than any scanner. */
    private void fingers(String text) {
        page.keyboard().type(text, new Keyboard.TypeOptions().setDelay(60));
    }

    private static String address(String path) {
        return "http://localhost:" + site.port() + path;
    }
}
