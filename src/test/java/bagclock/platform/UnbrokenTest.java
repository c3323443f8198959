package bagclock.platform;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.DemoShop;
import bagclock.HandClock;
import bagclock.Site;
import bagclock.Visitor;
import java.time.Instant;
import java.util.List;
import java.util.regex.Pattern;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.TextNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** ISO 80000-1, 7.1.4: number and unit are one expression; no line may end between them. */
class UnbrokenTest {
    private static final Pattern BREAKABLE = Pattern.compile("\\d (°C|% ?RH|h\\b|min\\b|mm\\b|days?\\b)|% RH");

    @ParameterizedTest
    @CsvSource({
        "at 125 °C for 8 h, 'at 125~°C for 8~h'",
        "5 % RH, 5~%~RH",
        "≤ 5 %RH and 60% RH, '≤ 5~%RH and 60%~RH'",
        "2 days 3 h 20 min, 2~days 3~h 20~min",
        "1.4 mm to 2 mm., 1.4~mm to 2~mm.",
        "'4 hot parts, 2 m from U7 high', '4 hot parts, 2 m from U7 high'",
        "Thu 5 Mar 2026 14:20, Thu 5 Mar 2026 14:20"
    })
    void numberAndUnitStayTogether(String text, String expected) {
        assertThat(Unbroken.text(text)).isEqualTo(expected.replace('~', '\u00a0'));
    }

    @Test
    void noPageLetsALineEndBetweenThem() {
        HandClock clock = new HandClock(Instant.parse("2026-03-12T14:20:00Z"));
        try (Site site = DemoShop.open(clock)) {
            Visitor engineer = Visitor.ofDemo(site.port(), Role.ENGINEER);
            long quantities = 0;
            for (String path : List.of("/items", "/climate", "/climate/LINE", "/ovens", "/tables", "/wall", "/bench")) {
                Document page = engineer.page(path);
                List<String> texts = page.select("body *:not(textarea):not(script)").stream()
                        .flatMap(element -> element.textNodes().stream())
                        .map(TextNode::getWholeText)
                        .toList();
                assertThat(texts)
                        .as(path)
                        .noneMatch(text -> BREAKABLE.matcher(text).find());
                quantities += texts.stream()
                        .filter(text -> text.matches("(?s).*\\d\u00a0.*"))
                        .count();
            }
            assertThat(quantities).isGreaterThan(50);
        }
    }

    @Test
    void whatAFormSendsBackStaysAsItWasTyped() {
        HandClock clock = new HandClock(Instant.parse("2026-03-12T14:20:00Z"));
        try (Site site = DemoShop.open(clock)) {
            Visitor engineer = Visitor.ofDemo(site.port(), Role.ENGINEER);
            String body = engineer.submit("/climate/import", "/climate/import", "text", "zone\nat 125 °C for 8 h")
                    .body();

            assertThat(org.jsoup.Jsoup.parse(body).select("textarea").val()).contains("at 125 °C for 8 h");
        }
    }
}
