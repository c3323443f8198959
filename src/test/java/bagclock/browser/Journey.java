package bagclock.browser;

import bagclock.HandClock;
import bagclock.Site;
import bagclock.platform.Engine;
import bagclock.platform.Settings;
import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.GetByRoleOptions;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
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
        site = Site.demo(
                new Settings("localhost", 0, Path.of("target"), Engine.H2.freshUrl(), ZoneId.of("UTC"), true), clock);
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
