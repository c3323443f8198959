package bagclock.bench;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.DemoShop;
import bagclock.Site;
import bagclock.Visitor;
import bagclock.platform.Engine;
import bagclock.platform.Role;
import java.net.http.HttpResponse;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The bench as a technician without a script sees it, over the invented shop at a fixed moment. */
class BenchSiteTest {
    private static final Instant NOW = Instant.parse("2026-03-12T13:20:00Z");

    private static Site site;

    @BeforeAll
    static void start() {
        site = DemoShop.open(Engine.H2.freshUrl(), Clock.fixed(NOW, ZoneOffset.UTC), "Europe/Berlin");
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    private static Visitor technician() {
        return Visitor.ofDemo(site.port(), Role.TECHNICIAN);
    }

    @Test
    void withoutAScanThePageAsksForOne() {
        Document page = technician().page("/bench");

        assertThat(page.select("h1").text()).isEqualTo("May it be heated?");
        assertThat(page.select("main form[data-scan] input[name=code]")).hasSize(1);
        assertThat(page.select(".answer")).isEmpty();
        assertThat(page.select(".doors a[aria-current]").text()).isEqualTo("Bench");
    }

    /** Level 3 has 168 h (J-STD-033D, table 5-1); opened 51 h before, in air no harsher than 30 C, 60 %RH. */
    @Test
    void aClearAnswerSaysByWhichTimeOfDayTheHeatMustEnd() {
        Document page = technician().page("/bench?code=R-407&purpose=placement&peak=245&minutes=10");

        Element answer = page.selectFirst(".answer");
        assertThat(answer.hasClass("clear")).isTrue();
        assertThat(answer.select(".call").text()).isEqualTo("Clear");
        assertThat(answer.select("[role=status] .sentence").text())
                .matches("Heat must end by \\w{3} .*\\d\\d:\\d\\d \\(CET\\)\\.");
        assertThat(answer.select(".aside").text()).startsWith("Time left: ").contains("at the latest");
        assertThat(page.select(".reasons cite").text()).contains("J-STD-033D", "table 5-1");
        assertThat(page.select(".trail li")).isNotEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "T-418, bake, Bake, Bake it first: ",
        "T-431, wait, Wait, Wait until ",
        "R-433, wait, Wait, Baked long enough since ",
        "R-401, hold, Hold, The bag is still closed."
    })
    void everyOtherVerdictIsAWordAndASentence(String tag, String verdict, String word, String sentence) {
        Document page = technician().page("/bench?code=" + tag);

        assertThat(page.select(".answer").hasClass(verdict)).isTrue();
        assertThat(page.select(".answer .call").text()).isEqualTo(word);
        assertThat(page.select(".answer [role=status] .sentence").text()).startsWith(sentence);
        assertThat(page.select(".answer .reasons li")).isNotEmpty();
    }

    @Test
    void bakesAreNamedWithWhatSpeaksAgainstThem() {
        Document page = technician().page("/bench?code=R-425");

        assertThat(page.select("#bakes-title")).hasSize(1);
        assertThat(page.select("td[data-label=Allowed?]").eachText())
                .anyMatch(text -> text.startsWith("Not allowed. What it is in or on bears"))
                .anyMatch(text -> text.equals("Allowed"));
        assertThat(page.select(".answer .acts a").eachAttr("href")).contains("/ovens");
    }

    @Test
    void scrapIsClearWhereReuseIsNot() {
        assertThat(technician()
                        .page("/bench?code=T-418&purpose=removal-scrap")
                        .select(".answer")
                        .hasClass("clear"))
                .isTrue();
        assertThat(technician()
                        .page("/bench?code=T-418&purpose=removal-reuse")
                        .select(".answer")
                        .hasClass("bake"))
                .isTrue();
    }

    @Test
    void aBoardsPartsAreAnsweredOneByOneAndTheStrictestDecides() {
        Document page = technician().page("/bench?code=HQB-0204&purpose=whole-board&minutes=5");

        assertThat(page.select(".answer").hasClass("clear")).isFalse();
        assertThat(page.select("#parts-title ~ .table tbody th").eachText())
                .containsExactlyInAnyOrder("U4", "U5", "U9", "J2");
        assertThat(page.select("tbody a").eachAttr("href"))
                .anyMatch(href -> href.equals("/bench?code=P-471&purpose=whole-board&minutes=5"));
    }

    @Test
    void aLaterStartIsAnsweredForThatMoment() {
        Document now = technician().page("/bench?code=T-410&minutes=5");
        Document later = technician().page("/bench?code=T-410&minutes=5&start=2026-03-15T09:00");

        assertThat(now.select(".answer").hasClass("clear")).isTrue();
        assertThat(later.select(".answer").hasClass("bake")).isTrue();
    }

    @Test
    void whatCannotBeReadIsSaidBesideItsFieldAndNothingIsLost() {
        HttpResponse<String> answer = technician()
                .get("/bench?code=R-407&purpose=placement&peak=hot&minutes=&start=2026-03-01T09:00&local=yes");
        Document page = Jsoup.parse(answer.body());

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(page.select(".error").eachAttr("id")).containsExactly("peak-error", "minutes-error", "start-error");
        assertThat(page.select("#code").val()).isEqualTo("R-407");
        assertThat(page.select("#peak").val()).isEqualTo("hot");
        assertThat(page.select("input[value=placement][checked]")).hasSize(1);
        assertThat(page.select("input[name=local][checked]")).hasSize(1);
        assertThat(page.select(".answer")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"NOTHING-1, Nothing has the tag NOTHING-1", "R-442, Nothing is left of R-442"})
    void anUnknownOrUsedUpTagIsRefused(String code, String words) {
        HttpResponse<String> answer = technician().get("/bench?code=" + code);

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(Jsoup.parse(answer.body()).select("#code-error").text()).startsWith(words);
    }

    @Test
    void aRecordedHeatKeepsTheAnswerAndCountsThePass() {
        Visitor technician = technician();
        String question = "/bench?code=T-413&purpose=placement&peak=240&minutes=8";
        HttpResponse<String> recorded =
                technician.submit(question, "/bench", "at", "2026-03-12T14:10", "measured", "238");
        String path = Visitor.target(recorded);
        assertThat(path).matches("/bench/heats/T-413/\\d+\\?done=recorded");

        Document page = technician.page(path);
        assertThat(page.select("[role=status]").text()).contains("Heat recorded");
        assertThat(page.select(".verdict").text()).isEqualTo("Clear");
        assertThat(page.select(".facts").text())
                .contains("238 °C", "planned peak 240 °C", "by Rework technician", "part type MEM-5003, version 1");
        assertThat(page.select(".reasons li")).isNotEmpty();
    }

    @Test
    void aHeatInTheFutureIsRefusedBesideItsField() {
        HttpResponse<String> refused =
                technician().submit("/bench?code=T-411", "/bench", "at", "2026-03-12T15:10", "measured", "");
        Document page = Jsoup.parse(refused.body());

        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(page.select("#at-error").text()).contains("future");
        assertThat(page.select(".answer")).hasSize(1);
    }

    @Test
    void aHeatThatTheHistoryForbidsIsRefusedInWords() {
        HttpResponse<String> refused =
                technician().submit("/bench?code=R-401", "/bench", "at", "2026-03-12T14:10", "measured", "");

        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(Jsoup.parse(refused.body()).select("[role=alert]").text()).contains("the bag is closed");
    }

    @Test
    void whoMayNotRecordSeesTheAnswerWithoutTheForm() {
        Document page = Visitor.ofDemo(site.port(), Role.CLERK).page("/bench?code=R-407");

        assertThat(page.select(".answer")).hasSize(1);
        assertThat(page.select("#record-title")).isEmpty();
    }

    /** Rules, 15: the verdict stays; the release is for one heat and stands beside it ever after. */
    @Test
    void anEngineerReleasesOneHeatOfAnItemByNameAndReason() {
        Visitor engineer = Visitor.ofDemo(site.port(), Role.ENGINEER);
        String question = "/bench?code=R-425&purpose=placement&peak=240&minutes=8";
        HttpResponse<String> empty = engineer.submit(question, "/bench/release", "why", " ");
        assertThat(empty.statusCode()).isEqualTo(422);
        assertThat(Jsoup.parse(empty.body()).select("#why-error")).hasSize(1);

        String back = Visitor.target(engineer.submit(question, "/bench/release", "why", "Weighed dry"));
        Document released = technician().page(back);
        assertThat(released.select(".answer").hasClass("bake")).isTrue();
        assertThat(released.select("#bench-answer .caution").text())
                .startsWith("Released for this one heat by")
                .contains("Weighed dry", "The verdict stays");
        assertThat(technician()
                        .page("/bench?code=R-425&purpose=placement&peak=245&minutes=8")
                        .select("#bench-answer .caution"))
                .as("a hotter heat was not released")
                .isEmpty();

        String heat = Visitor.target(technician().submit(back, "/bench", "at", "2026-03-12T14:20", "measured", "238"));
        Document record = technician().page(heat);
        assertThat(record.select("#kept-title ~ p .verdict").text()).isEqualTo("Bake");
        assertThat(record.select("#kept-title ~ p strong").text())
                .startsWith("Released by")
                .endsWith("Weighed dry");
        assertThat(technician().page(back).select("#bench-answer .caution")).isEmpty();

        Element line = technician().page("/boards/releases").select("tbody tr").stream()
                .filter(row -> row.text().contains("R-425"))
                .findFirst()
                .orElseThrow();
        assertThat(line.text()).contains("Weighed dry", "Bake");
        assertThat(line.select("a").eachAttr("href")).contains(heat.replace("?done=recorded", ""));
        String release = line.selectFirst("a").attr("href");
        assertThat(technician().page(release).select(".facts").text()).contains("Weighed dry");
    }

    @Test
    void whatHasAnotherWayOutAtHandIsNotReleased() {
        Visitor engineer = Visitor.ofDemo(site.port(), Role.ENGINEER);

        assertThat(engineer.page("/bench?code=R-401").select("#release-title")).isEmpty();
        assertThat(engineer.page("/bench?code=R-407").select("#release-title")).isEmpty();
        assertThat(technician().page("/bench?code=T-418").select("#release-title"))
                .isEmpty();
        assertThat(engineer.page("/bench?code=T-418").select("#release-title")).hasSize(1);
    }
}
