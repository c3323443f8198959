package bagclock.browser;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.DemoShop;
import bagclock.HandClock;
import bagclock.Site;
import bagclock.Visitor;
import bagclock.platform.Role;
import bagclock.register.LabelCode;
import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ReducedMotion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Takes the pictures of the guide, so that they show what the pages look like. They go to the build's folder; with
 * {@code -Dbagclock.pictures=docs/guide/pictures} into the guide.
 */
class GuideIT {
    private static final HandClock CLOCK = new HandClock(Instant.parse("2026-03-12T14:20:00Z"));
    private static final Path GUIDE = Path.of("docs/guide");
    private static final Path PICTURES = Path.of(System.getProperty("bagclock.pictures", "target/pictures"));
    private static final Pattern PICTURE = Pattern.compile("\\]\\((?:docs/guide/)?pictures/([a-z-]+\\.png)\\)");

    private static Site site;
    private static Browser browser;

    @BeforeAll
    static void start() {
        site = DemoShop.open(CLOCK);
        browser = Browser.start();
    }

    @AfterAll
    static void stop() {
        browser.close();
        site.close();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "counter, CLERK, /stock, LIGHT, 1280, 860",
        "scanner, CLERK, /stock/scanner, LIGHT, 1280, 1040",
        "receive, CLERK, /stock/receive, LIGHT, 1280, 860",
        "open, CLERK, /items/R-404/acts/open, LIGHT, 1280, 1080",
        "item, CLERK, /items/R-407, LIGHT, 1280, 1240",
        "items, CLERK, /items?within=24, LIGHT, 1280, 760",
        "label, CLERK, /items/R-407/label, LIGHT, 1280, 760",
        "codes, CLERK, /places/codes, LIGHT, 1280, 860",
        "bench-clear, TECHNICIAN, /bench?code=T-411&purpose=placement&local=yes, LIGHT, 1280, 900",
        "bench-bake, TECHNICIAN, /bench?code=T-418&purpose=placement&local=yes, DARK, 1280, 1000",
        "bench-phone, TECHNICIAN, /bench?code=T-411&purpose=placement&local=yes, LIGHT, 390, 800",
        "ovens, PLANNER, /ovens, LIGHT, 1280, 1240",
        "plan, PLANNER, /ovens/plan, LIGHT, 1280, 900",
        "climate, ENGINEER, /climate/LINE, LIGHT, 1280, 900",
        "part-type, ENGINEER, /parts/type?number=RDR-3003, LIGHT, 1280, 900",
        "people, ADMINISTRATOR, /people, LIGHT, 1280, 760",
        "wall, TECHNICIAN, /wall, DARK, 1280, 720",
    })
    void isTaken(String name, Role role, String path, ColorScheme scheme, int width, int height) {
        Page page = browser.browser()
                .newContext(new NewContextOptions()
                        .setViewportSize(width, height)
                        .setColorScheme(scheme)
                        .setReducedMotion(ReducedMotion.REDUCE))
                .newPage();
        String address = "http://localhost:" + site.port();
        page.navigate(address + "/sign-in");
        page.locator("button[value=" + role + "]").click();

        int status = page.navigate(address + path).status();
        assertThat(status).as(path).isEqualTo(200);
        assertThat(page.getByRole(AriaRole.HEADING).first()).satisfies(Locator::isVisible);
        page.screenshot(new Page.ScreenshotOptions().setPath(PICTURES.resolve(name + ".png")));

        assertThat(PICTURES.resolve(name + ".png")).isNotEmptyFile();
        page.context().close();
    }

    /** Its engineer has chosen a Code 128 for laser scanners. */
    @Test
    void aLabelWithBothCodesIsTaken() {
        choose(LabelCode.LINEAR_300);
        isTaken("label-both", Role.CLERK, "/items/R-407/label", ColorScheme.LIGHT, 1280, 760);
        choose(LabelCode.MATRIX);
    }

    private static void choose(LabelCode code) {
        String customs = "/labels/customs";
        Visitor.ofDemo(site.port(), Role.ENGINEER)
                .submit(
                        customs,
                        customs,
                        "item",
                        "W70_H36",
                        "bag",
                        "W100_H50",
                        "sheet",
                        "A4",
                        "code",
                        code.name(),
                        "wall",
                        "shown");
    }

    @Test
    void everyPictureIsThereAndShown() throws IOException {
        List<String> shown = Stream.of(
                        Path.of("README.md"),
                        GUIDE.resolve("README.md"),
                        GUIDE.resolve("clerk.md"),
                        GUIDE.resolve("technician.md"),
                        GUIDE.resolve("planner.md"),
                        GUIDE.resolve("engineer.md"))
                .flatMap(GuideIT::pictures)
                .distinct()
                .toList();
        try (Stream<Path> there = Files.list(GUIDE.resolve("pictures"))) {
            assertThat(there.map(path -> path.getFileName().toString())).containsExactlyInAnyOrderElementsOf(shown);
        }
    }

    private static Stream<String> pictures(Path page) {
        try {
            return PICTURE.matcher(Files.readString(page)).results().map((MatchResult match) -> match.group(1));
        } catch (IOException failure) {
            throw new IllegalStateException("can't read " + page, failure);
        }
    }
}
