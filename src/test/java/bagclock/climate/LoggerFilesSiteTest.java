package bagclock.climate;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.DemoShop;
import bagclock.HandClock;
import bagclock.Site;
import bagclock.Visitor;
import bagclock.platform.Role;
import java.net.http.HttpResponse;
import java.time.Instant;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Files of loggers over HTTP, in the demonstration's shop: upload, what must be said, preview, import, taking back. */
class LoggerFilesSiteTest {
    private static final HandClock CLOCK = new HandClock(Instant.parse("2026-03-12T14:20:00Z"));

    private static Site site;

    @BeforeAll
    static void start() {
        site = DemoShop.open(CLOCK);
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    private static Visitor clerk() {
        return Visitor.ofDemo(site.port(), Role.CLERK);
    }

    private static String upload(Visitor visitor, String logger, String text) {
        HttpResponse<String> answer = visitor.upload(
                "/climate/files",
                new Visitor.FilePart("file", logger + ".csv", text),
                "logger",
                logger,
                "place",
                "LINE");
        assertThat(answer.statusCode()).isEqualTo(303);
        return Visitor.target(answer);
    }

    private static Document done(Visitor visitor, String path) throws InterruptedException {
        Document page = visitor.page(path);
        for (int i = 0; i < 100 && !page.select("progress").isEmpty(); i++) {
            Thread.sleep(50);
            page = visitor.page(path);
        }
        return page;
    }

    @Test
    void whatAFileLeavesOpenIsAskedOnceAndKeptForTheLogger() throws InterruptedException {
        Visitor visitor = clerk();
        String text = "Time;Temperatur;Feuchte\n03/03/2026 10:07;22,4;48,7\n03/03/2026 10:08;22,5;48,8\n";
        String path = upload(visitor, "Line 1", text);
        Document asked = visitor.page(path);

        assertThat(asked.text()).contains("Something must be said before this file can be read.");
        assertThat(asked.select("button").eachText()).doesNotContain("Import these readings");

        String[] said = {"zone", "Europe/Berlin", "order", "DAY_FIRST", "unit", "CELSIUS"};
        Document looked =
                Jsoup.parse(visitor.post(path + "/look", withToken(asked, said)).body());
        assertThat(looked.select("table").first().text()).contains("Tue 3 Mar 2026 09:07 (UTC) 22.4 °C 48.7 % RH");
        assertThat(visitor.page("/climate/LINE").text()).doesNotContain("48.7 % RH");

        assertThat(visitor.post(path + "/import", withToken(asked, said)).statusCode())
                .isEqualTo(303);
        assertThat(done(visitor, path).text()).contains("kept 2, there before 0, refused 0");

        Document next = visitor.page(upload(visitor, "Line 1", text.replace("10:08", "10:09")));
        assertThat(next.select("input[name=zone]").val()).isEqualTo("Europe/Berlin");
        assertThat(next.select("button").eachText()).contains("Import these readings");
    }

    private static String zoneOf(Visitor visitor, String path) {
        return visitor.page(path).select("input[name=zone]").val();
    }

    @Test
    void whatWasSaidOfALoggerIsNotChangedBySayingOtherwiseOnce() throws InterruptedException {
        Visitor visitor = clerk();
        String text = "Time;Temp °C;Feuchte\n2026-03-04 10:07;22,4;48,7\n";
        String first = upload(visitor, "Line 5", text);
        visitor.submit(first, first + "/import", "zone", "Europe/Berlin");
        done(visitor, first);

        String travelled = upload(visitor, "Line 5", text.replace("10:07", "10:27"));
        HttpResponse<String> unsaid = visitor.submit(travelled, travelled + "/import", "zone", "Europe/London");
        assertThat(unsaid.statusCode()).isEqualTo(422);
        Document asked = Jsoup.parse(unsaid.body());
        assertThat(asked.select("fieldset:has(input[name=remember])").text())
                .contains(
                        "Line 5 was said to be otherwise", "Zone of the logger's clock: Europe/Berlin", "Choose one.");

        visitor.submit(travelled, travelled + "/import", "zone", "Europe/London", "remember", "file");
        assertThat(done(visitor, travelled).text()).contains("kept 1");
        String next = upload(visitor, "Line 5", text.replace("10:07", "10:37"));
        assertThat(zoneOf(visitor, next)).isEqualTo("Europe/Berlin");

        visitor.submit(next, next + "/import", "zone", "Europe/London", "remember", "logger");
        done(visitor, next);
        assertThat(zoneOf(visitor, upload(visitor, "Line 5", text.replace("10:07", "10:47"))))
                .isEqualTo("Europe/London");
    }

    /** ECMA-376 (2006), Part 4, 3.17.4.1: 38749 is 1 February 2006, so 46093 is 12 March 2026. */
    @Test
    void aSpreadsheetsDaysAreSaidOnceForALogger() throws InterruptedException {
        Visitor visitor = clerk();
        String text = "Time;Temp °C;Feuchte\n46093,5034;22,4;48,7\n46093,5041;22,5;48,8\n";
        String first = upload(visitor, "Line 7", text);
        assertThat(visitor.page(first).select("input[name=days][checked]")).isEmpty();
        String[] said = {"zone", "Europe/Berlin", "days", "yes"};
        assertThat(visitor.submit(first, first + "/import", said).statusCode()).isEqualTo(303);
        assertThat(done(visitor, first).text()).contains("kept 2");
        assertThat(visitor.page("/climate/LINE").text()).contains("48.8 % RH");

        Document next = visitor.page(upload(visitor, "Line 7", text.replace("46093,", "46092,")));
        assertThat(next.select("input[name=days][checked]")).isNotEmpty();
        assertThat(next.select("button").eachText()).contains("Import these readings");
    }

    /** A file that writes its offset asks for no zone, and takes away none. */
    @Test
    void whatAFileDoesNotAskStaysAsItWasSaid() throws InterruptedException {
        Visitor visitor = clerk();
        String first = upload(visitor, "Line 6", "Time,Temp °C,RH %\n2026-03-05 10:07,22.4,48.7\n");
        visitor.submit(first, first + "/import", "zone", "Europe/Berlin");
        done(visitor, first);
        String second = upload(visitor, "Line 6", "Time,Temp °C,RH %\n2026-03-05 10:17Z,22.4,48.7\n");
        assertThat(visitor.submit(second, second + "/import").statusCode()).isEqualTo(303);
        done(visitor, second);

        assertThat(zoneOf(visitor, upload(visitor, "Line 6", "Time,Temp °C,RH %\n2026-03-05 10:27,22.4,48.7\n")))
                .isEqualTo("Europe/Berlin");
    }

    private static String[] withToken(Document page, String... said) {
        String[] fields = java.util.Arrays.copyOf(said, said.length + 2);
        fields[said.length] = "csrf";
        fields[said.length + 1] = page.select("main input[name=csrf]").first().val();
        return fields;
    }

    @Test
    void aFileIsTakenBackAndCanBeImportedAgain() throws InterruptedException {
        Visitor visitor = clerk();
        String text = "Time,Temp °C,RH %\n2026-03-12 14:07Z,33.3,71.7\n2026-03-12 14:08Z,33.4,71.8\n";
        String path = upload(visitor, "Line 2", text);
        visitor.submit(path, path + "/import");
        done(visitor, path);
        assertThat(visitor.page("/climate/LINE").text()).contains("71.7 % RH");

        visitor.submit(path, path + "/take-back");
        assertThat(visitor.page("/climate/LINE").text()).doesNotContain("71.7 % RH");
        assertThat(visitor.page(path).text()).contains("2 readings");

        visitor.submit(path, path + "/import");
        assertThat(done(visitor, path).text()).contains("kept 2");
        assertThat(visitor.page("/climate/LINE").text()).contains("71.7 % RH");
        visitor.submit(path, path + "/take-back");
    }

    @Test
    void anOverlappingFileDoublesNothingAndOtherValuesAreNamed() throws InterruptedException {
        Visitor visitor = clerk();
        String text = "Time,Temp °C,RH %\n2026-03-01 10:07Z,22,41\n2026-03-01 10:08Z,22,42\n";
        String path = upload(visitor, "Line 3", text);
        visitor.submit(path, path + "/import");
        done(visitor, path);
        String again = upload(visitor, "Line 3", text.replace("22,42", "23,42") + "2026-03-01 10:09Z,22,43\n");
        visitor.submit(again, again + "/import");
        Document page = done(visitor, again);

        assertThat(page.text()).contains("kept 1, there before 1, refused 1");
        assertThat(page.select("table").text()).contains("3 time Another reading");
    }

    @Test
    void whatCannotBeReadIsSaid() {
        Visitor visitor = clerk();
        String timeless = "Time,Temp °C,RH %\n2026-03-01 11:07Z,22,41\n,22,41\nnoon,22,41\n";
        assertThat(visitor.page(upload(visitor, "Line 4", timeless)).text())
                .contains("3 The time is missing.", "4 Not a time: noon");

        assertThat(visitor.page(upload(visitor, "Line 4", "ms,temp C,rh %\n60,22,40\n"))
                        .text())
                .contains("No line of this file has a time and a value.");
        assertThat(visitor.page(upload(visitor, "Line 4", "Time,temp °C\n2026-03-01 10:07Z,22\n"))
                        .text())
                .contains("This file holds temperatures only.");
        HttpResponse<String> empty = visitor.upload(
                "/climate/files", new Visitor.FilePart("file", "x.csv", ""), "logger", "", "place", "LINE");
        assertThat(empty.statusCode()).isEqualTo(422);
        assertThat(Jsoup.parse(empty.body()).select(".error").eachText())
                .containsExactly("Fill this in.", "Choose a file.");
    }
}
