package bagclock.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import bagclock.OpenBag;
import bagclock.Visitor;
import bagclock.platform.Role;
import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page.GetByRoleOptions;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.AriaRole;
import java.time.Duration;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The clerk's page without the network, across a reload, while another station touches the same item. */
class OfflineIT extends Journey {
    private BrowserContext context;

    @BeforeEach
    void signIn() {
        signIn(new NewContextOptions(), "Stockroom clerk");
        context = page.context();
        open("/stock");
    }

    private void scan(String code) {
        new Scanner(page).scan(code);
    }

    private Visitor stationWithAnOpenBag(String tag) {
        Visitor other = Visitor.ofDemo(site.port(), Role.CLERK);
        OpenBag.at(other, tag);
        return other;
    }

    @Test
    void scansWaitAcrossAReloadAndAreToldOnceWhileAnotherStationMovesTheSameItem() {
        Visitor other = stationWithAnOpenBag("OFF-1");
        page.waitForFunction("caches.match('/stock').then((kept) => !!kept && !!navigator.serviceWorker.controller)");
        context.setOffline(true);
        scan("OFF-1");
        assertThat(page.locator("#late li")).hasCount(1);
        scan("DRY-5");
        assertThat(page.locator("#late li")).hasCount(2);
        assertThat(page.locator("#late")).containsText("waits for the network");

        page.reload();
        assertThat(page.locator("#late li")).hasCount(2);
        clock.passes(Duration.ofMinutes(10));
        Document held =
                Jsoup.parse(other.submit("/stock", "/stock", "code", "OFF-1").body());
        String token = held.select("form[action=/stock] input[name=csrf]").val();
        String key = held.select("form[action=/stock] input[name=key]").val();
        other.post("/stock", "csrf", token, "key", key, "held", "OFF-1", "code", "BENCH-1");

        context.setOffline(false);
        assertThat(page.locator("#late")).isHidden();
        org.assertj.core.api.Assertions.assertThat(other.page("/stock").select("ol li:contains(OFF-1):contains(DRY-5)"))
                .hasSize(1);
        org.assertj.core.api.Assertions.assertThat(
                        other.page("/items/OFF-1").select("dl").text())
                .contains("BENCH-1");
    }

    /** What a clerk scanned is told in the clerk's name, though another person has signed in at the terminal since. */
    @Test
    void scansThatWaitSurviveTheSignOutAndKeepTheirPerson() {
        Visitor other = stationWithAnOpenBag("OFF-2");
        page.waitForFunction("caches.match('/stock').then((kept) => !!kept)");
        context.route("**/stock/late", Route::abort);
        context.setOffline(true);
        scan("OFF-2");
        assertThat(page.locator("#late li")).hasCount(1);
        scan("DRY-5");
        assertThat(page.locator("#late li")).hasCount(2);
        context.setOffline(false);
        page.locator("form[action='/sign-out']").evaluate("(form) => form.submit()");
        page.waitForURL("**/sign-in*");
        page.getByRole(AriaRole.BUTTON, new GetByRoleOptions().setName("Planner"))
                .click();
        page.navigate("http://localhost:" + site.port() + "/stock");
        assertThat(page.locator("#late li")).hasCount(2);
        context.unroute("**/stock/late");
        assertThat(page.locator("#late")).isHidden();
        String line = "ol li:contains(OFF-2):contains(DRY-5)";
        org.assertj.core.api.Assertions.assertThat(other.page("/stock").select(line))
                .hasSize(1);
        org.assertj.core.api.Assertions.assertThat(
                        Visitor.ofDemo(site.port(), Role.PLANNER).page("/stock").select(line))
                .isEmpty();
    }

    @Test
    void aRefusedScanStaysOnTheListUntilItIsSeen() {
        page.waitForFunction("caches.match('/stock').then((kept) => !!kept)");
        context.setOffline(true);
        scan("NOTHING-4");
        context.setOffline(false);
        assertThat(page.locator("#late")).containsText("Do it by hand");
        page.locator("[data-seen]").click();
        assertThat(page.locator("#late")).isHidden();
    }
}
