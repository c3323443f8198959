package bagclock.ovens;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.Counts;
import bagclock.DemoShop;
import bagclock.Visitor;
import bagclock.platform.Role;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Drafts, what-if, publishing and what other programs get, over HTTP in the demonstration's shop. */
class PlanSiteTest {
    private static final String DRAFTS = "/ovens/plan/drafts";

    private static OvenShop shop;
    private static Visitor planner;

    @BeforeAll
    static void start() {
        shop = new OvenShop();
        planner = shop.person(Role.PLANNER);
        DemoShop.searchNothing(shop.site());
    }

    @AfterAll
    static void stop() {
        shop.close();
    }

    private static HttpResponse<String> ask(String... fields) {
        return planner.submit("/ovens/plan", DRAFTS, fields);
    }

    private static String draft(String... fields) {
        HttpResponse<String> answer = ask(fields);
        assertThat(answer.statusCode()).as(Jsoup.parse(answer.body()).text()).isEqualTo(303);
        return Visitor.target(answer);
    }

    // The clock stands still: plans of one moment have an order too.
    private static void publish(String draft) {
        HttpResponse<String> answer = planner.submit(draft, draft + "/publish");
        assertThat(answer.statusCode()).isEqualTo(303);
    }

    /** What the published plan says of a lot. */
    private static String lot(String tag) {
        return planner.page("/ovens/plan")
                .select("#lots-title ~ div tr:has(.code:contains(" + tag + "))")
                .text();
    }

    private static String text(String path) {
        return planner.page(path).select("main").text();
    }

    @Test
    void aPublishedPlanTellsWhatToDoNextAndEveryLot() {
        Document page = planner.page("/ovens/plan");

        assertThat(page.select(".lanes .planned, .lanes .frozen")).isNotEmpty();
        assertThat(page.select(".lanes .lane")).hasSize(3);
        assertThat(page.select(".trail li")).isNotEmpty();
        assertThat(page.select("#lots-title ~ div tbody tr")).hasSizeGreaterThan(3);
        assertThat(page.select("main").text())
                .contains("Not in the plan: 6.", "R-437: It needs a bake, and none is allowed as things are.")
                .doesNotContain("no oven reaches");
    }

    @Test
    void aLotThatIsNeededTooSoonSaysWhyItIsLate() {
        String draft = draft("kind", "need", "needTag", "T-418", "needBy", "2026-03-12T15:00");

        assertThat(text(draft)).contains("T-418 is needed by Thu 15:00", "late by", "Even with all ovens to itself");
        assertThat(lot("T-418")).contains("early").doesNotContain("late by");
    }

    /** One lot of the story bakes for thirteen days and is needed in six; the rest of what is needed is early. */
    @Test
    void theDemonstrationsPlanTellsWhatWouldMakeItsLateLotOnTime() {
        assertThat(lot("R-421"))
                .contains("late by", "Even with all ovens to itself", "On a carrier that bears 125 °C: out");
        for (String tag : List.of("T-424", "T-436", "T-444", "R-420")) {
            assertThat(lot(tag)).contains("early").doesNotContain("late by");
        }
    }

    @Test
    void aClosedOvenAndARushLotAreShownBeforeTheyCount() {
        String closed = draft(
                "kind", "close", "closeOven", "OVEN-1", "closeFrom", "2026-03-12T14:30", "closeTo", "2026-03-14T08:00");
        assertThat(text(closed)).contains("Tall oven is closed from", "Before and after");

        String rush = draft(
                "kind",
                "rush",
                "rushName",
                "RUSH-1",
                "rushPositions",
                "2",
                "rushTemperature",
                "125",
                "rushHours",
                "9",
                "rushBy",
                "2026-03-13T14:00");
        assertThat(text(rush)).contains("RUSH-1 comes in a rush");
        assertThat(planner.page(rush).select("#run-RUSH-1, .code:contains(RUSH-1)"))
                .isNotEmpty();
        assertThat(text("/ovens/plan")).doesNotContain("RUSH-1");
    }

    @Test
    void badQuestionsAreAnsweredWithWords() {
        assertThat(OvenShop.refusal(
                        ask("kind", "close", "closeOven", "OVEN-9", "closeFrom", "2026-03-13T08:00", "closeTo", "x")))
                .contains("Choose");
        assertThat(OvenShop.refusal(ask(
                        "kind",
                        "close",
                        "closeOven",
                        "OVEN-1",
                        "closeFrom",
                        "2026-03-13T08:00",
                        "closeTo",
                        "2026-03-13T07:00")))
                .contains("Must be after its beginning");
        assertThat(OvenShop.refusal(ask(
                        "kind",
                        "rush",
                        "rushName",
                        "R",
                        "rushPositions",
                        "0",
                        "rushTemperature",
                        "125",
                        "rushHours",
                        "8",
                        "rushBy",
                        "2026-03-11T14:00")))
                .contains("This is past");
        assertThat(text(draft(
                        "kind",
                        "rush",
                        "rushName",
                        "HUGE",
                        "rushPositions",
                        "99",
                        "rushTemperature",
                        "125",
                        "rushHours",
                        "8",
                        "rushBy",
                        "2026-03-13T14:00")))
                .contains("HUGE is not in the plan: it has more positions");
    }

    @Test
    void whatCannotBeSupposedIsRefusedBesideItsField() {
        String closed = draft(
                "kind", "close", "closeOven", "OVEN-3", "closeFrom", "2026-04-20T08:00", "closeTo", "2026-04-21T08:00");
        publish(closed);

        assertThat(OvenShop.refusal(ask(
                        "kind",
                        "close",
                        "closeOven",
                        "OVEN-3",
                        "closeFrom",
                        "2026-04-20T20:00",
                        "closeTo",
                        "2026-04-22T08:00")))
                .contains("out of service then already");
        assertThat(OvenShop.refusal(ask("kind", "need", "needTag", "NOBODY", "needBy", "2026-03-14T08:00")))
                .contains("Choose");
        assertThat(text(draft("kind", "need", "needTag", "T-418", "needBy", "2026-03-12T10:00")))
                .contains("T-418 is late already: it was needed by");
        assertThat(OvenShop.refusal(ask(
                        "kind",
                        "rush",
                        "rushName",
                        "T-418",
                        "rushPositions",
                        "1",
                        "rushTemperature",
                        "125",
                        "rushHours",
                        "8",
                        "rushBy",
                        "2026-03-13T14:00")))
                .contains("A lot has this name already");
    }

    @Test
    void importanceIsKeptAndAnotherTimeLeavesIt() {
        String path = "/ovens/needs/T-418";
        assertThat(OvenShop.refusal(planner.submit(path, path, "neededBy", "", "weight", "0")))
                .contains("100");
        planner.submit(path, path, "neededBy", "2026-03-20T08:00", "weight", "5");
        publish(draft("kind", "need", "needTag", "T-418", "needBy", "2026-03-21T08:00"));

        assertThat(text("/ovens/plan")).contains("counts 5 times");
        assertThat(planner.page(path).select("#weight").val()).isEqualTo("5");
        assertThat(planner.page(path).select("#neededBy").val()).isEqualTo("2026-03-21T08:00");
    }

    @Test
    void ofPlansPublishedInOneMomentTheLastCounts() {
        for (int day = 1; day <= Counts.of(2, 6); day++) {
            String by = "2026-03-2" + day + "T08:00";
            publish(draft("kind", "need", "needTag", "T-419", "needBy", by));
            assertThat(planner.page("/ovens/needs/T-419").select("#neededBy").val())
                    .isEqualTo(by);
            String late = draft("kind", "pin", "moveTag", "T-419");
            publish(late);
            assertThat(planner.page("/ovens/plan").select("tr:has(.code:contains(T-419)) td:contains(pinned)"))
                    .isNotEmpty();
            publish(draft("kind", "unpin", "moveTag", "T-419"));
            assertThat(planner.page("/ovens/plan").select("tr:has(.code:contains(T-419)) td:contains(pinned)"))
                    .isEmpty();
        }
    }

    @Test
    void aRushLotHasItsImportance() {
        String[] rush = {
            "kind",
            "rush",
            "rushName",
            "HEAVY",
            "rushPositions",
            "1",
            "rushTemperature",
            "125",
            "rushHours",
            "8",
            "rushBy",
            "2026-03-13T14:00",
            "rushWeight"
        };
        assertThat(OvenShop.refusal(
                        ask(Stream.concat(Stream.of(rush), Stream.of("0")).toArray(String[]::new))))
                .contains("100");
        assertThat(text(draft(Stream.concat(Stream.of(rush), Stream.of("7")).toArray(String[]::new))))
                .contains("HEAVY comes in a rush, needed by Fri 14:00 (UTC) (counts 7 times)");
    }

    @Test
    void anOvenHasItsOwnPausesOrTheSites() {
        String path = "/ovens/OVEN-3/change";
        String[] oven = {
            "name", "Bench oven", "positions", "4", "heatUp", "20", "lowest", "40", "highest", "130", "coolDown", "90"
        };
        assertThat(OvenShop.refusal(planner.submit(
                        path,
                        path,
                        Stream.concat(Stream.of(oven), Stream.of("turnaround", "20"))
                                .toArray(String[]::new))))
                .contains("Give both this time");
        assertThat(planner.submit(path, path, oven).statusCode()).isEqualTo(303);

        assertThat(planner.page(path).select("#coolDown").val()).isEqualTo("90");
        assertThat(planner.page(path).select("#change").val()).isEmpty();
        assertThat(text(draft(
                        "kind",
                        "rush",
                        "rushName",
                        "COOLING",
                        "rushPositions",
                        "1",
                        "rushTemperature",
                        "128",
                        "rushHours",
                        "8",
                        "rushBy",
                        "2026-03-12T15:00")))
                .contains("COOLING comes in a rush", "Even with all ovens to itself");
    }

    @Test
    void aRunIsMovedOrTheRefusalSaysWhyNot() {
        String first = planner.page("/ovens/plan")
                .select("input[name=moveTag]")
                .first()
                .val();
        assertThat(text(draft(
                        "kind",
                        "move",
                        "moveTag",
                        first,
                        "moveOven",
                        "OVEN-1",
                        "moveTo",
                        "2026-03-22T08:00",
                        "shift",
                        "0")))
                .contains("The run with " + first + " goes to Tall oven");

        Document page = planner.page("/ovens/plan");
        String hot = page.select("tr:has(td:contains(125 °C)) input[name=moveTag]")
                .first()
                .val();
        assertThat(OvenShop.refusal(ask(
                        "kind",
                        "move",
                        "moveTag",
                        hot,
                        "moveOven",
                        "OVEN-2",
                        "moveTo",
                        "2026-03-22T08:00",
                        "shift",
                        "0")))
                .contains("can't be in Low-heat oven", "May not be baked so in this oven: " + hot);
    }

    @Test
    void otherProgramsGetTheSamePlan() {
        String csv = planner.get("/ovens/plan/plan.csv").body();
        String calendar = planner.get("/ovens/plan/plan.ics").body();

        assertThat(csv).startsWith("oven,set_point_c,item,in_at,out_at\r\n").contains("OVEN-");
        assertThat(calendar).startsWith("BEGIN:VCALENDAR\r\n").endsWith("END:VCALENDAR\r\n");
        assertThat(calendar.lines().allMatch(line -> line.getBytes(StandardCharsets.UTF_8).length <= 75))
                .isTrue();
        assertThat(planner.page("/ovens/plan/print").select("tbody tr")).isNotEmpty();
    }

    @Test
    void aCalendarThatIsReadAgainFindsAMovedRunUnderItsName() {
        String tag =
                planner.page("/ovens/plan").select("input[name=moveTag]").last().val();
        Map<String, String> before = events(tag);
        String[] move = {
            "kind", "move", "moveTag", tag, "moveOven", "OVEN-1", "moveTo", "2026-05-22T08:00", "shift", "0"
        };
        publish(draft(move));
        Map<String, String> after = events(tag);

        assertThat(before).hasSize(1).containsKeys(after.keySet().toArray(String[]::new));
        assertThat(before.values()).noneMatch(event -> event.contains("DTSTART:20260522T080000Z"));
        assertThat(after.values())
                .singleElement()
                .asString()
                .contains("DTSTART:20260522T080000Z", "STATUS:CONFIRMED", "LAST-MODIFIED:20260312T142000Z")
                .doesNotContain("SEQUENCE:0");
    }

    /** The entries that name a lot, by their UID. */
    private static Map<String, String> events(String tag) {
        String calendar = planner.get("/ovens/plan/plan.ics").body().replace("\r\n ", "");
        return Stream.of(calendar.split("BEGIN:VEVENT"))
                .filter(event -> event.contains(tag))
                .collect(Collectors.toMap(
                        event -> event.lines()
                                .filter(line -> line.startsWith("UID:"))
                                .findFirst()
                                .orElseThrow(),
                        event -> event));
    }

    @Test
    void aDraftGetsBetterByItselfUntilItIsPublished() throws InterruptedException {
        DemoShop.searchBriefly(shop.site());
        String draft = draft();
        assertThat(text(draft)).contains("goes on");
        for (int tries = 0; tries < 100 && text(draft).contains("goes on"); tries++) {
            Thread.sleep(200);
        }
        assertThat(text(draft)).doesNotContain("goes on").contains("Proved");
        DemoShop.searchNothing(shop.site());
    }

    @Test
    void rulesAreKeptAndRefusedWithWords() {
        String path = "/ovens/plan/rules";
        String[] wrong =
                OvenShop.fields("opens=9 am;closes=18:00;fence=60;movePrice=30;coolDown=15;turnaround=90;change=60;"
                        + "search=20;door=");
        assertThat(OvenShop.refusal(planner.submit(path, path, wrong)))
                .contains("Write hours and minutes", "Must not be shorter");
        assertThat(planner.get(path).statusCode()).isEqualTo(200);
        assertThat(shop.person(Role.CLERK).get(path).statusCode()).isEqualTo(403);
        assertThat(shop.person(Role.CLERK).get("/ovens/plan").statusCode()).isEqualTo(200);
    }
}
