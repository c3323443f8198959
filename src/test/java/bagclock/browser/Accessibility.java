package bagclock.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.args.AxeRunOptions;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;

/** Asks axe for faults against WCAG 2.2 A and AA on a page as it stands. */
public final class Accessibility {
    // A banner that still fades in has too little contrast.
    private static final String STILL =
            "() => Promise.all(document.getAnimations().map(a => a.finished.catch(() => null))).then(() => true)";

    private static final List<String> RULES = List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa");

    private Accessibility() {}

    /**
     * The page as it stands on screens of these widths, light and dark in turn. Each must be as wide as the page; axe looks
     * at the first two, since wider ones show the same in the same colours.
     */
    public static void checkOnScreens(Page page, int... widths) {
        for (int i = 0; i < widths.length; i++) {
            page.setViewportSize(widths[i], 900);
            page.emulateMedia(
                    new Page.EmulateMediaOptions().setColorScheme(i % 2 == 0 ? ColorScheme.LIGHT : ColorScheme.DARK));
            int needed = ((Number) page.evaluate("document.documentElement.scrollWidth")).intValue();
            assertThat(needed).as(page.url()).isLessThanOrEqualTo(widths[i]);
            if (i < 2) {
                check(page);
            }
        }
    }

    /** Fails with each fault and the elements that have it, once nothing moves any more. */
    public static void check(Page page) {
        page.evaluate(STILL);
        // No page has frames: axe may run in it alone, without a second page to gather from them.
        AxeRunOptions options = new AxeRunOptions();
        options.setResultTypes(List.of("violations"));
        List<String> faults = new AxeBuilder(page)
                .setLegacyMode(true).options(options).withTags(RULES).analyze().getViolations().stream()
                        .flatMap(rule -> rule.getNodes().stream()
                                .map(node -> rule.getId() + ": " + rule.getHelp() + " at " + node.getHtml()))
                        .toList();

        assertThat(faults).as(page.url()).isEmpty();
    }
}
