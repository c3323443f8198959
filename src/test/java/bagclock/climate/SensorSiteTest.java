package bagclock.climate;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.DemoShop;
import bagclock.HandClock;
import bagclock.Site;
import bagclock.Visitor;
import bagclock.platform.Role;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.net.http.HttpResponse;
import java.time.Instant;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Sensors that send readings by themselves, over HTTP, in the demonstration's shop. */
class SensorSiteTest {
    private static final HandClock CLOCK = new HandClock(Instant.parse("2026-03-12T14:20:00Z"));
    private static final String CALL = "/api/v1/readings";

    private static Site site;

    @BeforeAll
    static void start() {
        site = DemoShop.open(CLOCK);
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    private static Visitor administrator() {
        return Visitor.ofDemo(site.port(), Role.ADMINISTRATOR);
    }

    private static String token(String name, String places) {
        HttpResponse<String> made =
                administrator().submit("/people/sensors", "/people/sensors", "name", name, "places", places);
        return Jsoup.parse(made.body()).select("code").text();
    }

    private static HttpResponse<String> send(String token, String readings) {
        return new Visitor(site.port()).call(CALL, token, "{\"readings\":[" + readings + "]}");
    }

    private static String reading(String zone, String at, String air) {
        return "{\"zone\":\"" + zone + "\",\"at\":\"" + at + "\"," + air + "}";
    }

    private static JsonNode json(HttpResponse<String> answer) throws Exception {
        return JsonMapper.builder().build().readTree(answer.body());
    }

    @Test
    void theSameBatchTwiceIsKeptOnce() throws Exception {
        String token = token("Line sensor", "LINE");
        String batch = reading("LINE", "2026-03-12T14:01:00Z", "\"temperatureC\":22.5,\"rhPercent\":41.5") + ","
                + reading("LINE", "2026-03-12T15:02:00+01:00", "\"temperatureC\":25,\"dewPointC\":10") + ","
                + reading("LINE", "2026-03-12T14:03:00Z", "\"temperatureC\":25,\"frostPointC\":-20");

        assertThat(json(send(token, batch)).path("added").asInt()).isEqualTo(3);
        HttpResponse<String> again = send(token, batch);

        assertThat(again.statusCode()).isEqualTo(200);
        assertThat(json(again).path("added").asInt()).isZero();
        assertThat(json(again).path("known").asInt()).isEqualTo(3);
        assertThat(administrator().page("/climate/LINE").text())
                .contains("Thu 12 Mar 2026 14:01 (UTC) 22.5 °C 41.5 % RH");
    }

    @Test
    void otherValuesAndTheFutureAreNamedAndTheRestIsKept() throws Exception {
        String token = token("Stores sensor", "STORES");
        String batch = reading("STORES", "2026-03-12T14:20:00Z", "\"temperatureC\":12,\"rhPercent\":41") + ","
                + reading("STORES", "2026-03-12T14:21:00Z", "\"temperatureC\":12,\"rhPercent\":41") + ","
                + reading("STORES", "2026-03-12T14:19:00Z", "\"temperatureC\":21,\"rhPercent\":41");
        JsonNode answer = json(send(token, batch));

        assertThat(answer.path("added").asInt()).isEqualTo(1);
        assertThat(answer.path("refused").findValuesAsText("reason"))
                .containsExactly("READING_DIFFERS", "HAPPENED_IN_FUTURE");
        assertThat(answer.path("refused").findValuesAsText("index")).containsExactly("0", "1");
    }

    @Test
    void aTokenSpeaksForItsPlacesOnly() throws Exception {
        String token = token("Dock sensor", "DOCK");
        HttpResponse<String> foreign = send(
                token,
                reading("DOCK", "2026-03-12T14:06:00Z", "\"temperatureC\":22,\"rhPercent\":41") + ","
                        + reading("LINE", "2026-03-12T14:06:00Z", "\"temperatureC\":22,\"rhPercent\":41"));

        assertThat(foreign.statusCode()).isEqualTo(403);
        assertThat(foreign.headers().firstValue("Content-Type").orElse("")).startsWith("application/problem+json");
        assertThat(json(foreign).path("refusals").findValuesAsText("text"))
                .containsExactly("This token is not good for: LINE");
        assertThat(send(token, reading("DOCK", "2026-03-12T14:06:00Z", "\"temperatureC\":22,\"rhPercent\":41"))
                        .body())
                .contains("\"added\":1");
    }

    @Test
    void withoutAGoodTokenNothingIsKept() throws Exception {
        HttpResponse<String> none = send("x", "");
        String token = token("Gone sensor", "LINE");
        Visitor administrator = administrator();
        String revoke = administrator
                .page("/people/sensors")
                .select("tr:contains(Gone sensor) form")
                .attr("action");
        administrator.submit("/people/sensors", revoke);

        assertThat(none.statusCode()).isEqualTo(401);
        assertThat(none.headers().firstValue("WWW-Authenticate")).contains("Bearer");
        assertThat(json(none).path("status").asInt()).isEqualTo(401);
        assertThat(send(token, "").statusCode()).isEqualTo(401);
        assertThat(Visitor.ofDemo(site.port(), Role.ENGINEER)
                        .get("/people/sensors")
                        .statusCode())
                .isEqualTo(403);
    }

    @Test
    void aMalformedBatchIsRefusedWithEveryProblem() throws Exception {
        String token = token("Other sensor", "LINE");
        HttpResponse<String> answer = send(
                token,
                reading("LINE", "2026-03-12 14:05", "\"temperatureC\":\"22\",\"rhPercent\":41") + ","
                        + reading("LINE", "2026-03-12T14:05:00Z", "\"temperatureC\":22,\"rh\":41") + ","
                        + reading("LINE", "2026-03-12T14:05:00Z", "\"temperatureC\":22,\"rhPercent\":140"));

        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(json(answer).path("refusals").findValuesAsText("text"))
                .containsExactly(
                        "readings[0]: at must be ISO 8601 with an offset",
                        "readings[0]: temperatureC must be a number from -40.0 to 85.0",
                        "readings[1]: rh is not known",
                        "readings[1]: one of rhPercent, dewPointC, frostPointC must be given",
                        "readings[2]: rhPercent must be a number from 0.0 to 105.0");
        assertThat(new Visitor(site.port()).call(CALL, token, "[]").statusCode())
                .isEqualTo(400);
        assertThat(new Visitor(site.port()).call(CALL, token, "{").statusCode()).isEqualTo(400);
    }
}
