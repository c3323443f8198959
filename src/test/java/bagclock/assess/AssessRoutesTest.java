package bagclock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.Site;
import bagclock.core.standard.Edition;
import bagclock.core.standard.Standard;
import bagclock.platform.AnswerTexts;
import bagclock.platform.Engine;
import bagclock.platform.Messages;
import bagclock.platform.Settings;
import bagclock.platform.Texts;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class AssessRoutesTest {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    /** Level 3 keeps 168 h of floor life at 30/60 (J-STD-033D table 5-1): open for 24 h it is clear, for 200 h not. */
    private static final String OPEN_SINCE = """
            {"part":{"level":"3","classificationC":260,"thicknessMm":1.2,"lengthMm":17,"widthMm":17,"body":"array",
                     "blockingPlanes":false,"carrierMaxC":"none"},
             "history":[{"at":"2026-03-01T08:00:00Z","event":"sealed"},
                        {"at":"2026-03-02T08:00:00Z","event":"opened","card":{"5":"dry","10":"dry","60":"dry"},
                         "bag":"sound","zone":"bench"}],
             "climate":{"default":{"temperatureC":30,"rhPercent":60}},
             "heat":{"at":"%s","minutes":10,"peakBodyC":245,"purpose":"placement","local":false}}
            """;

    private static final String CLEAR = OPEN_SINCE.formatted("2026-03-03T08:00:00Z");
    private static final String TOO_LATE = OPEN_SINCE.formatted("2026-03-10T16:00:00Z");

    private static Site demo;

    @BeforeAll
    static void start() {
        demo = start(true);
    }

    @AfterAll
    static void stop() {
        demo.close();
    }

    private static Site start(boolean isDemo) {
        return Site.start(
                new Settings("localhost", 0, Path.of("target"), Engine.H2.freshUrl(), ZoneId.of("UTC"), isDemo),
                Clock.systemUTC());
    }

    @Test
    void aPartIsAnswered() throws Exception {
        HttpResponse<String> clear = ask(demo, CLEAR);
        JsonNode late = JSON.readTree(ask(demo, TOO_LATE).body());

        assertThat(clear.statusCode()).isEqualTo(200);
        assertThat(clear.headers().firstValue("Content-Type").orElseThrow()).startsWith("application/json");
        assertThat(JSON.readTree(clear.body()).get("verdict").asText()).isEqualTo("clear");
        assertThat(late.get("verdict").asText()).isEqualTo("bake");
        assertThat(late.get("reasons").get(0).get("code").asText()).isEqualTo("FLOOR_LIFE_USED");
    }

    @Test
    void aBoardIsAnsweredForEachLocation() throws Exception {
        HttpResponse<String> answer = ask(demo, """
                {"board":{"history":[],"parts":[{"location":"U7","part":{"level":"1","classificationC":260},
                          "history":[],"peakBodyC":240,"fate":"removed-scrap"}]},
                 "heat":{"at":"2026-03-10T08:00:00Z","minutes":10,"peakBodyC":240,"purpose":"removal-scrap"}}
                """);

        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        assertThat(JSON.readTree(answer.body())
                        .get("parts")
                        .get(0)
                        .get("location")
                        .asText())
                .isEqualTo("U7");
    }

    @Test
    void anArrayIsAnsweredInItsOrder() throws Exception {
        JsonNode answers =
                JSON.readTree(ask(demo, "[" + TOO_LATE + "," + CLEAR + "]").body());

        assertThat(answers.findValuesAsText("verdict")).containsExactly("bake", "clear");
    }

    @Test
    void theCommandLineAndTheSiteAnswerAlike() throws Exception {
        assertThat(ask(demo, CLEAR).body()).isEqualTo(contractOfTheCommandLine().answer(CLEAR));
    }

    @Test
    void anUnknownFieldIsNamed() throws Exception {
        HttpResponse<String> answer = ask(demo, CLEAR.replace("\"thicknessMm\"", "\"thicknesMm\""));
        JsonNode problem = JSON.readTree(answer.body());

        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.headers().firstValue("Content-Type").orElseThrow()).startsWith("application/problem+json");
        assertThat(problem.get("status").asInt()).isEqualTo(400);
        assertThat(problem.get("refusals").get(0).get("text").asText()).contains("part.thicknesMm");
    }

    @Test
    void everyBadFieldOfAnArrayIsNamedWithItsPlace() throws Exception {
        String body = ask(demo, "[" + CLEAR + "," + CLEAR.replace("\"3\"", "\"33\"") + "]")
                .body();

        assertThat(JSON.readTree(body).get("refusals").get(0).get("text").asText())
                .contains("[1]", "part.level");
    }

    @Test
    void whatIsNotJsonIsABadRequest() throws Exception {
        for (String body : new String[] {"", "level 3", "{\"part\":", "3"}) {
            assertThat(ask(demo, body).statusCode()).as(body).isEqualTo(400);
        }
    }

    @Test
    void outsideTheDemonstrationSomebodyMustBeSignedIn() throws Exception {
        try (Site site = start(false)) {
            assertThat(ask(site, CLEAR).statusCode()).isEqualTo(401);
        }
    }

    private static HttpResponse<String> ask(Site site, String body) throws Exception {
        HttpRequest request = HttpRequest.newBuilder(URI.create("http://localhost:" + site.port() + "/api/v1/assess"))
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofString(body))
                .build();
        return HttpClient.newHttpClient().send(request, BodyHandlers.ofString());
    }

    private static AssessContract contractOfTheCommandLine() {
        var messages = Messages.load();
        var texts = new Texts(ZoneOffset.UTC, messages);
        return new AssessContract(Standard.load(Edition.J_STD_033D), new AnswerTexts(messages, texts));
    }
}
