package bagclock.platform;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/** Headers on every answer: only the site's own files run, nothing is framed, pages are not kept in caches. */
public final class SecurityHeaders {
    private static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; font-src 'self'; "
            + "img-src 'self' data: blob:; media-src 'self'; connect-src 'self'; manifest-src 'self'; "
            + "worker-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    private SecurityHeaders() {}

    /** Declares the headers; before any other route. */
    public static void register(RoutesConfig routes) {
        routes.before(SecurityHeaders::set);
    }

    private static void set(Context ctx) {
        ctx.header("Content-Security-Policy", POLICY);
        ctx.header("X-Content-Type-Options", "nosniff");
        ctx.header("Referrer-Policy", "same-origin");
        ctx.header("Cross-Origin-Opener-Policy", "same-origin");
        ctx.header("Cache-Control", "no-store");
    }
}
