package bagclock.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page.GetByRoleOptions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;

/** The planner's journey with a scanner and a chart: tags into the oven, the chart onto the load, the verdict. */
class ChartIT extends Journey {
    private Locator button(String name) {
        return page.getByRole(AriaRole.BUTTON, new GetByRoleOptions().setName(name));
    }

    private FilePayload chart(int minutes) {
        StringBuilder text = new StringBuilder("Time,Tray top °C,Tray back °C\n");
        Instant at = clock.instant();
        for (int i = 0; i < minutes; i++) {
            text.append(at).append(i < 20 ? ",80,60\n" : i == 200 ? ",127,119\n" : ",127,126\n");
            at = at.plus(Duration.ofMinutes(1));
        }
        return new FilePayload("oven.csv", "text/csv", text.toString().getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void aLoadIsScannedInAndProvenByItsChart() {
        signIn(new NewContextOptions(), "Oven planner");
        open("/ovens/load?oven=OVEN-3&setPoint=125");
        page.getByLabel("Scan what goes in").fill("T-436");
        page.keyboard().press("Enter");
        assertThat(page.getByRole(AriaRole.STATUS)).containsText("T-436 may go in");
        Accessibility.check(page);
        FilePayload file = chart(600);
        button("It is in the oven").click();

        clock.passes(Duration.ofMinutes(605));
        page.getByRole(AriaRole.LINK, new GetByRoleOptions().setName("Bench oven: temperature and unloading"))
                .click();
        assertThat(page.getByRole(AriaRole.MAIN)).containsText("Without proof");
        page.getByLabel("Chart of the oven (CSV)").setInputFiles(file);
        button("Upload and look").click();
        assertThat(page.locator("#proof .banner")).containsText("Proven");
        button("Keep as proof of this load").click();
        assertThat(page.locator("#proof")).containsText("Below the band, 119 °C");
        assertThat(page.locator("#proof figure svg").first()).isVisible();
        Accessibility.check(page);

        button("It is out").click();
        assertThat(page.getByRole(AriaRole.STATUS)).containsText("Unloaded");
        open("/ovens/runs");
        assertThat(page.getByRole(AriaRole.ROW).nth(1)).containsText("Proven");
        Accessibility.check(page);
    }
}
