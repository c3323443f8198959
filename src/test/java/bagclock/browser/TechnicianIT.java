package bagclock.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.GetByRoleOptions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The technician's journeys: from a scan over a clear answer to the recorded heat; and a whole rework job. */
class TechnicianIT extends Journey {
    private static final int PHONE = 390;
    private static final int DESK = 1280;
    private static final int WALL = 2560;

    private void press(String name) {
        page.getByRole(AriaRole.BUTTON, new GetByRoleOptions().setName(name).setExact(true))
                .click();
    }

    private void fits(int width) {
        int inner = ((Number) page.evaluate("document.documentElement.scrollWidth")).intValue();
        org.assertj.core.api.Assertions.assertThat(inner).as(page.url()).isLessThanOrEqualTo(width);
    }

    @ParameterizedTest
    @CsvSource({"390, LIGHT, T-410", "1280, DARK, R-409"})
    void aScanLeadsOverClearToARecordedHeat(int width, ColorScheme scheme, String tag) {
        signIn(new NewContextOptions().setViewportSize(width, 844).setColorScheme(scheme), "Rework technician");
        open("/bench");
        page.locator("main #code").fill(tag);
        page.locator("main input[value=placement]").check();
        press("May it be heated?");
        assertThat(page.locator(".answer .call")).hasText("Clear");
        Accessibility.check(page);
        fits(width);

        press("Record this heat");
        assertThat(page.getByRole(AriaRole.STATUS)).containsText("Heat recorded");
        Accessibility.check(page);
        fits(width);
    }

    @Test
    void aWholeJobGoesFromTheFirstLookToTheLast() {
        signIn(new NewContextOptions().setViewportSize(390, 844), "Rework technician");
        open("/boards/HQB-0117");
        page.getByLabel("Location").first().fill("Q3");
        page.getByLabel("Why").fill("It runs hot.");
        page.locator("input[value=scrap]").check();
        press("Start the job");
        assertThat(page.locator(".steps [aria-current=step]")).containsText("Check");
        press("Checked");
        assertThat(page.locator(".answer")).hasCount(1);
        page.locator("button")
                .filter(new com.microsoft.playwright.Locator.FilterOptions()
                        .setHasText(java.util.regex.Pattern.compile("go on|Go on")))
                .click();
        assertThat(page.locator(".steps [aria-current=step]")).containsText("Remove");
        Accessibility.check(page);
        press("Record this heat");
        press("The site is clean");
        page.getByLabel("Tag of the new part").fill("P-464");
        clock.passes(Duration.ofMinutes(1));
        assertThat(page.locator(".steps [aria-current=step]")).containsText("Place");
        press("Nothing is placed");
        press("Inspected, close the job");
        assertThat(page.locator("main")).containsText("Done and inspected.");
        page.getByRole(AriaRole.LINK, new GetByRoleOptions().setName("Record").setExact(true))
                .click();
        assertThat(page.locator("h1")).hasText("Record of a heat on HQB-0117");
        Accessibility.check(page);
        fits(390);
    }

    /** Outside a job: into the oven, out again, and the way back from a slip. */
    @Test
    void aBoardIsBakedAndASlipTakenBack() {
        signIn(new NewContextOptions().setViewportSize(390, 844), "Rework technician");
        open("/boards/HQB-0204");
        page.getByRole(AriaRole.LINK, new GetByRoleOptions().setName("Bake the board"))
                .click();
        assertThat(page.locator("main")).containsText("What it bears in a bake");
        page.getByLabel("Oven", new com.microsoft.playwright.Page.GetByLabelOptions().setExact(true))
                .selectOption("OVEN-3");
        page.locator("#setPoint").fill("90");
        press("The board is in the oven");
        assertThat(page.locator("#setPoint-error")).containsText("not known to bear this");
        Accessibility.check(page);
        fits(390);
        page.getByLabel("all the same").check();
        press("The board is in the oven");
        assertThat(page.getByRole(AriaRole.STATUS)).containsText("The board is in the oven");
        press("It did not happen");
        assertThat(page.getByRole(AriaRole.STATUS)).containsText("Taken back");
        assertThat(page.locator("main")).containsText("at 90 °C. Taken back, does not count.");
        fits(390);
    }

    /** Every kind of page of boards, part types, tables and releases, as an engineer has it: on a phone, a desk, a wall. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "/boards /boards/new /boards/rules /boards/releases /boards/HQB-0117 /boards/HQB-0204",
                "/boards/HQB-0204/jobs/1 /boards/HQB-0204/heat?profile=none /boards/HQB-0204/bake /boards/HQB-0117/bake"
                        + " /boards/HQB-0204/heats/3 /items/R-409/lot /items/R-409/acts/elsewhere",
                "/boards/types/new /boards/types/HQB-R2 /boards/types/HQB-S1 /boards/types/HQB-R2/change"
                        + " /boards/types/HQB-R2/parts /boards/types/HQB-S1/parts /boards/types/HQB-R2/profiles/new",
                "/bench?code=T-418 /parts /parts/type?number=SNR-1002 /parts/new /tables /tables/derated-floor-life"
                        + " /tables/user-bake/compare?grid=0"
            })
    void pagesFitAndHaveNoFaults(String paths) {
        signIn(new NewContextOptions().setViewportSize(PHONE, 844), "Process engineer");
        for (String path : paths.split(" ")) {
            at(PHONE, ColorScheme.LIGHT);
            open(path);
            Accessibility.check(page);
            fits(PHONE);
            valuesAreReadable();
            at(DESK, ColorScheme.DARK);
            Accessibility.check(page);
            fits(DESK);
            valuesAreReadable();
            at(WALL, ColorScheme.DARK);
            fits(WALL);
        }
    }

    private void at(int width, ColorScheme scheme) {
        page.setViewportSize(width, 900);
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(scheme));
    }

    /** A value beside a long name is not squeezed to a letter a line. */
    private void valuesAreReadable() {
        Object narrow = page.evaluate(
                "[...document.querySelectorAll('.facts dd')].filter(value => value.clientWidth < 80).length");
        org.assertj.core.api.Assertions.assertThat(((Number) narrow).intValue())
                .as(page.url())
                .isZero();
    }
}
