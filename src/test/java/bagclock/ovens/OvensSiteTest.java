package bagclock.ovens;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.DemoShop;
import bagclock.HandClock;
import bagclock.Site;
import bagclock.Visitor;
import bagclock.core.heat.Verdict;
import bagclock.desk.Desk;
import bagclock.platform.Database;
import bagclock.platform.Engine;
import bagclock.platform.Role;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Optional;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The planner's flow over HTTP, in the demonstration's shop. */
class OvensSiteTest {
    private static final HandClock CLOCK = new HandClock(Instant.parse("2026-03-12T14:20:00Z"));

    private static Database database;
    private static Desk desk;
    private static Site site;

    @BeforeAll
    static void start() {
        String url = Engine.H2.freshUrl();
        site = DemoShop.open(url, CLOCK);
        database = Database.open(url);
        desk = DemoShop.desk(database);
    }

    @AfterAll
    static void stop() {
        database.close();
        site.close();
    }

    private static Visitor planner() {
        return Visitor.ofDemo(site.port(), Role.PLANNER);
    }

    private static String now() {
        return LocalDateTime.ofInstant(CLOCK.instant(), ZoneOffset.UTC).toString();
    }

    private static Verdict verdict(String tag) {
        return desk.mayHeat(tag, Optional.empty(), CLOCK.instant()).verdict();
    }

    private static HttpResponse<String> load(Visitor visitor, String oven, String setPoint, String tag) {
        return visitor.submit(
                "/ovens/load",
                "/ovens/load",
                "oven",
                oven,
                "setPoint",
                setPoint,
                "at",
                now(),
                "humidity",
                "",
                "code",
                "",
                "tag",
                tag);
    }

    /** Address of the load that an item is in. */
    private static String run(Visitor visitor, String tag) {
        Element item = visitor.page("/ovens")
                .select("article li:contains(" + tag + ")")
                .first();
        assertThat(item).as("the card of " + tag).isNotNull();
        return item.parents().select("a[href*=/loads/]").first().attr("href");
    }

    private static HttpResponse<String> unload(Visitor visitor, String tag, String hours, String... more) {
        String run = run(visitor, tag);
        String[] fields = new String[8 + more.length];
        String[] usual = {"outAt", now(), "hours", hours, "tag", tag, "to", "DRY-5"};
        System.arraycopy(usual, 0, fields, 0, usual.length);
        System.arraycopy(more, 0, fields, usual.length, more.length);
        return visitor.submit(run, run + "/out", fields);
    }

    @Test
    void aPartThatIsLoadedAndUnloadedAfterItsTimeIsClear() {
        Visitor visitor = planner();
        assertThat(verdict("T-436")).isEqualTo(Verdict.BAKE);
        assertThat(load(visitor, "OVEN-3", "125", "T-436").statusCode()).isEqualTo(303);
        assertThat(verdict("T-436")).isEqualTo(Verdict.WAIT);

        CLOCK.passes(Duration.ofMinutes(30));
        String run = run(visitor, "T-436");
        assertThat(visitor.submit(run, run + "/hot", "hotAt", now()).statusCode())
                .isEqualTo(303);
        CLOCK.passes(Duration.ofHours(8));

        assertThat(unload(visitor, "T-436", "8").statusCode()).isEqualTo(303);
        assertThat(verdict("T-436")).isEqualTo(Verdict.CLEAR);
        assertThat(visitor.page("/ovens").select("#ovens-now").text()).doesNotContain("T-436");
    }

    @Test
    void anEarlyUnloadSaysWhatIsMissingAndAsks() {
        Visitor visitor = planner();
        load(visitor, "OVEN-1", "125", "T-424");
        CLOCK.passes(Duration.ofHours(4));

        HttpResponse<String> refused = unload(visitor, "T-424", "3");
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(Jsoup.parse(refused.body()).text()).contains("Too early", "T-424: 8 h missing of 11 h");
        assertThat(verdict("T-424")).isEqualTo(Verdict.WAIT);

        assertThat(unload(visitor, "T-424", "3", "early", "yes").statusCode()).isEqualTo(303);
        assertThat(verdict("T-424")).isEqualTo(Verdict.BAKE);
    }

    @Test
    void whatIsScannedJoinsTheLoadOrIsRefusedAtOnce() {
        Visitor visitor = planner();
        String[] fields = {"oven", "OVEN-1", "setPoint", "125", "at", now(), "humidity", "", "code", "T-424"};
        String path = "/ovens/load/scan";

        Document added = Jsoup.parse(visitor.submit("/ovens/load", path, fields).body());
        assertThat(added.select(".banner").text()).contains("T-424 may go in. Chosen so far: 1.");
        assertThat(added.select("input[name=tag][value=T-424][checked]")).hasSize(1);
        assertThat(added.select("input[name=code]").val()).isEmpty();

        fields[9] = "R-421";
        HttpResponse<String> weak = visitor.submit("/ovens/load", path, with(fields, "tag", "T-424"));
        assertThat(refusal(weak)).contains("R-421", "bears 40 °C");
        assertThat(Jsoup.parse(weak.body()).select("input[name=tag][checked]").eachAttr("value"))
                .containsExactly("T-424");
        fields[9] = "T-424";
        assertThat(refusal(visitor.submit("/ovens/load", path, with(fields, "tag", "T-424"))))
                .contains("among the chosen already");
        fields[9] = "oven-3";
        Document oven = Jsoup.parse(visitor.submit("/ovens/load", path, fields).body());
        assertThat(oven.select("input[name=oven][checked]").val()).isEqualTo("OVEN-3");
    }

    @Test
    void aBagAWeakReelAndADampOvenAreRefusedWithWords() {
        Visitor visitor = planner();

        assertThat(refusal(load(visitor, "OVEN-1", "125", "R-401"))).contains("Bags must not be in the oven");
        assertThat(refusal(load(visitor, "OVEN-1", "125", "R-421"))).contains("bears 40 °C", "40 °C for 312 h");
        assertThat(refusal(load(visitor, "OVEN-3", "90", "T-418"))).contains("at or below 5 % RH");
        assertThat(refusal(load(visitor, "OVEN-1", "110", "T-418"))).contains("no bake for it at this set-point");
        assertThat(refusal(load(visitor, "OVEN-2", "125", "T-418"))).contains("35 °C to 95 °C");
        assertThat(refusal(load(visitor, "OVEN-1", "125", "R-000"))).contains("No item has this tag");
        assertThat(verdict("T-418")).isEqualTo(Verdict.BAKE);
    }

    private static String refusal(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).isEqualTo(422);
        return Jsoup.parse(answer.body()).select("main").text();
    }

    @Test
    void whatIsNeededFirstComesFirst() {
        Visitor visitor = planner();

        visitor.submit("/ovens/needs/T-444", "/ovens/needs/T-444", "neededBy", "2026-03-20T08:00");

        Document page = visitor.page("/ovens");
        assertThat(page.select("#ovens-now tbody tr").first().text()).contains("T-444", "Fri 20 Mar 2026 08:00");
    }

    @Test
    void anOvenIsAddedAndChanged() {
        Visitor visitor = planner();
        String[] good = {"code", "OVEN-9", "name", "Small oven", "positions", "2", "heatUp", "15", "lowest", "40"};

        HttpResponse<String> refused = visitor.submit("/ovens/new", "/ovens/new", with(good, "highest", "30"));
        assertThat(refusal(refused)).contains("Must not be below the lowest");
        assertThat(visitor.submit("/ovens/new", "/ovens/new", with(good, "highest", "130"))
                        .statusCode())
                .isEqualTo(303);
        assertThat(refusal(visitor.submit("/ovens/new", "/ovens/new", with(good, "highest", "130"))))
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
        Visitor clerk = Visitor.ofDemo(site.port(), Role.CLERK);

        assertThat(clerk.get("/ovens").statusCode()).isEqualTo(200);
        assertThat(clerk.get("/ovens/load").statusCode()).isEqualTo(200);
        assertThat(clerk.get("/ovens/new").statusCode()).isEqualTo(403);
    }
}
