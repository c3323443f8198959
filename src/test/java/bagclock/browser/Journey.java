package bagclock.browser;

import bagclock.DemoShop;
import bagclock.HandClock;
import bagclock.Site;
import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.GetByRoleOptions;
import com.microsoft.playwright.options.AriaRole;
import java.time.Instant;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;

/** One person in the demonstration's shop, in a browser; one shop and one browser for a class of journeys. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class Journey {
    final HandClock clock = new HandClock(Instant.parse("2026-03-12T14:20:00Z"));

    Site site;
    Browser browser;
    Page page;

    @BeforeAll
    void start() {
        site = DemoShop.open(clock);
        browser = Browser.start();
    }

    @AfterAll
    void stop() {
        browser.close();
        site.close();
    }

    @AfterEach
    void closePage() {
        page.context().close();
    }

    /** Opens a browser's window and signs in with one click. */
    final void signIn(NewContextOptions options, String role) {
        page = browser.browser().newContext(options).newPage();
        open("/sign-in");
        page.getByRole(AriaRole.BUTTON, new GetByRoleOptions().setName(role)).click();
    }

    final void open(String path) {
        page.navigate("http://localhost:" + site.port() + path);
    }
}
