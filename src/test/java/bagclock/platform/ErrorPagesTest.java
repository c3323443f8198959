package bagclock.platform;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.json.JsonMapper;
import io.javalin.Javalin;
import io.javalin.json.JavalinJackson;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.function.Supplier;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ErrorPagesTest {

    @ParameterizedTest
    @CsvSource({"/gone, 404", "/forbidden, 403", "/changed, 409", "/broken, 500"})
    void everyFailureHasItsPage(String path, int status) throws Exception {
        HttpResponse<String> page = get(path);
        HttpResponse<String> problem = get("/api" + path);

        assertThat(page.statusCode()).isEqualTo(status);
        assertThat(page.body()).contains("<h1>").doesNotContain("secret");
        assertThat(problem.statusCode()).isEqualTo(status);
        assertThat(problem.body())
                .startsWith("{")
                .contains("\"status\":" + status)
                .doesNotContain("secret");
    }

    private static HttpResponse<String> get(String path) throws Exception {
        Messages messages = Messages.load();
        Settings settings = new Settings("localhost", 0, Path.of("target"), "", ZoneId.of("UTC"), false);
        Javalin server = Javalin.create(config -> {
            config.jsonMapper(new JavalinJackson(JsonMapper.builder().build(), false));
            new ErrorPages(new Pages(settings, messages), messages).register(config.routes);
            for (String prefix : new String[] {"", "/api"}) {
                config.routes.get(prefix + "/gone", ctx -> fail(() -> new NotThere("secret")));
                config.routes.get(prefix + "/forbidden", ctx -> fail(() -> new NotAllowed("secret")));
                config.routes.get(prefix + "/changed", ctx -> fail(() -> new ChangedMeanwhile("secret")));
                config.routes.get(prefix + "/broken", ctx -> fail(() -> new IllegalStateException("secret")));
            }
        });
        try {
            server.start("localhost", 0);
            HttpRequest request = HttpRequest.newBuilder(URI.create("http://localhost:" + server.port() + path))
                    .build();
            return HttpClient.newHttpClient().send(request, BodyHandlers.ofString());
        } finally {
            server.stop();
        }
    }

    private static void fail(Supplier<RuntimeException> failure) {
        throw failure.get();
    }
}
