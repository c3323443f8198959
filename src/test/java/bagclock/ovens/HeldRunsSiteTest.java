package bagclock.ovens;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.DemoShop;
import bagclock.Visitor;
import bagclock.core.Refusal;
import bagclock.core.quantity.Celsius;
import bagclock.desk.Command;
import bagclock.platform.Role;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Published runs that became unlawful, over HTTP in the demonstration's shop: each is named, with what and why. */
class HeldRunsSiteTest {
    private static final String DRAFTS = "/ovens/plan/drafts";

    private static OvenShop shop;
    private static Visitor planner;

    @BeforeAll
    static void start() {
        shop = new OvenShop();
        DemoShop.searchNothing(shop.site());
    }

    @BeforeEach
    void publishAPlan() {
        planner = shop.person(Role.PLANNER);
        publish(draft());
    }

    @AfterAll
    static void stop() {
        shop.close();
    }

    private String draft(String... fields) {
        HttpResponse<String> answer = planner.submit("/ovens/plan", DRAFTS, fields);
        assertThat(answer.statusCode()).as(Jsoup.parse(answer.body()).text()).isEqualTo(303);
        return Visitor.target(answer);
    }

    private void publish(String draft) {
        shop.clock().passes(Duration.ofSeconds(1));
        assertThat(planner.submit(draft, draft + "/publish").statusCode()).isEqualTo(303);
    }

    private static String named(Document page) {
        return page.select("section[aria-labelledby=named-title]").text();
    }

    private static String changes(Document page) {
        return page.select("section[aria-labelledby=draft-title]").text();
    }

    /** The last run of the plan that is baked at 125 C, pinned; its first lot. */
    private Element pinned() {
        String tag = planner.page("/ovens/plan")
                .select("tr[id^=run-]:has(td:contains(125 °C)) input[name=moveTag]")
                .last()
                .val();
        publish(draft("kind", "pin", "moveTag", tag));
        Element run = planner.page("/ovens/plan").selectFirst("#run-" + tag);
        assertThat(run.text()).contains("pinned");
        assertThat(named(planner.page("/ovens/plan"))).doesNotContain("as planned");
        return run;
    }

    private static List<String> lots(Element run) {
        return run.select(".code").eachText();
    }

    private static String oven(Element run) {
        return run.select("option[selected]").val();
    }

    private static String start(Element run) {
        return run.select("input[name=moveTo]").val();
    }

    private Command.Header header(String key) {
        return new Command.Header("test", shop.clock().instant(), key);
    }

    private void is(Command command) {
        List<Refusal> refused =
                shop.desk().handle(command, shop.clock().instant()).fold(receipt -> List.of(), all -> all);
        assertThat(refused).isEmpty();
    }

    private void change(String oven, String... changed) {
        String path = "/ovens/" + oven + "/change";
        Document page = planner.page(path);
        List<String> fields = new ArrayList<>(List.of(changed));
        for (Element field : page.select("form[action=" + path + "] input:not([type=hidden])")) {
            if (!fields.contains(field.attr("name"))) {
                fields.addAll(List.of(field.attr("name"), field.val()));
            }
        }
        assertThat(planner.submit(path, path, fields.toArray(String[]::new)).statusCode())
                .isEqualTo(303);
    }

    @Test
    void aPinnedRunWhoseOvenIsClosedIsNamedInTheDraftThatClosesIt() {
        Element run = pinned();

        Document draft = planner.page(
                draft("kind", "close", "closeOven", oven(run), "closeFrom", start(run), "closeTo", "2026-04-20T08:00"));

        assertThat(changes(draft))
                .contains("The run with " + String.join(", ", lots(run)), "can't be as planned")
                .contains("The oven is out of service then.", "It is not pinned any more.");
    }

    @Test
    void aPinnedRunThatItsOvenCanNoLongerBakeIsNamedAndNotSentToBeLoaded() {
        Element run = pinned();
        change(oven(run), "highest", "100");

        Document page = planner.page("/ovens/plan");
        String tag = lots(run).get(0);
        assertThat(named(page))
                .contains("The run with " + String.join(", ", lots(run)), "can't be as planned")
                .contains("May not be baked so in this oven: " + tag, "Make a draft");
        assertThat(page.select("#run-" + tag).text()).contains("can't be as planned");
        assertThat(page.select("ol.trail a").eachAttr("href")).noneMatch(href -> href.contains("tag=" + tag));
        assertThat(planner.page("/ovens/plan/print").text())
                .contains("May not be baked so in this oven: " + tag, "can't be as planned");
        String draft = draft();
        assertThat(changes(planner.page(draft))).contains("May not be baked so in this oven: " + tag);
        publish(draft);
        assertThat(named(planner.page("/ovens/plan"))).doesNotContain("as planned");
        change(oven(run), "highest", "130");
    }

    @Test
    void aLotThatIsUsedUpLeavesItsPinnedRunWithAWord() {
        Element run = pinned();
        String tag = lots(run).get(0);
        is(new Command.UseUp(
                header("gone"),
                tag,
                shop.desk()
                        .item(tag, shop.clock().instant())
                        .orElseThrow()
                        .item()
                        .quantity(),
                "WO-1",
                List.of()));

        assertThat(named(planner.page("/ovens/plan"))).contains("Waiting for no bake any more: " + tag);
        assertThat(changes(planner.page(draft()))).contains("Waiting for no bake any more: " + tag);
    }

    @Test
    void aLotThatIsInAnotherOvenLeavesItsPinnedRunWithAWord() {
        Element run = pinned();
        String tag = lots(run).get(0);
        String other = oven(run).equals("OVEN-1") ? "OVEN-3" : "OVEN-1";
        is(new Command.StartBake(header("elsewhere"), tag, other, new Celsius(125), Optional.empty()));

        assertThat(named(planner.page("/ovens/plan"))).contains(" already: " + tag);
        assertThat(changes(planner.page(draft()))).contains(" already: " + tag);
    }

    @Test
    void aPinnedRunThatNobodyLoadedIsNamedAndMayStillBeLoaded() {
        Element run = pinned();
        shop.clock()
                .passes(Duration.between(
                        shop.clock().instant(),
                        Instant.parse(start(run) + ":00Z").plusSeconds(600)));
        planner = shop.person(Role.PLANNER);

        Document page = planner.page("/ovens/plan");
        assertThat(named(page)).contains("should have begun", "nobody has loaded it", "It is not pinned any more.");
        assertThat(page.select("#run-" + lots(run).get(0)).text()).contains("to be loaded now");
    }

    @Test
    void anUnknownRunIsNeitherMovedNorPinned() {
        for (String kind : List.of("pin", "unpin", "move")) {
            HttpResponse<String> answer = planner.submit(
                    "/ovens/plan", DRAFTS, "kind", kind, "moveTag", "NOBODY", "moveOven", "OVEN-1", "moveTo", "");
            assertThat(answer.statusCode()).isEqualTo(422);
            assertThat(named(Jsoup.parse(answer.body()))).contains("The published plan has no such run any more.");
        }
    }

    @Test
    void aRunIsNotMovedIntoThePastByItsForm() {
        String tag = lots(pinned()).get(0);
        HttpResponse<String> answer = planner.submit(
                "/ovens/plan",
                DRAFTS,
                "kind",
                "move",
                "shift",
                "0",
                "moveTag",
                tag,
                "moveOven",
                "OVEN-1",
                "moveTo",
                "2026-03-01T08:00");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(named(Jsoup.parse(answer.body()))).contains("This is past.");
    }

    @Test
    void closingAnOvenNamesWhatBakesInIt() {
        String load = planner.page("/ovens/plan")
                .select("tr[id^=run-]:contains(running)")
                .last()
                .id();
        Element run = planner.page("/ovens/plan").getElementById(load);
        String oven = run.select("th").text().equals("Tall oven") ? "OVEN-1" : "OVEN-2";
        String now = shop.clock().instant().toString().substring(0, 16);
        String draft = draft("kind", "close", "closeOven", oven, "closeFrom", now, "closeTo", "2026-05-20T08:00");

        assertThat(changes(planner.page(draft))).contains("while", lots(run).get(0), "bake in it until");
        publish(draft);
        assertThat(named(planner.page("/ovens/plan"))).contains("bake in it until");
        String back =
                planner.page("/ovens/plan").select("form[action$=/end]").last().attr("action");
        planner.submit("/ovens/plan", back);
        assertThat(named(planner.page("/ovens/plan"))).doesNotContain("bake in it until");
    }

    @Test
    void bothPlansAreCountedFromNowOn() {
        shop.clock().passes(Duration.ofMinutes(70));
        planner = shop.person(Role.PLANNER);
        publish(draft());
        Element runs = planner.page(draft())
                .select("section[aria-labelledby=draft-title] tr:contains(Runs)")
                .first();
        assertThat(runs.select("td").eachText()).hasSize(2);
        assertThat(runs.select("td").get(0).text())
                .isEqualTo(runs.select("td").get(1).text());
    }

    @Test
    void aRushLotThatIsThereByNowIsPlannedOnce() {
        String tag = "T-410";
        publish(draft(
                "kind",
                "rush",
                "rushName",
                tag,
                "rushPositions",
                "1",
                "rushTemperature",
                "125",
                "rushHours",
                "40",
                "rushBy",
                "2026-03-20T08:00"));
        is(new Command.EnterUnknownExposure(header("unknown"), tag));

        assertThat(planner.page("/ovens/plan").select("#lots-title ~ div th .code:contains(" + tag + ")"))
                .hasSize(1);
        assertThat(draft()).contains("/drafts/");
    }
}
