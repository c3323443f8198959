package bagclock.climate;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.DemoShop;
import bagclock.HandClock;
import bagclock.Site;
import bagclock.Visitor;
import bagclock.platform.Role;
import java.net.http.HttpResponse;
import java.time.Instant;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Temperature and humidity in a file each, over HTTP, in the demonstration's shop. */
class HalvesSiteTest {
    private static final HandClock CLOCK = new HandClock(Instant.parse("2026-03-12T14:20:00Z"));
    private static final String PATH = "/climate/files";

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

    private static Visitor.FilePart file(String name, String text) {
        return new Visitor.FilePart("file", name, text);
    }

    private static String upload(Visitor visitor, String logger, Visitor.FilePart... files) {
        HttpResponse<String> answer = visitor.uploadFrom(PATH, PATH, List.of(files), "logger", logger, "place", "LINE");
        assertThat(answer.statusCode()).isEqualTo(303);
        return Visitor.target(answer);
    }

    private static Document imported(Visitor visitor, String path) throws InterruptedException {
        visitor.submit(path, path + "/import");
        Document page = visitor.page(path);
        for (int i = 0; i < 100 && !page.select("progress").isEmpty(); i++) {
            Thread.sleep(50);
            page = visitor.page(path);
        }
        return page;
    }

    private static String temperatures(String day) {
        return "Time,Temp °C\n" + day + " 10:07Z,22.1\n" + day + " 10:12Z,33.9\n" + day + " 10:17Z,22.2\n";
    }

    private static String humidities(String day) {
        return "Time,RH %\n" + day + " 10:07Z,41.1\n" + day + " 10:12Z,61.7\n" + day + " 11:47Z,41.2\n";
    }

    private static String later(String text) {
        return text.replace(" 10:", " 12:").replace(" 11:", " 13:");
    }

    private static String row(String time) {
        return clerk().page("/climate/LINE").text().contains(time) ? "there" : "not there";
    }

    @Test
    void bothFilesAtOnceAreLookedAtTogetherAndWhatFindsNoPartnerIsNamed() throws InterruptedException {
        Visitor visitor = clerk();
        String path = upload(
                visitor,
                "Both",
                file("both-t.csv", temperatures("2026-03-12")),
                file("both-h.csv", humidities("2026-03-12")));
        Document page = visitor.page(path);

        assertThat(page.text())
                .contains("Temperatures from both-t.csv, humidities from both-h.csv")
                .contains("Readings with both values: 2.")
                .contains("Temperatures without a humidity within reach: 1.")
                .contains("Thu 12 Mar 2026 10:17 (UTC): a temperature without a humidity");
        assertThat(page.select("table").first().text()).contains("Thu 12 Mar 2026 10:12 (UTC) 33.9 °C 61.7 % RH");
        assertThat(row("33.9 °C 61.7 % RH")).isEqualTo("not there");

        Document done = imported(visitor, path);
        assertThat(done.text())
                .contains("kept 2, there before 0, refused 0")
                .contains("Readings with both values: 2.")
                .contains("(UTC): a humidity without a temperature");
        assertThat(row("33.9 °C 61.7 % RH")).isEqualTo("there");
        visitor.submit(path, path + "/take-back");
        assertThat(row("33.9 °C 61.7 % RH")).isEqualTo("not there");
    }

    @Test
    void oneAfterTheOtherFindTogetherAndEitherCanBeTakenBack() throws InterruptedException {
        Visitor visitor = clerk();
        String first = upload(visitor, "Turns", file("t.csv", later(temperatures("2026-03-12"))));
        assertThat(visitor.page(first).text()).contains("This file holds temperatures only.");
        assertThat(visitor.page(first).select("button").eachText()).doesNotContain("Import these readings");

        String second = upload(visitor, "Turns", file("h.csv", later(humidities("2026-03-12"))));
        imported(visitor, second);
        assertThat(row("Thu 12 Mar 2026 12:12 (UTC) 33.9")).isEqualTo("there");
        Document waiting = visitor.page(first);
        assertThat(waiting.text()).contains("The values of this file count through: h.csv");

        visitor.submit(first, first + "/take-back");
        assertThat(row("Thu 12 Mar 2026 12:12 (UTC) 33.9")).isEqualTo("not there");
        assertThat(visitor.page(second).text()).contains("2 readings").contains("Readings with both values: 2.");

        visitor.submit(first, second + "/part");
        assertThat(visitor.page(first).text()).contains("This file holds temperatures only.");
        String other = later(humidities("2026-03-12")).replace("61.7", "55.5");
        visitor.uploadFrom(first, first + "/other-half", file("h2.csv", other));
        assertThat(imported(visitor, first).text()).contains("kept 2");
        assertThat(row("Thu 12 Mar 2026 12:12 (UTC) 33.9 °C 55.5 % RH")).isEqualTo("there");
        visitor.submit(first, first + "/take-back");
        assertThat(row("Thu 12 Mar 2026 12:12 (UTC) 33.9 °C 55.5 % RH")).isEqualTo("not there");
    }

    /** The layout of openSenseMap's downloads: one file for each sensor, which says neither kind nor unit. */
    @Test
    void filesThatDoNotSayWhatTheyHoldAreAskedWhichIsWhich() {
        Visitor visitor = clerk();
        String values =
                "\"createdAt\",\"value\"\n\"2026-03-10T10:07:00.000Z\",\"%s\"\n\"2026-03-10T10:12:00.000Z\",\"%s\"\n";
        String path = upload(
                visitor,
                "Map",
                file("one.csv", values.formatted("21.5", "21.6")),
                file("two.csv", values.formatted("47.5", "47.6")));
        Document asked = visitor.page(path);
        assertThat(asked.select("input[name=holds]").eachAttr("value")).containsExactly("TEMPERATURE", "HUMIDITY");
        assertThat(asked.select("button").eachText()).doesNotContain("Import these readings");

        Document looked = Jsoup.parse(visitor.post(
                        path + "/look",
                        "holds",
                        "HUMIDITY",
                        "unit",
                        "CELSIUS",
                        "csrf",
                        asked.select("main input[name=csrf]").first().val())
                .body());
        assertThat(looked.select("table").first().text()).contains("21.5 °C 47.5 % RH");
        assertThat(looked.select("button").eachText()).contains("Import these readings");
    }

    @Test
    void twoFilesOfTheSameQuantityAreNoPair() {
        Visitor visitor = clerk();
        String path = upload(visitor, "Same", file("a.csv", temperatures("2026-03-09")));
        HttpResponse<String> joined =
                visitor.uploadFrom(path, path + "/other-half", file("b.csv", temperatures("2026-03-09")));

        assertThat(joined.statusCode()).isEqualTo(303);
        assertThat(visitor.page(path).text()).contains("These two files can't be put together");
        visitor.submit(path, path + "/part");
        assertThat(visitor.page(path).text()).contains("This file holds temperatures only.");
    }

    @Test
    void twoWholeFilesAtOnceStayTwo() {
        Visitor visitor = clerk();
        String whole = "Time,Temp °C,RH %\n2026-03-08 10:07Z,22,41\n";
        String path = upload(visitor, "Whole", file("jan.csv", whole), file("feb.csv", whole));

        assertThat(path).isEqualTo(PATH);
        assertThat(visitor.page(path).text()).contains("jan.csv").contains("feb.csv");
    }
}
