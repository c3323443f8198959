package bagclock.ovens;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.DemoShop;
import bagclock.Visitor;
import bagclock.core.oven.Run;
import bagclock.platform.Role;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A published plan in which a lot leaves its run early and another joins it late, as each page and file shows it. */
class StaggeredSiteTest {
    private static final String RULES = "/ovens/plan/rules";
    private static final String[] DOORS_ARE_OPENED = OvenShop.fields(
            "fence=0;movePrice=30;coolDown=15;turnaround=15;change=60;search=0;patience=168;weekends=yes;door=30");

    private static OvenShop shop;
    private static Visitor planner;
    private static Instant start;

    @BeforeAll
    static void publishAStaggeredPlan() {
        shop = new OvenShop();
        planner = shop.person(Role.PLANNER);
        DemoShop.searchNothing(shop.site());
        assertThat(planner.submit(RULES, RULES, DOORS_ARE_OPENED).statusCode()).isEqualTo(303);
        shop.publish(run -> run.lots().contains("T-436")
                ? staggered(run)
                : run.oven().equals("OVEN-3") ? OvenShop.later(run, Duration.ofHours(9)) : run);
    }

    @AfterAll
    static void stop() {
        shop.close();
    }

    /** T-436 needs 7 h and is out after eight; T-423 comes when its place is free, for its 9 h; T-422 has had its own long before. */
    private static Run staggered(Run run) {
        assertThat(run.lots()).containsExactlyInAnyOrder("T-422", "T-423", "T-424", "T-436");
        start = run.startAt();
        return new Run(
                run.oven(),
                run.temperature(),
                List.of(
                        new Run.Stay("T-422", start, after("PT10H30M")),
                        new Run.Stay("T-424", start, after("PT18H30M")),
                        new Run.Stay("T-436", start, after("PT8H")),
                        new Run.Stay("T-423", after("PT8H"), after("PT18H30M"))));
    }

    private static Instant after(String time) {
        return start.plus(Duration.parse(time));
    }

    private static String run(Document page) {
        return page.select("tr:contains(T-436):contains(T-422)").text();
    }

    @Test
    void thePlanSaysWhoJoinsAndLeavesAndWhatAnOpeningCosts() {
        Document page = planner.page("/ovens/plan");

        assertThat(run(page))
                .contains("T-436 leaves Fri 00:00 (UTC).", "T-423 joins Fri 00:00 (UTC).")
                .contains("Each opening adds 30 min to what stays in.")
                .doesNotContain("can't be as planned");
        assertThat(page.select(".lanes title").text()).contains("T-422, T-423, T-424, T-436. Positions: 3 of 4.");
        assertThat(page.select("#lots-title ~ div tr:has(.code:containsOwn(T-423))")
                        .text())
                .contains("125 °C, from Fri 00:00 (UTC)", "Fri 10:30 (UTC)");
    }

    @Test
    void thePrintOfTheDaySaysItToo() {
        assertThat(run(planner.page("/ovens/plan/print")))
                .contains("T-436 leaves Fri 00:00 (UTC).", "T-423 joins Fri 00:00 (UTC).");
    }

    @Test
    void filesForOtherProgramsHaveEachLotsOwnTimes() {
        assertThat(planner.get("/ovens/plan/plan.csv").body())
                .contains("T-436,2026-03-12T16:00:00Z,2026-03-13T00:00:00Z")
                .contains("T-423,2026-03-13T00:00:00Z,2026-03-13T10:30:00Z");
        String calendar = planner.get("/ovens/plan/plan.ics").body().replace("\r\n ", "");
        assertThat(Stream.of(calendar.split("\r\n")).filter(line -> line.startsWith("DESCRIPTION")))
                .singleElement()
                .asString()
                .contains("T-436 leaves Fri 13 Mar 2026 00:00 (UTC)", "T-423 joins Fri 13 Mar 2026 00:00 (UTC)");
    }

    @Test
    void whatIsToBeDoneNextNamesEachOpening() {
        assertThat(planner.page("/ovens/plan").select(".trail").text())
                .contains("Bench oven: take out T-436.", "Bench oven: load at 125 °C: T-423.");
    }

    @Test
    void aDraftSaysWhichLotsItMovesTogetherAndWhichWay() {
        String draft = Visitor.target(planner.submit("/ovens/plan", "/ovens/plan/drafts"));

        assertThat(planner.page(draft)
                        .select("section[aria-labelledby=draft-title] li")
                        .eachText())
                .anySatisfy(line -> assertThat(line)
                        .startsWith("T-418, T-419: ")
                        .contains(" earlier in Bench oven, ")
                        .endsWith(" instead of Fri 12:50 (UTC)."));
    }

    @Test
    void whoMovesTheRunByHandIsToldThatAllGoTogetherThen() {
        String draft = Visitor.target(planner.submit(
                "/ovens/plan",
                "/ovens/plan/drafts",
                OvenShop.fields("kind=move;moveTag=T-436;moveOven=OVEN-3;moveTo=2026-03-16T08:00;shift=0")));

        assertThat(planner.page(draft)
                        .select("section[aria-labelledby=draft-title]")
                        .text())
                .contains("The run with T-436 goes to Bench oven", "all go in and come out together");
    }
}
