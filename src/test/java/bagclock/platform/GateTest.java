package bagclock.platform;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.Visitor;
import io.javalin.Javalin;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class GateTest {
    private Optional<Person> someone = Optional.empty();
    private Javalin server;
    private Visitor visitor;

    @BeforeEach
    void start() {
        Messages messages = Messages.load();
        Settings settings = new Settings("localhost", 0, Path.of("target"), "none", ZoneId.of("UTC"), false);
        Pages pages = new Pages(settings, messages);
        server = Javalin.create(config -> {
                    SecurityHeaders.register(config.routes);
                    new Gate((token, now) -> someone, messages, Clock.systemUTC()).register(config.routes);
                    new ErrorPages(pages, messages).register(config.routes);
                    config.routes.get("/open", ctx -> ctx.result(Visit.of(ctx).csrfToken()), Role.ANYONE);
                    config.routes.post("/open", ctx -> ctx.result("done"), Role.ANYONE);
                    config.routes.get("/clerks", ctx -> ctx.result("in"), Role.CLERK);
                    config.routes.post("/clerks", ctx -> ctx.result("done"), Role.CLERK);
                    config.routes.get("/forgotten", ctx -> ctx.result("in"));
                    config.routes.post("/api/open", ctx -> ctx.result("done"), Role.ANYONE);
                    config.routes.post("/api/clerks", ctx -> ctx.result("done"), Role.CLERK);
                    config.routes.post("/api/ask", ctx -> ctx.result("asked"), Role.CLERK, Harmless.CHANGES_NOTHING);
                    config.routes.post("/ask", ctx -> ctx.result("asked"), Role.CLERK, Harmless.CHANGES_NOTHING);
                })
                .start(0);
        visitor = new Visitor(server.port());
    }

    @AfterEach
    void stop() {
        server.stop();
    }

    @Test
    void aPageSendsToSignInAndBack() {
        HttpResponse<String> answer = visitor.get("/clerks?page=2");

        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(Visitor.target(answer)).isEqualTo("/sign-in?next=%2Fclerks%3Fpage%3D2");
    }

    @Test
    void aPartOfAPageSendsTheWholePageToSignIn() {
        HttpResponse<String> answer =
                visitor.get("/clerks", "HX-Request", "true", "HX-Current-URL", "http://elsewhere.example/stock?page=2");

        assertThat(answer.headers().firstValue("HX-Redirect")).hasValue("/sign-in?next=%2Fstock%3Fpage%3D2");
        assertThat(answer.body()).doesNotContain("in");
    }

    @Test
    void theApiAnswersWithProblemDetails() {
        HttpResponse<String> answer = visitor.post("/api/clerks");

        assertThat(answer.statusCode()).isEqualTo(401);
        assertThat(answer.body()).contains("\"status\":401");
    }

    @Test
    void whoLacksTheRoleIsRefused() {
        someone = Optional.of(new Person("p", "Planner", Set.of(Role.PLANNER)));
        visitor.get("/open");
        assertThat(visitor.get("/clerks").statusCode()).isEqualTo(403);

        someone = Optional.of(new Person("c", "Clerk", Set.of(Role.CLERK, Role.PLANNER)));
        assertThat(visitor.get("/clerks").body()).isEqualTo("in");
    }

    @Test
    void aRouteWithoutRolesLetsNobodyIn() {
        someone = Optional.of(new Person("a", "Administrator", Set.of(Role.ADMINISTRATOR)));
        visitor.get("/open");

        assertThat(visitor.get("/forgotten").statusCode()).isEqualTo(403);
    }

    @Test
    void aChangeNeedsTheTokenOfThisBrowser() {
        String token = visitor.get("/open").body();
        String another = new Visitor(server.port()).get("/open").body();

        assertThat(visitor.post("/open").statusCode()).isEqualTo(403);
        assertThat(visitor.post("/open", "csrf", another).statusCode()).isEqualTo(403);
        assertThat(visitor.post("/open", "csrf", token).body()).isEqualTo("done");
    }

    @Test
    void aChangeByAPersonNeedsTheTokenInTheApiToo() {
        someone = Optional.of(new Person("c", "Clerk", Set.of(Role.CLERK)));
        String token = visitor.get("/open").body();

        assertThat(visitor.post("/api/clerks").statusCode()).isEqualTo(403);
        assertThat(visitor.post("/clerks", "csrf", token).body()).isEqualTo("done");
        assertThat(visitor.post("/api/open").body()).isEqualTo("done");
    }

    @Test
    void aQuestionToTheApiNeedsTheRoleButNoToken() {
        assertThat(visitor.post("/api/ask").statusCode()).isEqualTo(401);

        someone = Optional.of(new Person("p", "Planner", Set.of(Role.PLANNER)));
        visitor.get("/open");
        assertThat(visitor.post("/api/ask").statusCode()).isEqualTo(403);

        someone = Optional.of(new Person("c", "Clerk", Set.of(Role.CLERK)));
        assertThat(visitor.post("/api/ask").body()).isEqualTo("asked");
        assertThat(visitor.post("/ask").statusCode()).as("a page").isEqualTo(403);
    }

    @Test
    void theCookieIsOutOfReachOfScriptsAndOtherSites() {
        HttpResponse<String> answer = visitor.get("/open", "X-Forwarded-Proto", "https");

        assertThat(answer.headers().firstValue("Set-Cookie").orElseThrow())
                .contains("HttpOnly", "SameSite=Lax", "Secure", "Path=/")
                .doesNotContain("Max-Age", "Domain");
    }
}
