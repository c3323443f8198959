package bagclock.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page.GetByRoleOptions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;

/** The clerk's journey with a logger that writes temperature and humidity into a file each, on a phone. */
class HalvesIT extends Journey {
    private static final FilePayload TEMPERATURES = file(
            "cabinet-t.csv", "Time,Temp °C\n2026-03-12 12:07Z,22.1\n2026-03-12 12:12Z,23.9\n2026-03-12 12:17Z,22.2\n");
    private static final FilePayload HUMIDITIES = file(
            "cabinet-h.csv", "Time,RH %\n2026-03-12 12:07Z,41.1\n2026-03-12 12:12Z,51.7\n2026-03-12 13:57Z,41.2\n");

    private static FilePayload file(String name, String text) {
        return new FilePayload(name, "text/csv", text.getBytes(StandardCharsets.UTF_8));
    }

    private Locator button(String name) {
        return page.getByRole(AriaRole.BUTTON, new GetByRoleOptions().setName(name));
    }

    private void upload(FilePayload... files) {
        open("/climate/files");
        page.getByLabel("Logger", new com.microsoft.playwright.Page.GetByLabelOptions().setExact(true))
                .fill("Line by the door");
        page.getByText("Placement line").last().click();
        page.getByLabel("File", new com.microsoft.playwright.Page.GetByLabelOptions().setExact(true))
                .setInputFiles(files);
        button("Upload and look").click();
    }

    private void isSound() {
        Accessibility.check(page);
        Object wider = page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth");
        Assertions.assertThat(wider).as("what sticks out to the right").isEqualTo(0);
    }

    @Test
    void oneHalfWaitsForTheOtherAndBothAreLookedAtTogether() {
        signIn(new NewContextOptions().setViewportSize(390, 844), "Stockroom clerk");
        upload(TEMPERATURES);
        assertThat(page.getByRole(AriaRole.MAIN)).containsText("This file holds temperatures only");
        isSound();

        page.getByLabel("Upload it").setInputFiles(HUMIDITIES);
        button("Look at both together").click();
        assertThat(page.getByRole(AriaRole.MAIN)).containsText("Readings with both values: 2");
        assertThat(page.getByRole(AriaRole.MAIN)).containsText("12:17 (UTC): a temperature without a humidity");
        isSound();

        button("Import these readings").click();
        assertThat(page.locator("#import-state")).containsText("kept 2");
        isSound();
        button("Take this file back").click();
        assertThat(page.getByRole(AriaRole.MAIN)).containsText("Readings with both values: 2");

        button("It is not this one").click();
        assertThat(page.getByText("cabinet-h.csv")).isVisible();
        isSound();
    }
}
