package bagclock.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import bagclock.Site;
import bagclock.platform.Engine;
import bagclock.platform.Settings;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

class ErrorPageIT {

    @Test
    void aWrongAddressIsExplained() {
        Settings settings =
                new Settings("localhost", 0, Path.of("target"), Engine.H2.freshUrl(), ZoneId.of("UTC"), false);
        try (Site site = Site.start(settings, Clock.systemUTC());
                Browser browser = Browser.start()) {
            Page page = browser.browser().newPage();
            page.navigate("http://localhost:" + site.port() + "/no-such-page");

            assertThat(page.getByRole(AriaRole.HEADING, new Page.GetByRoleOptions().setLevel(1)))
                    .hasText("There is nothing here");
            Accessibility.check(page);
        }
    }
}
