package bagclock.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import bagclock.DemoShop;
import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.GetByRoleOptions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.BoundingBox;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The planner's journey through a plan: draft, what if, move and pin, publish, and from the plan into an oven. */
class OvenPlanIT extends Journey {
    private static final String PLAN = "/ovens/plan";
    private static final Pattern DRAFT = Pattern.compile("/ovens/plan/drafts/");

    @BeforeAll
    void searchNothing() {
        DemoShop.searchNothing(site);
    }

    @BeforeEach
    void openThePlan() {
        signIn(new NewContextOptions().setViewportSize(1280, 900), "Oven planner");
        open(PLAN);
    }

    private Locator button(String name) {
        return page.getByRole(AriaRole.BUTTON, new GetByRoleOptions().setName(name));
    }

    private Locator panel(String title) {
        return page.locator("form.panel", new Page.LocatorOptions().setHas(page.getByText(title)));
    }

    private void publish() {
        button("Publish this plan").press("Enter");
    }

    private String lastTag() {
        return page.locator("form[id^=move-] input[name=moveTag]").last().inputValue();
    }

    private void isADraft() {
        assertThat(page).hasURL(DRAFT);
        Accessibility.check(page);
    }

    @Test
    void anotherTimeIsTriedAndTheOldPlanKept() {
        panel("Another time").getByLabel("Lot").selectOption("T-418");
        panel("Another time").getByLabel("Needed by").fill("2026-03-12T15:00");
        panel("Another time").getByRole(AriaRole.BUTTON).click();
        isADraft();
        assertThat(page.locator("main")).containsText("T-418 is needed by Thu 15:00");
        assertThat(page.locator("main")).containsText("Even with all ovens to itself");

        page.getByText("Keep the old plan").click();
        assertThat(page.locator("#lots-title ~ div tr:has-text('T-418')")).not().containsText("late by");
    }

    @Test
    void aClosedOvenAndARushLotShowBeforeAndAfter() {
        panel("Close an oven").getByLabel("Until").fill("2026-03-12T14:00");
        panel("Close an oven").getByRole(AriaRole.BUTTON).click();
        assertThat(page.getByText("Must be after its beginning.")).isVisible();
        Accessibility.check(page);
        panel("Close an oven").getByLabel("Until").fill("2026-03-13T20:00");
        panel("Close an oven").getByRole(AriaRole.BUTTON).click();
        isADraft();
        assertThat(page.locator("main")).containsText("is closed from");

        open(PLAN);
        panel("Add a rush lot").getByLabel("Name of the lot").fill("RUSH-7");
        panel("Add a rush lot").getByRole(AriaRole.BUTTON).click();
        isADraft();
        assertThat(page.locator("main")).containsText("RUSH-7 comes in a rush");
        assertThat(page.getByText("Before and after")).isVisible();
    }

    @Test
    void aRunIsMovedWithTheKeyboardThenUnpinned() {
        String tag = lastTag();
        page.locator("#run-" + tag + " summary").press("Enter");
        page.getByLabel("Start of the run with " + tag).fill("2026-03-30T08:00");
        button("Move the run with " + tag).focus();
        page.keyboard().press("Enter");
        isADraft();
        assertThat(page.locator("main")).containsText("The run with " + tag + " goes to");
        publish();
        assertThat(page.getByRole(AriaRole.STATUS)).containsText("Published");

        assertThat(page.locator("#run-" + tag)).containsText("pinned");
        button("Unpin the run with " + tag).press("Enter");
        isADraft();
        assertThat(page.locator("main")).containsText("pinned no more");
        publish();
        assertThat(button("Pin the run with " + tag)).isVisible();
    }

    @Test
    void aRunIsDrawnToAnotherTime() {
        open(PLAN + "?range=month");
        Locator run = page.locator(".lanes g[data-run] > rect").last();
        run.scrollIntoViewIfNeeded();
        BoundingBox box = run.boundingBox();
        double y = box.y + box.height / 2;
        page.mouse().move(box.x + 2, y);
        page.mouse().down();
        page.mouse().move(box.x + 60, y);
        page.mouse().up();
        isADraft();
        assertThat(page.locator("main")).containsText("The run with");
    }

    @Test
    void publishingShowsOnEveryScreen() {
        try (BrowserContext other = browser.browser().newContext()) {
            Page screen = other.newPage();
            screen.navigate("http://localhost:" + site.port() + "/sign-in");
            screen.getByRole(AriaRole.BUTTON, new GetByRoleOptions().setName("Stockroom clerk"))
                    .click();
            screen.navigate("http://localhost:" + site.port() + PLAN + "?range=month");
            String tag = lastTag();
            button("Pin the run with " + tag).click();
            isADraft();
            assertThat(screen.locator("#run-" + tag)).not().containsText("pinned");
            publish();

            assertThat(screen.locator("#run-" + tag)).containsText("pinned");
            assertThat(screen.locator("nav [aria-current=true]")).hasText("5 weeks");
        }
    }

    @Test
    void whatThePlanSaysIsLoaded() {
        button("Make a draft").click();
        publish();
        page.getByText("Load it now").first().click();
        assertThat(page).hasURL(Pattern.compile("/ovens/load"));
        Accessibility.check(page);
        button("It is in the oven").click();
        assertThat(page.getByRole(AriaRole.STATUS)).containsText("Loaded");
        open(PLAN);
        assertThat(page.locator("#runs-title ~ div tbody")).containsText("running");
    }

    @Test
    void thePagesFitAndAreAccessible() {
        for (String path : List.of(PLAN, PLAN + "?range=month", PLAN + "/rules", "/ovens/OVEN-1/change")) {
            open(path);
            Accessibility.checkOnScreens(page, 390, 1280, 2560);
        }
    }
}
