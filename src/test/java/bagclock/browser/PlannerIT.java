package bagclock.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page.GetByRoleOptions;
import com.microsoft.playwright.options.AriaRole;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The planner's journey: from the queue into an oven and out again; and the climate of the shop. */
class PlannerIT extends Journey {
    private Locator link(String name) {
        return page.getByRole(AriaRole.LINK, new GetByRoleOptions().setName(name));
    }

    private Locator button(String name) {
        return page.getByRole(AriaRole.BUTTON, new GetByRoleOptions().setName(name));
    }

    @Test
    void whatWaitsIsLoadedBakedAndTakenOut() {
        signIn(new NewContextOptions(), "Oven planner");
        open("/ovens");
        page.getByLabel("Choose T-436").check();
        button("Load the chosen").click();
        page.getByLabel("Bench oven").check();
        page.getByLabel("Set-point, °C").fill("125");
        button("It is in the oven").click();
        assertThat(page.getByText("Another time: T-436 is planned in Bench oven"))
                .isVisible();
        page.getByLabel("Load it all the same").check();
        button("It is in the oven").click();
        assertThat(page.getByRole(AriaRole.STATUS)).containsText("Loaded");

        clock.passes(Duration.ofMinutes(20));
        link("Bench oven: temperature and unloading").click();
        page.getByLabel("Came to temperature at").fill("2026-03-12T14:40");
        button("Note it").click();
        clock.passes(Duration.ofHours(2));
        link("Bench oven: temperature and unloading").click();
        button("It is out").click();
        assertThat(page.getByRole(AriaRole.ALERT).first()).containsText("Too early");
        Accessibility.check(page);

        clock.passes(Duration.ofHours(6));
        open("/ovens");
        assertThat(page.getByRole(AriaRole.ARTICLE).first()).containsText("Ready since Thu 21:40 (UTC)");
        link("Bench oven: temperature and unloading").click();
        button("It is out").click();
        assertThat(page.getByRole(AriaRole.STATUS)).containsText("Unloaded");
        assertThat(page.locator("#ovens-now")).not().containsText("T-436");
    }

    @Test
    void thePagesFitAndAreAccessible() {
        signIn(new NewContextOptions(), "Process engineer");
        List<String> paths = List.of(
                "/ovens",
                "/ovens/load",
                "/ovens/new",
                "/ovens/needs/T-418",
                "/climate",
                "/climate/STORES",
                "/climate/DRY-10",
                "/climate/import",
                "/climate/new?kind=cabinet",
                "/climate/LINE/change");
        for (String path : paths) {
            open(path);
            Accessibility.checkOnScreens(page, 360, 1280, 3840);
        }
    }
}
