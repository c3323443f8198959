package bagclock.stock;

import bagclock.platform.NotThere;
import bagclock.platform.Pages;
import bagclock.platform.Role;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;

/** Where the parts of a lot went: for the day on which a lot turns out to be bad. */
final class LotRoutes {
    private final LotStore lots;
    private final Pages pages;
    private final LotPages words;
    private final Clock clock;

    LotRoutes(LotStore lots, Pages pages, Words words, Clock clock) {
        this.lots = lots;
        this.pages = pages;
        this.words = new LotPages(words);
        this.clock = clock;
    }

    void register(RoutesConfig routes) {
        routes.get("/items/{tag}/lot", this::show, Role.signedIn());
        routes.get("/items/{tag}/lot/csv", this::table, Role.signedIn());
    }

    private MakersLot lot(Context ctx) {
        String tag = ctx.pathParam("tag");
        return lots.of(tag).orElseThrow(() -> new NotThere("no item " + tag));
    }

    private void show(Context ctx) {
        pages.show(ctx, words.page(ctx.pathParam("tag"), lot(ctx), clock.instant()));
    }

    private void table(Context ctx) {
        ctx.contentType("text/csv; charset=utf-8")
                .header("Content-Disposition", "attachment; filename=\"lot.csv\"")
                .result(words.table(lot(ctx)));
    }
}
