package bagclock.assess;

import bagclock.platform.Harmless;
import bagclock.platform.Messages;
import bagclock.platform.Problem;
import bagclock.platform.Role;
import bagclock.platform.Settings;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.security.RouteRole;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** Serves the assess contract over HTTP: to anyone in the demonstration, else to whoever is signed in. */
public final class AssessRoutes {
    private static final String BAD_REQUEST = "BAD_REQUEST";

    private final AssessContract contract;
    private final Settings settings;
    private final Messages messages;

    /** Routes that answer by a contract. */
    public AssessRoutes(AssessContract contract, Settings settings, Messages messages) {
        this.contract = contract;
        this.settings = settings;
        this.messages = messages;
    }

    /** Declares the route. */
    public void register(RoutesConfig routes) {
        routes.post("/api/v1/assess", this::assess, askers());
    }

    private RouteRole[] askers() {
        Stream<RouteRole> roles = settings.demo() ? Stream.of(Role.ANYONE) : Arrays.stream(Role.signedIn());
        return Stream.concat(roles, Stream.of(Harmless.CHANGES_NOTHING)).toArray(RouteRole[]::new);
    }

    private void assess(Context ctx) {
        try {
            // JSON travels as UTF-8, whatever the header says
            String answer = contract.answer(new String(ctx.bodyAsBytes(), StandardCharsets.UTF_8));
            ctx.result(answer.getBytes(StandardCharsets.UTF_8)).contentType("application/json");
        } catch (BadRequest bad) {
            problem(bad).answer(ctx);
        }
    }

    private Problem problem(BadRequest bad) {
        List<Problem.Line> lines = bad.problems().stream()
                .map(problem -> new Problem.Line(BAD_REQUEST, problem))
                .toList();
        return new Problem(
                "about:blank",
                messages.text("error.400.title"),
                HttpStatus.BAD_REQUEST.getCode(),
                messages.text("error.400.fields"),
                lines);
    }
}
