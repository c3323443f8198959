package bagclock.boards;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.DemoShop;
import bagclock.HandClock;
import bagclock.Site;
import bagclock.Visitor;
import bagclock.platform.Engine;
import bagclock.platform.Role;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Boards and jobs as a technician without a script sees them. */
class BoardsSiteTest {
    private static final HandClock CLOCK = new HandClock(Instant.parse("2026-03-12T13:20:00Z"));
    private static final String HALF_DONE = "/boards/HQB-0117/jobs/1";

    private static Site site;

    @BeforeAll
    static void start() {
        site = DemoShop.open(Engine.H2.freshUrl(), CLOCK, "Europe/Berlin");
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    private static Visitor technician() {
        return Visitor.ofDemo(site.port(), Role.TECHNICIAN);
    }

    private static Visitor engineer() {
        return Visitor.ofDemo(site.port(), Role.ENGINEER);
    }

    private static String sent(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).as(Jsoup.parse(answer.body()).text()).isEqualTo(303);
        return Visitor.target(answer);
    }

    private static String newBoard(Visitor visitor, String serial, String... more) {
        String[] fields = new String[4 + more.length];
        System.arraycopy(new String[] {"serial", serial, "type", "HQB-S1"}, 0, fields, 0, 4);
        System.arraycopy(more, 0, fields, 4, more.length);
        return sent(visitor.submit("/boards/new", "/boards/new", fields));
    }

    private static String newJob(Visitor visitor, String serial, String location, String fate) {
        return sent(visitor.submit(
                "/boards/" + serial,
                "/boards/" + serial + "/jobs",
                "location",
                location,
                "why",
                "It is deaf.",
                "fate",
                fate));
    }

    private static HttpResponse<String> step(Visitor visitor, String job) {
        return visitor.submit(job, job + "/step", "why", "");
    }

    private static String verdict(Document page) {
        return page.select(".answer .call").text();
    }

    @Test
    void openJobsBoardsAndTypesAreListed() {
        Document page = technician().page("/boards");

        assertThat(page.select("a").eachAttr("href"))
                .contains(HALF_DONE, "/boards/HQB-0204", "/boards/types/HQB-S1", "/boards/releases");
        assertThat(page.select("section[aria-labelledby=jobs-title]").text())
                .contains("Now: Remove. Channel 3 is deaf, work order HQ-3317.");
    }

    @Test
    void aHalfDoneJobGoesOnWhereItStoppedWithOneLine() {
        Document page = engineer().page(HALF_DONE);

        assertThat(page.select(".steps [aria-current=step]").text()).contains("Remove");
        assertThat(page.select(".answer")).hasSize(1);
        assertThat(page.select(".answer [role=status] .sentence").text()).isNotEmpty();
    }

    /** Case 60: field time is unknown exposure, and the board's limit is asked for first. */
    @Test
    void aBoardFromTheFieldIsHeldUntilItsLimitIsKnown() {
        Document page = technician().page("/boards/HQB-0204/jobs/1");

        assertThat(verdict(page)).isEqualTo("Hold");
        assertThat(page.select(".reasons").text()).contains("neither is the heat that the board bears");
        assertThat(page.select("main").text()).contains("Released for this one heat by Process engineer");
    }

    /** Case 60 goes on: with the limit, the bake of the longest column that the board bears. */
    @Test
    void withItsLimitAFieldBoardIsToBeBaked() {
        Visitor technician = technician();
        newBoard(technician, "FLD-1", "field", "yes");
        Document page = technician.page("/boards/FLD-1");

        assertThat(page.select("main").text()).contains("Back from the field");
        assertThat(page.select(".panel .verdict").first().text()).isEqualTo("Bake");
    }

    /** Case 68: an old part that is thrown away needs no bake; its neighbours above 200 C do count. */
    @Test
    void neighboursDecideWhereTheOldPartIsScrapped() {
        Visitor technician = technician();
        newBoard(technician, "SCR-1", "field", "yes");
        String job = newJob(technician, "SCR-1", "U1", "scrap");
        step(technician, job);

        Document hot = technician.page(job + "?profile=none");
        Document measured = technician.page(job + "?profile=HQB-S1.1");

        assertThat(hot.select(".answer").text()).contains("every part whose peak is not measured counts as above");
        assertThat(hot.select("#why-title ~ .table tbody th").eachText()).contains("U1", "U2", "U7", "Q3");
        assertThat(measured.select("#why-title ~ .table tbody th").eachText())
                .contains("U2")
                .doesNotContain("U7");
    }

    @Test
    void aWholeJobIsToldStepByStepByTwoPeopleAndEachHeatHasItsRecord() {
        Visitor one = technician();
        newBoard(one, "JOB-1");
        String job = newJob(one, "JOB-1", "Q3", "analysis");
        sent(step(one, job));
        Visitor other = engineer();
        sent(other.submit(job, job + "/bake", "oven", "OVEN-3", "setPoint", "90", "bakeAt", "2026-03-12T14:20"));
        Document baking = other.page(job);
        assertThat(verdict(baking)).isIn("Wait", "Bake", "Hold", "Clear");
        CLOCK.passes(Duration.ofHours(20));
        one = technician();
        HttpResponse<String> tooLong = one.submit(job, job + "/bake-end", "hours", "21", "at", "2026-03-13T10:20");
        assertThat(Jsoup.parse(tooLong.body()).select("#hours-error").text()).contains("20 h only");
        sent(one.submit(job, job + "/bake-end", "hours", "18", "at", "2026-03-13T10:20"));
        sent(step(one, job));
        String off = sent(one.submit(job, job + "/heat", "at", "2026-03-13T10:20", "measured", "236"));

        String record = one.page(off).select("a[href~=/heats/]").last().attr("href");
        Document page = one.page(record);
        assertThat(page.select("h1").text()).isEqualTo("Record of a heat on JOB-1");
        assertThat(page.select("main").text())
                .contains("Removal for re-use", "236 °C", "by Rework technician", "Hash of the entry");
        assertThat(one.page("/items/JOB-1-Q3-1").select("h1").text()).contains("JOB-1-Q3-1");
        sent(step(one, job));
        sent(one.submit(job, job + "/reball", "balledAt", "2026-03-13T10:20", "balledPeak", "225"));
        sent(step(one, job));
        assertThat(one.page(job).select(".sentence").text()).contains("Scan the new part first");
        Document asked = one.page(job + "?part=P-464");
        assertThat(asked.select(".answer").text()).contains("P-464 sits on board HQB-0117");
    }

    /** Two technicians read the same page; the second one's step is refused in words, and nothing is lost. */
    @Test
    void whoIsSecondOnOneJobIsToldWhoWasFirst() {
        Visitor one = technician();
        Visitor two = engineer();
        newBoard(one, "TWO-1");
        String job = newJob(one, "TWO-1", "U7", "scrap");
        String seen = two.page(job).select("input[name=seen]").first().val();
        String csrf = two.page(job).select("input[name=csrf]").first().val();
        sent(step(one, job));

        HttpResponse<String> late = two.post(
                job + "/step",
                "csrf",
                csrf,
                "seen",
                seen,
                "key",
                "a-key-of-the-second-technician",
                "step",
                "check",
                "why",
                "Looked at it too.");
        Document page = Jsoup.parse(late.body());

        assertThat(late.statusCode()).isEqualTo(422);
        assertThat(page.select("[role=alert]").text()).contains("Rework technician wrote something about board TWO-1");
        assertThat(page.select(".steps [aria-current=step]").text()).contains("Bake the board");
        assertThat(page.select("textarea[name=why]").text()).isEqualTo("Looked at it too.");
    }

    /** Rule 15: name, reason, one heat; what has another way out can't be released. */
    @Test
    void aReleaseHoldsForOneHeatAndStandsOnItsRecord() {
        Visitor engineer = engineer();
        newBoard(engineer, "REL-1", "field", "yes");
        String job = newJob(engineer, "REL-1", "U7", "reuse");
        step(engineer, job);
        step(engineer, job);
        assertThat(verdict(engineer.page(job))).isEqualTo("Bake");
        sent(engineer.submit(job, job + "/release", "reason", "Customer accepts the risk."));
        sent(engineer.submit(job, job + "/heat", "at", nowField(), "measured", "230"));
        Document releases = engineer.page("/boards/releases");
        String record =
                releases.select("tr:contains(REL-1) a[href~=/heats/]").last().attr("href");

        assertThat(releases.select("tr:contains(REL-1)").text()).contains("Customer accepts the risk.", "Bake");
        assertThat(engineer.page(record).select("main").text())
                .contains("Released by Process engineer", "Customer accepts the risk.");
        assertThat(technician().page("/boards/REL-1").select("main").text()).contains("REL-1-U7-2");
    }

    private static String nowField() {
        return CLOCK.instant()
                .atZone(ZoneId.of("Europe/Berlin"))
                .toLocalDateTime()
                .toString()
                .substring(0, 16);
    }

    @Test
    void aPartsListNamesItsFaultsAndCreatesWhatIsUnknown() {
        Visitor engineer = engineer();
        sent(engineer.submit(
                "/boards/types/new", "/boards/types/new", "number", "TST-1", "description", "Test", "bears", "120"));
        String text = "part number,quantity,reference designators\nSNR-1001,1,U1\nNEW-1,2,C1-C2\nBAD-1,3,R1\n";
        HttpResponse<String> refused =
                engineer.submit("/boards/types/TST-1/parts", "/boards/types/TST-1/parts", "basedOn", "1", "text", text);
        Document page = Jsoup.parse(refused.body());

        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(page.select("tbody tr").text()).contains("4", "quantity", "The quantity is 3, but 1");
        assertThat(page.select("ul .code, li.code").eachText()).contains("NEW-1");
        sent(engineer.submit(
                "/boards/types/TST-1/parts",
                "/boards/types/TST-1/parts",
                "basedOn",
                "1",
                "text",
                text,
                "good",
                "only"));
        assertThat(engineer.page("/boards/types/TST-1").select("main").text())
                .contains("3 locations, 2 part types", "level not known");
    }

    @Test
    void aProfileIsKeptAndChosenAndWhatIsWrongIsSaidBesideItsField() {
        Visitor technician = technician();
        HttpResponse<String> refused = technician.submit(
                "/boards/types/HQB-S1/profiles/new",
                "/boards/types/HQB-S1/profiles/new",
                "kind",
                "REMOVAL",
                "location",
                "U99",
                "tool",
                "iron",
                "neighbours",
                "U2 hot",
                "minutes",
                "3",
                "measuredOn",
                "2027-01-01",
                "measuredBy",
                "me");
        Document page = Jsoup.parse(refused.body());
        assertThat(page.select(".error").eachAttr("id"))
                .containsExactly("location-error", "neighbours-error", "measuredOn-error");

        sent(technician.submit(
                "/boards/types/HQB-S1/profiles/new",
                "/boards/types/HQB-S1/profiles/new",
                "kind",
                "REMOVAL",
                "location",
                "U7",
                "tool",
                "iron",
                "neighbours",
                "U2 188",
                "minutes",
                "3",
                "measuredOn",
                "2024-01-01",
                "measuredBy",
                "me",
                "elsewhere",
                "90"));
        assertThat(technician.page("/boards/types/HQB-S1").select("main").text())
                .contains("HQB-S1.3", "Older than 12 months");
    }

    /** Rules, 12: in a whole-board heat every part counts; rules, 9: each heat above 200 C is a pass. */
    @Test
    void aWholeBoardHeatOutsideAJobIsAskedReleasedAndRecorded() {
        Visitor engineer = engineer();
        newBoard(engineer, "WAV-1", "field", "yes");
        Document board = engineer.page("/boards/WAV-1");
        assertThat(board.select("form[action=/boards/WAV-1/heat] select[name=profile]"))
                .hasSize(1);
        assertThat(board.select("tbody tr:has(th:contains(U1)) td.number").text())
                .startsWith("0 of");
        String ask = "/boards/WAV-1/heat?profile=none&minutes=4";
        Document asked = engineer.page(ask);
        assertThat(verdict(asked)).isEqualTo("Bake");
        assertThat(asked.select("#why-title ~ .table tbody th").eachText()).contains("U1", "U2", "U7");
        assertThat(technician().page(ask).select("form[action$=/release]")).isEmpty();

        HttpResponse<String> wordless = engineer.submit(ask, "/boards/WAV-1/heat", "at", nowField(), "why", "");
        assertThat(wordless.statusCode()).isEqualTo(422);
        assertThat(Jsoup.parse(wordless.body()).select("#why-error")).hasSize(1);
        String back = sent(engineer.submit(ask, "/boards/WAV-1/heat/release", "reason", "Weighed dry."));
        assertThat(technician().page(back).select("#board-answer .caution").text())
                .contains("Weighed dry.");
        Visitor technician = technician();
        String record =
                sent(technician.submit(back, "/boards/WAV-1/heat", "at", nowField(), "why", "Wave of the second side"));

        Document page = technician.page(record);
        assertThat(page.select("main").text())
                .contains("Whole board", "4 min", "Wave of the second side", "Released by", "Weighed dry.");
        assertThat(technician.page(back).select("#board-answer .caution")).isEmpty();
        assertThat(technician
                        .page("/boards/WAV-1")
                        .select("tbody tr:has(th:contains(U1)) td.number")
                        .text())
                .startsWith("1 of");
        assertThat(technician
                        .page("/boards/releases")
                        .select("tr:contains(WAV-1)")
                        .text())
                .contains("Weighed dry.");
    }

    /** Rules, 11: the peak of each part counts; what somebody plans can't make a whole-board heat milder. */
    @Test
    void aPlannedPeakMakesAWholeBoardHeatOnlyStricter() {
        Visitor technician = technician();
        newBoard(technician, "WAV-2", "field", "yes");

        assertThat(verdict(technician.page("/boards/WAV-2/heat?profile=none&peak=150")))
                .isEqualTo(verdict(technician.page("/boards/WAV-2/heat?profile=none")));
        assertThat(verdict(technician.page("/boards/WAV-2/heat?profile=none&peak=300")))
                .isEqualTo("Hold");
        assertThat(technician.get("/boards/WAV-2/heat?peak=hot").statusCode()).isEqualTo(422);
    }

    /** Rules, 12: the timer after a board bake and the limit of replacements are the site's. */
    @Test
    void anEngineerKeepsTheRulesForBoards() {
        Visitor engineer = engineer();
        String path = "/boards/rules";
        assertThat(technician().get(path).statusCode()).isEqualTo(403);
        assertThat(engineer.page(path).select("main").text()).contains("Nobody has decided yet");
        String seen = engineer.page(path).select("input[name=basedOn]").val();
        String csrf = engineer.page(path).select("input[name=csrf]").val();

        HttpResponse<String> refused = engineer.submit(path, path, "within", "soon", "replacements", "0", "months", "");
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(Jsoup.parse(refused.body()).select(".error").eachAttr("id"))
                .containsExactly(
                        "within-error", "replacements-error", "months-error", "harmless-error", "above90-error");

        sent(engineer.submit(
                path, path, "within", "12,5", "replacements", "2", "months", "12", "harmless", "200", "above90", "96"));
        assertThat(engineer.page(path).select("main").text()).contains("Version 1", "by Process engineer");
        assertThat(engineer.page(path).select("#within").val()).isEqualTo("12.5");
        assertThat(technician().page("/boards/types/HQB-S1").select("main").text())
                .contains("12.5 h");
        HttpResponse<String> late = engineer.post(
                path,
                "csrf",
                csrf,
                "basedOn",
                seen,
                "within",
                "1",
                "replacements",
                "1",
                "months",
                "1",
                "harmless",
                "150",
                "above90",
                "10");
        assertThat(late.statusCode()).isEqualTo(422);
        assertThat(Jsoup.parse(late.body()).select("[role=alert]").text()).contains("Somebody else changed the rules");
    }
}
