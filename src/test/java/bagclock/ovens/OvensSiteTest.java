package bagclock.ovens;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.Visitor;
import bagclock.core.heat.Verdict;
import bagclock.platform.Role;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.Arrays;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The planner's flow over HTTP, in the demonstration's shop. */
class OvensSiteTest {
    private static OvenShop shop;

    @BeforeAll
    static void start() {
        shop = new OvenShop();
    }

    @AfterAll
    static void stop() {
        shop.close();
    }

    private static HttpResponse<String> unload(Visitor visitor, String tag, String hours, String... more) {
        String run = shop.run(visitor, tag);
        String[] fields = new String[8 + more.length];
        String[] usual = {"outAt", shop.now(), "hours", hours, "tag", tag, "to", "DRY-5"};
        System.arraycopy(usual, 0, fields, 0, usual.length);
        System.arraycopy(more, 0, fields, usual.length, more.length);
        return visitor.submit(run, run + "/out", fields);
    }

    @Test
    void aPartThatIsLoadedAndUnloadedAfterItsTimeIsClear() {
        Visitor visitor = shop.person(Role.PLANNER);
        assertThat(shop.verdict("T-436")).isEqualTo(Verdict.BAKE);
        assertThat(shop.load(visitor, "OVEN-3", "125", "T-436").statusCode()).isEqualTo(303);
        assertThat(shop.verdict("T-436")).isEqualTo(Verdict.WAIT);

        shop.clock().passes(Duration.ofMinutes(30));
        String run = shop.run(visitor, "T-436");
        assertThat(visitor.submit(run, run + "/hot", "hotAt", shop.now()).statusCode())
                .isEqualTo(303);
        shop.clock().passes(Duration.ofHours(8));

        assertThat(unload(visitor, "T-436", "8").statusCode()).isEqualTo(303);
        assertThat(shop.verdict("T-436")).isEqualTo(Verdict.CLEAR);
        assertThat(visitor.page("/ovens").select("#ovens-now").text()).doesNotContain("T-436");
    }

    @Test
    void anEarlyUnloadSaysWhatIsMissingAndAsks() {
        Visitor visitor = shop.person(Role.PLANNER);
        shop.load(visitor, "OVEN-1", "125", "T-424");
        shop.clock().passes(Duration.ofHours(4));

        HttpResponse<String> refused = unload(visitor, "T-424", "3");
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(Jsoup.parse(refused.body()).text()).contains("Too early", "T-424: 8 h missing of 11 h");
        assertThat(shop.verdict("T-424")).isEqualTo(Verdict.WAIT);

        assertThat(unload(visitor, "T-424", "3", "early", "yes").statusCode()).isEqualTo(303);
        assertThat(shop.verdict("T-424")).isEqualTo(Verdict.BAKE);
    }

    @Test
    void whatIsScannedJoinsTheLoadOrIsRefusedAtOnce() {
        Visitor visitor = shop.person(Role.PLANNER);
        String[] fields = {"oven", "OVEN-1", "setPoint", "125", "at", shop.now(), "humidity", "", "code", "T-424"};
        String path = "/ovens/load/scan";

        Document added = Jsoup.parse(visitor.submit("/ovens/load", path, fields).body());
        assertThat(added.select(".banner").text()).contains("T-424 may go in. Chosen so far: 1.");
        assertThat(added.select("input[name=tag][value=T-424][checked]")).hasSize(1);
        assertThat(added.select("input[name=code]").val()).isEmpty();

        fields[9] = "R-421";
        HttpResponse<String> weak = visitor.submit("/ovens/load", path, with(fields, "tag", "T-424"));
        assertThat(OvenShop.refusal(weak)).contains("R-421", "bears 40 °C");
        assertThat(Jsoup.parse(weak.body()).select("input[name=tag][checked]").eachAttr("value"))
                .containsExactly("T-424");
        fields[9] = "T-424";
        assertThat(OvenShop.refusal(visitor.submit("/ovens/load", path, with(fields, "tag", "T-424"))))
                .contains("among the chosen already");
        fields[9] = "oven-3";
        Document oven = Jsoup.parse(visitor.submit("/ovens/load", path, fields).body());
        assertThat(oven.select("input[name=oven][checked]").val()).isEqualTo("OVEN-3");
    }

    @Test
    void aBagAWeakReelAndADampOvenAreRefusedWithWords() {
        Visitor visitor = shop.person(Role.PLANNER);

        assertThat(OvenShop.refusal(shop.load(visitor, "OVEN-1", "125", "R-401")))
                .contains("Bags must not be in the oven");
        assertThat(OvenShop.refusal(shop.load(visitor, "OVEN-1", "125", "R-421")))
                .contains("bears 40 °C", "40 °C for 312 h");
        assertThat(OvenShop.refusal(shop.load(visitor, "OVEN-3", "90", "T-418")))
                .contains("at or below 5 % RH");
        assertThat(OvenShop.refusal(shop.load(visitor, "OVEN-1", "110", "T-418")))
                .contains("no bake for it at this set-point");
        assertThat(OvenShop.refusal(shop.load(visitor, "OVEN-2", "125", "T-418")))
                .contains("35 °C to 95 °C");
        assertThat(OvenShop.refusal(shop.load(visitor, "OVEN-1", "125", "R-000")))
                .contains("No item has this tag");
        assertThat(shop.verdict("T-418")).isEqualTo(Verdict.BAKE);
    }

    @Test
    void whatIsNeededFirstComesFirst() {
        Visitor visitor = shop.person(Role.PLANNER);

        visitor.submit("/ovens/needs/T-444", "/ovens/needs/T-444", "neededBy", "2026-03-13T08:00");

        Document page = visitor.page("/ovens");
        assertThat(page.select("#ovens-now tbody tr").first().text()).contains("T-444", "Fri 08:00");
    }

    @Test
    void anOvenIsAddedAndChanged() {
        Visitor visitor = shop.person(Role.PLANNER);
        String[] good = {"code", "OVEN-9", "name", "Small oven", "positions", "2", "heatUp", "15", "lowest", "40"};

        HttpResponse<String> refused = visitor.submit("/ovens/new", "/ovens/new", with(good, "highest", "30"));
        assertThat(OvenShop.refusal(refused)).contains("Must not be below the lowest");
        assertThat(visitor.submit("/ovens/new", "/ovens/new", with(good, "highest", "130"))
                        .statusCode())
                .isEqualTo(303);
        assertThat(OvenShop.refusal(visitor.submit("/ovens/new", "/ovens/new", with(good, "highest", "130"))))
                .contains("Another place has this code");
        assertThat(visitor.page("/ovens/OVEN-9/change")
                        .select("input[name=highest]")
                        .val())
                .isEqualTo("130");
    }

    private static String[] with(String[] fields, String name, String value) {
        String[] all = Arrays.copyOf(fields, fields.length + 2);
        all[fields.length] = name;
        all[fields.length + 1] = value;
        return all;
    }

    @Test
    void aClerkLoadsAnOvenButKeepsNone() {
        Visitor clerk = shop.person(Role.CLERK);

        assertThat(clerk.get("/ovens").statusCode()).isEqualTo(200);
        assertThat(clerk.get("/ovens/load").statusCode()).isEqualTo(200);
        assertThat(clerk.get("/ovens/new").statusCode()).isEqualTo(403);
    }
}
