package bagclock.ovens;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.Visitor;
import bagclock.platform.Role;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Loading beside the published plan, over HTTP in the demonstration's shop: what differs is said, asked and kept. */
class LoadPlanSiteTest {
    private static final String LOAD = "/ovens/load";

    private static OvenShop shop;
    private static Visitor planner;

    @BeforeAll
    static void start() {
        shop = new OvenShop();
        shop.clock().passes(Duration.ofMinutes(100)); // the time of the first runs
        planner = shop.person(Role.PLANNER);
    }

    @AfterAll
    static void stop() {
        shop.close();
    }

    private static String[] load(String oven, String setPoint, String tags, String... more) {
        List<String> fields = new ArrayList<>(
                List.of("oven", oven, "setPoint", setPoint, "at", shop.now(), "humidity", "", "tag", tags));
        fields.addAll(List.of(more));
        return fields.toArray(String[]::new);
    }

    private static Document scan(String oven, String setPoint, String chosen, String code) {
        HttpResponse<String> answer = planner.submit(LOAD, LOAD + "/scan", load(oven, setPoint, chosen, "code", code));
        return Jsoup.parse(answer.body());
    }

    /** The first run at 125 C that is planned for the bench oven: now. */
    private static List<String> planned() {
        Element run = planner.page("/ovens/plan")
                .select("tr[id^=run-]:has(option[selected][value=OVEN-3]):has(td:contains(125 °C))")
                .first();
        return run.select(".code").eachText();
    }

    @Test
    void aScanSaysWhetherItIsAsPlanned() {
        List<String> lots = planned();
        String tag = lots.get(0);
        Document as = scan("OVEN-3", "125", "", tag);
        assertThat(OvenShop.words(as))
                .contains("As planned: " + tag + ".")
                .doesNotContain("Not as the published plan says");
        if (lots.size() > 1) {
            assertThat(OvenShop.words(as)).contains("Planned with it, and not chosen yet: " + lots.get(1));
        }

        Document other = scan("OVEN-1", "125", "", tag);
        assertThat(OvenShop.words(other)).contains("Another oven: " + tag + " is planned in Bench oven, 125 °C");
        assertThat(other.select("input[name=tag][value=" + tag + "][checked]")).hasSize(1);
        assertThat(OvenShop.words(scan("OVEN-3", "90", "", tag))).doesNotContain("As planned: " + tag);
    }

    @Test
    void atAnotherTimeOrNotPlannedIsSaidToo() {
        String later = planner.page("/ovens/plan")
                .select("tr[id^=run-]:has(td:contains(125 °C)) input[name=moveTag]")
                .last()
                .val();
        String oven = planner.page("/ovens/plan")
                .select("#run-" + later + " option[selected]")
                .val();
        assertThat(OvenShop.words(scan(oven, "125", "", later))).contains("Another time: " + later + " is planned in");
        assertThat(OvenShop.words(scan("OVEN-3", "125", "", "T-403"))).contains("T-403");
    }

    @Test
    void loadingOtherwiseIsAskedForAndKeptWithTheLoad() {
        String tag = planner.page("/ovens/plan")
                .select("tr[id^=run-]:has(td:contains(125 °C)) input[name=moveTag]")
                .last()
                .val();
        String oven = planner.page("/ovens/plan")
                .select("#run-" + tag + " option[selected]")
                .val();
        HttpResponse<String> asked = planner.submit(LOAD, LOAD, load(oven, "125", tag, "code", ""));
        assertThat(asked.statusCode()).isEqualTo(422);
        assertThat(OvenShop.words(asked)).contains("Tick the box beside the button", "Another time: " + tag);
        assertThat(planner.page("/ovens").select("article li:contains(" + tag + ")"))
                .isEmpty();

        HttpResponse<String> sent = planner.submit(LOAD, LOAD, load(oven, "125", tag, "code", "", "offPlan", "yes"));
        assertThat(sent.statusCode()).as(sent.body()).isEqualTo(303);
        String run = shop.run(planner, tag);
        assertThat(OvenShop.words(planner.page(run)))
                .contains("Not as planned when it went in", "Another time: " + tag);

        shop.clock().passes(Duration.ofHours(1));
        planner = shop.person(Role.PLANNER);
        assertThat(planner.submit(
                                run,
                                run + "/out",
                                "outAt",
                                shop.now(),
                                "tag",
                                tag,
                                "to",
                                "DRY-5",
                                "hours",
                                "0.5",
                                "early",
                                "yes")
                        .statusCode())
                .isEqualTo(303);
        assertThat(OvenShop.words(planner.page(run.replace("/loads/", "/runs/"))))
                .contains("Not as planned when it went in");
    }
}
