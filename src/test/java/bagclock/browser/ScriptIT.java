package bagclock.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import bagclock.platform.Database;
import bagclock.platform.Engine;
import bagclock.platform.Live;
import bagclock.platform.SecurityHeaders;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.WaitUntilState;
import io.javalin.Javalin;
import io.javalin.http.staticfiles.Location;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Semaphore;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What the script promises to pages, on a page that has nothing else. */
class ScriptIT {
    private static final String PAGE = """
            <!DOCTYPE html><html lang="en"><head><title>Test</title>
            <meta name="htmx-config" content='{"allowEval":false,"includeIndicatorStyles":false}'>
            <script src="/public/theme.js"></script>
            <script src="/public/htmx.min.js" defer></script><script src="/public/app.js" defer></script></head>
            <body hx-headers='{"X-CSRF-Token":"abc"}'>
            <div id="notice" role="alert" data-failed="failed" data-offline="offline" hidden></div><main>
            <p id="count" data-live="item ovens" hx-get="/count" hx-trigger="live">0</p>
            <form data-scan hx-post="/scan" hx-target="#said"><input name="code" aria-label="Scan"></form>
            <input id="other" aria-label="Other"><div id="said"></div>
            </main></body></html>
            """;

    private static final String PLAIN = PAGE.replace("hx-post=\"/scan\"", "action=\"/plain\" method=\"post\"");

    private static Browser browser;

    private final List<String> told = new CopyOnWriteArrayList<>();
    private final Semaphore answers = new Semaphore(0);
    private final AtomicInteger count = new AtomicInteger();
    private final AtomicInteger streams = new AtomicInteger();

    private Database database;
    private Live live;
    private Javalin server;
    private BrowserContext context;

    @BeforeAll
    static void startBrowser() {
        browser = Browser.start();
    }

    @AfterAll
    static void closeBrowser() {
        browser.close();
    }

    @BeforeEach
    void start() {
        database = Engine.H2.fresh();
        live = new Live(database, Clock.systemUTC());
        server = Javalin.create(config -> {
                    config.staticFiles.add(files -> {
                        files.hostedPath = "/public";
                        files.directory = "/public";
                        files.location = Location.CLASSPATH;
                    });
                    SecurityHeaders.register(config.routes);
                    config.routes.before(Live.PATH, ctx -> streams.incrementAndGet());
                    live.register(config.routes);
                    config.routes.get("/page", ctx -> ctx.html(PAGE));
                    config.routes.get("/count", ctx -> ctx.html(Integer.toString(count.incrementAndGet())));
                    config.routes.get("/plain", ctx -> ctx.html(PLAIN));
                    config.routes.post("/plain", ctx -> {
                        told.add(ctx.formParam("code"));
                        answers.acquire();
                        ctx.html(PLAIN.replace("\"said\">", "\"said\">" + String.join(" ", told)));
                    });
                    config.routes.post("/scan", ctx -> {
                        String code = ctx.formParam("code");
                        if (!"abc".equals(ctx.header("X-CSRF-Token")) || "BROKEN".equals(code)) {
                            ctx.status(500);
                            return;
                        }
                        ctx.status("WRONG".equals(code) ? 422 : 200);
                        ctx.html("<p role=status data-sound=accepted>heard " + code + "</p>");
                    });
                })
                .start(0);
        context = browser.browser().newContext();
    }

    @AfterEach
    void stop() {
        context.close();
        live.close();
        server.stop();
        database.close();
    }

    @Test
    void partsAreFetchedAgainWhenTheirTopicChangesAndTabsShareOneStream() {
        Page one = open();
        Page two = open();
        two.waitForTimeout(500);

        tell("itemised/R-1");
        tell("item/R-1");
        assertThat(one.locator("#count")).not().hasText("0");
        assertThat(two.locator("#count")).not().hasText("0");
        tell("ovens");
        one.waitForCondition(() -> count.get() == 4);

        org.assertj.core.api.Assertions.assertThat(streams).hasValue(1);
        one.close();
        two.waitForCondition(() -> streams.get() == 2);
        tell("ovens");
        two.waitForCondition(() -> count.get() >= 5);
    }

    @Test
    void acceptedAndRefusedScansAreShownInPlaceAndFailuresAreSaid() {
        Page page = open();
        page.locator("#other").fill("half");
        page.locator("#other").focus();

        scan(page, "R-1042");
        assertThat(page.locator("#said")).hasText("heard R-1042");
        assertThat(page.locator("#other")).hasValue("half");
        assertThat(page.locator("#other")).isFocused();
        scan(page, "WRONG");
        assertThat(page.locator("#said")).hasText("heard WRONG");
        scan(page, "BROKEN");
        assertThat(page.getByText("failed")).isVisible();
        scan(page, "R-1043");
        assertThat(page.getByText("failed")).isHidden();
        context.setOffline(true);
        scan(page, "R-1044");
        assertThat(page.getByText("offline")).isVisible();
    }

    @Test
    void separatorsOfALabelArriveWithTheScan() {
        Page page = open();
        Scanner scanner = new Scanner(page);
        scanner.type("[)>");
        scanner.press("Control+Digit6");
        scanner.type("06");
        scanner.press("Control+BracketRight");
        scanner.scan("1P7");

        assertThat(page.locator("#said")).hasText("heard [)>\u001e06\u001d1P7");
        scanner.type("[)>");
        scanner.alt("030");
        scanner.type("06");
        scanner.alt("029");
        scanner.scan("1P9");
        assertThat(page.locator("#said")).hasText("heard [)>\u001e06\u001d1P9");
    }

    /** 200 characters in a second, as control-key chords and as function keys, ended by Tab; none is left to the browser. */
    @Test
    void aFastLabelLosesNoCharacterHoweverItsControlsArrive() {
        Page page = open();
        page.evaluate("""
                () => {
                  window.left = [];
                  addEventListener("keydown", (event) => {
                    if ((event.ctrlKey || event.key.length > 1) && !event.defaultPrevented) left.push(event.key + event.code);
                  });
                }""");
        String part = "ABCDEFGHIJKLMNOPQRSTUVWXYZ-0123456789".repeat(6);
        for (String[] keys : new String[][] {
            {"Control+Digit6", "Control+BracketRight", "Control+KeyD"},
            {"F9", "F8", "F4"},
            {"ArrowLeft", "ArrowDown", "F4"}
        }) {
            page.locator("#other").focus();
            Scanner scanner = new Scanner(page);
            scanner.type("[)>");
            scanner.press(keys[0]);
            scanner.type("06");
            scanner.press(keys[1]);
            scanner.type("1P" + part + keys[0].length());
            scanner.press(keys[0]);
            scanner.press(keys[2]);
            scanner.press("Tab");
            scanner.press("Control+KeyJ");
            assertThat(page.locator("#said"))
                    .hasText("heard [)>\u001e06\u001d1P" + part + keys[0].length() + "\u001e\u0004");
        }
        org.assertj.core.api.Assertions.assertThat((List<?>) page.evaluate("left"))
                .isEmpty();
    }

    /** Some scanners send no suffix at all. */
    @Test
    void aLabelWithoutASuffixEndsWithSilence() {
        Page page = open();
        Scanner scanner = new Scanner(page);
        scanner.type("[)>");
        scanner.press("F9");
        scanner.type("06");
        scanner.press("F8");
        scanner.type("1P8");
        assertThat(page.locator("#said")).hasText("heard [)>\u001e06\u001d1P8");
    }

    /** The page stands, but its script is still on the way. */
    @Test
    void keysBeforeTheScriptStartsAreOfTheScan() {
        List<Route> held = new ArrayList<>();
        context.route("**/app.js", held::add);
        Page page = context.newPage();
        page.navigate(address(), new Page.NavigateOptions().setWaitUntil(WaitUntilState.COMMIT));
        page.locator("#other").fill("half");
        page.waitForCondition(() -> !held.isEmpty());
        new Scanner(page).scan("R-1046");
        held.get(0).resume();

        assertThat(page.locator("#said")).hasText("heard R-1046");
        assertThat(page.locator("#other")).hasValue("half");
    }

    /** The first half on a page that is being left, the other half on the next. */
    @Test
    void aScanThatBeginsOnThePageBeforeIsHeardWhole() {
        Page page = open();
        page.evaluate("""
                () => {
                  const pressed = (key) => new KeyboardEvent("keydown", { key, bubbles: true });
                  const press = (event) => document.body.dispatchEvent(event);
                  [..."[)>06R-1"].map(pressed).forEach(press);
                  location.reload();
                }""");
        page.waitForFunction("performance.getEntriesByType('navigation')[0].type === 'reload'");
        page.evaluate("""
                () => {
                  const pressed = (key) => new KeyboardEvent("keydown", { key, bubbles: true });
                  const press = (event) => document.body.dispatchEvent(event);
                  [..."047", "Enter"].map(pressed).forEach(press);
                }""");
        assertThat(page.locator("#said")).hasText("heard [)>06R-1047");
    }

    @Test
    void twoHundredCharactersInASecondAreAllHeard() {
        Page page = open();
        String code = "ABCDEFGHIJKLMNOPQRSTUVWXYZ-0123456789".repeat(6);
        new Scanner(page).scan(code);

        assertThat(page.locator("#said")).hasText("heard " + code);
    }

    /** Two more scans while the first one's answer is on its way: each is told once, in order. */
    @Test
    void aScanWhileThePageIsBeingLeftIsToldOnTheNext() {
        Page page = context.newPage();
        page.navigate("http://localhost:" + server.port() + "/plain");
        scan(page, "R-1001");
        scan(page, "R-1002");
        scan(page, "R-1003");
        answers.release(3);
        assertThat(page.locator("#said")).hasText("R-1001 R-1002 R-1003");
    }

    private String address() {
        return "http://localhost:" + server.port() + "/page";
    }

    private Page open() {
        Page page = context.newPage();
        page.navigate(address());
        return page;
    }

    private void tell(String topic) {
        database.withTransaction(tx -> live.tell(tx, topic));
    }

    private static void scan(Page page, String text) {
        new Scanner(page).scan(text);
    }
}
