package bagclock.platform;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpStatus;
import io.javalin.http.SameSite;
import io.javalin.security.RouteRole;
import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The one place where a request is let in: who is asking, whether the route's roles allow it, and whether a request that
 * changes something came from a form of this very browser. A route that names no role lets nobody in.
 *
 * <p>The cookie holds a random token; of a visitor who has not signed in too, so that the sign-in form is guarded like
 * any other. The form token is derived from it, so it needs no storage and changes at sign-in.
 */
public final class Gate {
    /** The page where a visitor without a session is sent. */
    public static final String SIGN_IN = "/sign-in";

    private static final String COOKIE = "bagclock";
    private static final int TOKEN_LENGTH = 43;
    private static final Set<HandlerType> SAFE = Set.of(HandlerType.GET, HandlerType.HEAD, HandlerType.OPTIONS);

    private final Sessions sessions;
    private final Messages messages;
    private final Clock clock;

    /** A gate that asks the given sessions. */
    public Gate(Sessions sessions, Messages messages, Clock clock) {
        this.sessions = sessions;
        this.messages = messages;
        this.clock = clock;
    }

    /** Declares who is recognised on every page, and the check before every matched route. */
    public void register(RoutesConfig routes) {
        routes.before(ctx -> {
            if (!isFile(ctx)) {
                visit(ctx).attachTo(ctx);
            }
        });
        routes.beforeMatched(ctx -> {
            if (!isFile(ctx)) {
                check(ctx, Visit.of(ctx));
            }
        });
    }

    /** Hands the browser the token of its session. */
    public static void giveToken(Context ctx, String token) {
        ctx.cookie(new Cookie(COOKIE, token, "/", -1, isSecure(ctx), true, null, SameSite.LAX));
    }

    static boolean isSecure(Context ctx) {
        return "https".equals(ctx.scheme()) || "https".equals(ctx.header("X-Forwarded-Proto"));
    }

    /** The token that the browser sent, if it can be one. */
    public static Optional<String> token(Context ctx) {
        return Optional.ofNullable(ctx.cookie(COOKIE)).filter(token -> token.length() == TOKEN_LENGTH);
    }

    private void check(Context ctx, Visit visit) {
        Set<RouteRole> roles = ctx.routeRoles();
        boolean isOpen = roles.contains(Role.ANYONE);
        if (visit.person().isEmpty() && !isOpen) {
            sendToSignIn(ctx);
        } else if (needsToken(ctx, isOpen) && !Secret.isSame(sentToken(ctx), visit.csrfToken())) {
            throw new NotAllowed("a form without this session's token: " + ctx.path());
        } else if (!isOpen && !visit.signedIn().isOneOf(roles)) {
            throw new NotAllowed(visit.signedIn().id() + " lacks a role for " + ctx.path());
        }
    }

    /**
     * An open call of the API borrows nobody's rights, and another site can't read the answer to one that changes
     * nothing: neither could be abused.
     */
    private static boolean needsToken(Context ctx, boolean isOpen) {
        boolean isHarmless = isOpen || ctx.routeRoles().contains(Harmless.CHANGES_NOTHING);
        return !SAFE.contains(ctx.method()) && !(isHarmless && isApi(ctx));
    }

    private Visit visit(Context ctx) {
        Optional<String> sent = token(ctx);
        Optional<Person> person = sent.flatMap(token -> sessions.find(token, clock.instant()));
        String token = sent.orElseGet(Secret::token);
        if (sent.isEmpty() && !isApi(ctx) && !ctx.path().equals(Live.PATH)) {
            giveToken(ctx, token);
        }
        return new Visit(person, Secret.fingerprint("form " + token), Workstation.scannerMap(ctx));
    }

    private static String sentToken(Context ctx) {
        String header = ctx.header("X-CSRF-Token");
        String sent = header == null ? ctx.formParam("csrf") : header;
        return sent == null ? "" : sent;
    }

    private void sendToSignIn(Context ctx) {
        if (isApi(ctx)) {
            Problem.of(401, messages.text("error.401.title"), messages.text("error.401.text"))
                    .answer(ctx);
        } else if (ctx.header("HX-Request") != null) {
            ctx.status(HttpStatus.UNAUTHORIZED).header("HX-Redirect", signInFor(pathOf(ctx.header("HX-Current-URL"))));
        } else {
            boolean isPage = SAFE.contains(ctx.method());
            String query = ctx.queryString() == null ? "" : "?" + ctx.queryString();
            String wanted = isPage ? ctx.path() + query : pathOf(ctx.header("Referer"));
            ctx.redirect(signInFor(wanted), HttpStatus.SEE_OTHER);
        }
        ctx.skipRemainingHandlers();
    }

    private static String signInFor(String wanted) {
        return wanted.isEmpty() || wanted.equals("/")
                ? SIGN_IN
                : SIGN_IN + "?next=" + URLEncoder.encode(wanted, StandardCharsets.UTF_8);
    }

    /** Path and query of an address, so that what follows sign-in stays on this site; empty when there is none. */
    private static String pathOf(@Nullable String address) {
        try {
            URI uri = URI.create(address == null ? "" : address);
            String path = uri.getRawPath() == null ? "" : uri.getRawPath();
            return uri.getRawQuery() == null ? path : path + "?" + uri.getRawQuery();
        } catch (IllegalArgumentException malformed) {
            return "";
        }
    }

    private static boolean isFile(Context ctx) {
        return ctx.path().startsWith("/public/");
    }

    private static boolean isApi(Context ctx) {
        return ctx.path().startsWith("/api/");
    }
}
