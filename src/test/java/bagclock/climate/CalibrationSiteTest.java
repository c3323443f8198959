package bagclock.climate;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.DemoShop;
import bagclock.HandClock;
import bagclock.Site;
import bagclock.Visitor;
import bagclock.platform.Role;
import java.time.Instant;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Loggers and ovens past their calibration are named wherever an answer rests on them, in the demonstration's shop. */
class CalibrationSiteTest {
    private static final HandClock CLOCK = new HandClock(Instant.parse("2026-03-12T14:20:00Z"));
    private static final String LOGGER_DUE = "Line top was to be calibrated by 2026-03-01";

    private static Site site;

    @BeforeAll
    static void start() throws InterruptedException {
        site = DemoShop.open(CLOCK);
        logger();
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    private static Visitor visitor(Role role) {
        return Visitor.ofDemo(site.port(), role);
    }

    /** A logger hangs at the placement line. */
    private static void logger() throws InterruptedException {
        upload("Line top", "LINE", "2026-03-12 14:07Z,22.3,41.7");
    }

    private static void upload(String logger, String place, String reading, String... said)
            throws InterruptedException {
        Visitor clerk = visitor(Role.CLERK);
        String text = "Time,Temp °C,RH %\n" + reading + "\n";
        String path = Visitor.target(clerk.upload(
                "/climate/files", new Visitor.FilePart("file", "line.csv", text), "logger", logger, "place", place));
        clerk.submit(path, path + "/import", said);
        for (int i = 0; i < 100 && !clerk.page(path).select("progress").isEmpty(); i++) {
            Thread.sleep(50);
        }
    }

    private static void calibrate(String kind, String name, String due) {
        Visitor engineer = visitor(Role.ENGINEER);
        String page = "/climate/calibrations";
        String token =
                engineer.page(page).select("main input[name=csrf]").first().val();
        engineer.post(page, "csrf", token, "kind", kind, "name", name, "due", due);
    }

    @Test
    void aLoggerPastItsDayIsNamedOnTheItemsPageInTheAnswerForABoardAndInTheRecordOfAHeat() {
        Visitor technician = visitor(Role.TECHNICIAN);
        String question = "/bench?code=T-413&purpose=placement&peak=240&minutes=8";
        assertThat(technician.page("/items/T-413").text()).doesNotContain("was to be calibrated");

        calibrate("LOGGER", "Line top", "2026-03-01");
        assertThat(technician.page("/items/T-413").select(".reasons").text()).contains(LOGGER_DUE);
        assertThat(technician.page("/items/R-409").text()).doesNotContain("was to be calibrated");
        assertThat(technician.page("/boards/HQB-0117/heat?profile=none").text()).contains(LOGGER_DUE);

        String heat =
                Visitor.target(technician.submit(question, "/bench", "at", "2026-03-12T14:10", "measured", "238"));
        calibrate("LOGGER", "Line top", "2027-03-01");
        assertThat(technician.page("/items/T-413").select(".reasons").text()).doesNotContain("was to be calibrated");
        assertThat(technician.page(heat).text()).contains(LOGGER_DUE);
    }

    /** Its readings count there, wherever it is kept; a day before the one by which it was due they are not in doubt. */
    @Test
    void aLoggerThatMeasuredElsewhereThanItIsKeptIsNamedThereToo() throws InterruptedException {
        Visitor technician = visitor(Role.TECHNICIAN);
        upload("Roving", "LINE", "2026-03-12 13:07Z,22.3,41.7");
        upload("Roving", "BENCH-1", "2026-03-12 13:08Z,22.3,41.7", "remember", "file");
        String named = "Roving was to be calibrated by";

        calibrate("LOGGER", "Roving", "2026-03-11");
        assertThat(technician.page("/items/R-409").select(".reasons").text()).contains(named + " 2026-03-11");
        calibrate("LOGGER", "Roving", "2026-03-12");
        assertThat(technician.page("/items/R-409").text()).doesNotContain(named);
    }

    @Test
    void anOvenPastItsDayIsNamedOnTheLoadAndInTheRecordOfItsBake() {
        Visitor planner = visitor(Role.PLANNER);
        calibrate("OVEN", "OVEN-3", "2026-03-11");
        planner.submit(
                "/ovens/load",
                "/ovens/load",
                "oven",
                "OVEN-3",
                "setPoint",
                "125",
                "at",
                "2026-03-12T14:20",
                "humidity",
                "",
                "code",
                "",
                "tag",
                "T-436",
                "offPlan",
                "yes");
        Document card = planner.page("/ovens");
        String load =
                card.select("article:contains(T-436) a[href*=/loads/]").first().attr("href");
        assertThat(planner.page(load).text()).contains("This oven was to be calibrated by 2026-03-11");
        calibrate("OVEN", "OVEN-3", "2027-03-11");

        assertThat(planner.page("/items/T-436").text())
                .contains("Into the oven: OVEN-3, the oven was to be calibrated by 2026-03-11");
    }
}
