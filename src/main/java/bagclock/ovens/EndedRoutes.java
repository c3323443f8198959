package bagclock.ovens;

import bagclock.platform.Entered;
import bagclock.platform.Pages;
import bagclock.platform.Role;
import bagclock.platform.Texts;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;

/** Runs that ended: the list, its table for other programs, and the page of one. */
final class EndedRoutes {
    private static final int MOST_SHOWN = 200;
    private static final int MOST_EXPORTED = 100_000;

    private final Ovens ovens;
    private final EndedPages endedPages;
    private final Pages pages;
    private final Texts texts;
    private final Clock clock;

    EndedRoutes(Ovens ovens, EndedPages endedPages, Pages pages, Texts texts, Clock clock) {
        this.ovens = ovens;
        this.endedPages = endedPages;
        this.pages = pages;
        this.texts = texts;
        this.clock = clock;
    }

    void register(RoutesConfig routes) {
        routes.get("/ovens/runs", this::list, Role.signedIn());
        routes.get("/ovens/runs/runs.csv", this::table, Role.signedIn());
        routes.get("/ovens/{code}/runs/{at}", this::show, Role.signedIn());
    }

    private void list(Context ctx) {
        Instant now = clock.instant();
        pages.show(ctx, endedPages.list(ovens.store().ovens(now), MOST_SHOWN, now));
    }

    private void table(Context ctx) {
        ctx.contentType("text/csv; charset=utf-8")
                .header("Content-Disposition", "attachment; filename=\"oven-runs.csv\"")
                .result(endedPages.table(MOST_EXPORTED, clock.instant()));
    }

    private void show(Context ctx) {
        Instant now = clock.instant();
        Load load = endedPages.runs().load(ctx.pathParam("code"), RunRoutes.moment(ctx), now);
        pages.show(ctx, endedPages.page(load, Entered.of(Map.of(), texts), List.of(), now));
    }
}
