package bagclock.wall;

import bagclock.desk.Desk;
import bagclock.platform.Database;
import bagclock.platform.NotThere;
import bagclock.platform.Pages;
import bagclock.platform.Role;
import bagclock.platform.Texts;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.Instant;

/** The wall display's one address. */
public final class WallRoutes {
    /** For a browser without a script; with one the page follows what happens. */
    private static final String REFRESH_SECONDS = "300";

    private final WallStore store;
    private final WallPages wall;
    private final Pages pages;
    private final Clock clock;

    /** Routes of one site. */
    public WallRoutes(Database database, Desk desk, Pages pages, Texts texts, Clock clock) {
        this.store = new WallStore(database);
        this.wall = new WallPages(desk, store, texts);
        this.pages = pages;
        this.clock = clock;
    }

    /** Declares the route. */
    public void register(RoutesConfig routes) {
        routes.get("/wall", this::show, Role.ANYONE);
    }

    private void show(Context ctx) {
        Instant now = clock.instant();
        if (!store.isShown(now)) {
            throw new NotThere("the wall display is switched off");
        }
        ctx.header("Refresh", REFRESH_SECONDS);
        pages.show(ctx, wall.page(now));
    }
}
