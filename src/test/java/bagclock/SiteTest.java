package bagclock;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.platform.Engine;
import bagclock.platform.Settings;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class SiteTest {
    private static Site site;

    @BeforeAll
    static void start() {
        Settings settings = new Settings(
                "localhost", 0, Path.of("target"), Engine.H2.freshUrl(), ZoneId.of("Europe/Berlin"), false);
        site = Site.start(settings, Clock.systemUTC());
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    @Test
    void whatIsNotThereIsSaidOnAPage() throws Exception {
        HttpResponse<String> answer = get("/no-such-page");

        assertThat(answer.statusCode()).isEqualTo(404);
        assertThat(answer.headers().firstValue("Content-Type")).hasValue("text/html;charset=utf-8");
        assertThat(answer.body()).contains("<h1>There is nothing here</h1>");
    }

    @Test
    void aCallerOfTheApiGetsProblemDetails() throws Exception {
        HttpResponse<String> answer = get("/api/v1/no-such-thing");

        assertThat(answer.statusCode()).isEqualTo(404);
        assertThat(answer.headers().firstValue("Content-Type").orElseThrow()).startsWith("application/problem+json");
        assertThat(answer.body()).contains("\"status\":404");
    }

    @Test
    void everyAnswerForbidsInlineCode() throws Exception {
        for (String path : new String[] {"/no-such-page", "/public/icon.svg"}) {
            assertThat(get(path).headers().firstValue("Content-Security-Policy"))
                    .as(path)
                    .hasValueSatisfying(policy -> assertThat(policy)
                            .contains("default-src 'none'", "script-src 'self';")
                            .doesNotContain("unsafe"));
        }
    }

    @Test
    void theSitesOwnFilesAreServed() throws Exception {
        HttpResponse<String> answer = get("/public/icon.svg");

        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.headers().firstValue("Content-Type").orElseThrow()).startsWith("image/svg+xml");
        assertThat(answer.headers().allValues("Cache-Control")).containsExactly("no-cache");
    }

    private static HttpResponse<String> get(String path) throws Exception {
        HttpRequest request = HttpRequest.newBuilder(URI.create("http://localhost:" + site.port() + path))
                .build();
        return HttpClient.newHttpClient().send(request, BodyHandlers.ofString());
    }
}
