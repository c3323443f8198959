package bagclock.platform;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import java.util.HexFormat;
import java.util.concurrent.ThreadLocalRandom;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * What a visitor reads when something fails: a page, or problem details under {@code /api}. An unexpected failure is
 * logged once, under a number that the visitor reads too; its own words never leave the log.
 */
public final class ErrorPages {
    private static final Logger LOG = LoggerFactory.getLogger(ErrorPages.class);

    private final Pages pages;
    private final Messages messages;

    /** Error pages in the site's words. */
    public ErrorPages(Pages pages, Messages messages) {
        this.pages = pages;
        this.messages = messages;
    }

    /** Maps the failures to answers. */
    public void register(RoutesConfig routes) {
        routes.exception(NotThere.class, (failure, ctx) -> answer(ctx, HttpStatus.NOT_FOUND));
        routes.exception(NotAllowed.class, (failure, ctx) -> answer(ctx, HttpStatus.FORBIDDEN));
        routes.exception(ChangedMeanwhile.class, (failure, ctx) -> answer(ctx, HttpStatus.CONFLICT));
        routes.exception(
                HttpResponseException.class, (failure, ctx) -> answer(ctx, HttpStatus.forStatus(failure.getStatus())));
        routes.exception(Exception.class, this::unexpected);
    }

    private void answer(Context ctx, HttpStatus status) {
        String key = "error." + status.getCode();
        String known = messages.has(key + ".title") ? key : "error.other";
        answer(ctx, status, messages.text(known + ".text"), known);
    }

    private void unexpected(Exception failure, Context ctx) {
        String incident = HexFormat.of().toHexDigits(ThreadLocalRandom.current().nextInt());
        LOG.error("incident {} at {} {}", incident, ctx.method(), ctx.path(), failure);
        answer(ctx, HttpStatus.INTERNAL_SERVER_ERROR, messages.text("error.500.text", incident), "error.500");
    }

    private void answer(Context ctx, HttpStatus status, String explanation, String key) {
        String title = messages.text(key + ".title");
        if (ctx.path().startsWith("/api/")) {
            Problem.of(status.getCode(), title, explanation).answer(ctx);
            return;
        }
        ctx.status(status);
        pages.show(ctx, new ErrorPage(status.getCode(), title, explanation, messages.text(key + ".advice")));
    }
}
