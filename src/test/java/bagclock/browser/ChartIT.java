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

    private static FilePayload chart(Instant from, int minutes) {
        StringBuilder text = new StringBuilder("Time,Tray top °C,Tray back °C\n");
        Instant at = from;
        for (int i = 0; i < minutes; i++) {
            text.append(at).append(i < 20 ? ",80,60\n" : i == 200 ? ",127,119\n" : ",127,126\n");
            at = at.plus(Duration.ofMinutes(1));
        }
        return new FilePayload("oven.csv", "text/csv", text.toString().getBytes(StandardCharsets.UTF_8));
    }

    private void drop(FilePayload chart) {
        page.getByLabel("Chart of the oven (CSV)").setInputFiles(chart);
        button("Upload and look").click();
    }

    private Locator lastRunOf(String tag) {
        return page.getByRole(AriaRole.ROW)
                .filter(new Locator.FilterOptions().setHasText(tag))
                .first();
    }

    @Test
    void aLateChartCorrectsARunAndTheNextLoadIsScannedInOffPlanAndProvenByItsChart() {
        signIn(new NewContextOptions(), "Oven planner");
        lateChart();
        FilePayload file = chart(clock.instant(), 600);
        loadedOffPlan();

        clock.passes(Duration.ofMinutes(605));
        page.getByRole(AriaRole.LINK, new GetByRoleOptions().setName("Bench oven: temperature and unloading"))
                .click();
        assertThat(page.getByRole(AriaRole.MAIN)).containsText("Without proof");
        drop(file);
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

    /** The demonstration's run without proof: three hours were told. */
    private void lateChart() {
        open("/ovens/runs");
        assertThat(lastRunOf("T-436")).containsText("Without proof");
        lastRunOf("T-436").getByText("The run").click();
        drop(chart(clock.instant().minus(Duration.ofHours(36)), 230));
        assertThat(page.locator("#proof .banner")).containsText("Short");
        Accessibility.check(page);
        button("Keep as proof of this load").click();
        assertThat(page.locator("#proof")).containsText("Below the band, 119 °C");
        Accessibility.check(page);
        open("/ovens/runs");
        assertThat(lastRunOf("T-436")).containsText("3 h 27 min");
    }

    private void loadedOffPlan() {
        open("/ovens/load?oven=OVEN-3&setPoint=125");
        page.getByLabel("Scan what goes in").fill("T-436");
        page.keyboard().press("Enter");
        assertThat(page.getByRole(AriaRole.STATUS)).containsText("T-436 may go in");
        Accessibility.check(page);
        button("It is in the oven").click();
        assertThat(page.getByRole(AriaRole.ALERT)).containsText("Nothing was loaded");
        Accessibility.check(page);
        page.getByLabel("Load it all the same").check();
        button("It is in the oven").click();
        assertThat(page.getByRole(AriaRole.STATUS)).containsText("Loaded");
    }
}
