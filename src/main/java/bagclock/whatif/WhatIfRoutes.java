package bagclock.whatif;

import bagclock.core.exposure.PartHistory;
import bagclock.desk.Desk;
import bagclock.desk.ItemView;
import bagclock.platform.Database;
import bagclock.platform.NotThere;
import bagclock.platform.Pages;
import bagclock.platform.Role;
import bagclock.platform.Texts;
import bagclock.register.KnownPlace;
import bagclock.register.PartType;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Objects;

/** What if, about an item and about a part type. */
public final class WhatIfRoutes {
    private static final String PARTS = "/parts/what-if";

    private final Desk desk;
    private final WhatIfStore store;
    private final Pages pages;
    private final Texts texts;
    private final Clock clock;

    /** Routes of one site. */
    public WhatIfRoutes(Database database, Desk desk, Pages pages, Texts texts, Clock clock) {
        this.desk = desk;
        this.store = new WhatIfStore(database);
        this.pages = pages;
        this.texts = texts;
        this.clock = clock;
    }

    /** Declares the routes. */
    public void register(RoutesConfig routes) {
        routes.get("/items/{tag}/what-if", this::item, Role.signedIn());
        routes.get(PARTS, this::partType, Role.signedIn());
    }

    private void item(Context ctx) {
        Instant now = clock.instant();
        String tag = ctx.pathParam("tag");
        ItemView view = desk.item(tag, now).orElseThrow(() -> new NotThere("no item " + tag));
        PartType type = view.partType().fact();
        String lead = type.number() + ", " + type.description();
        show(
                ctx,
                new WhatIfPages.Subject(tag, lead, "/items/" + tag + "/what-if", "/items/" + tag, ""),
                view.history());
    }

    private void partType(Context ctx) {
        // Ends of floor lives are whole seconds: seven days are to read as seven days.
        Instant now = clock.instant().truncatedTo(ChronoUnit.SECONDS);
        String number = Objects.requireNonNullElse(ctx.queryParam("number"), "");
        PartType type = store.partType(number, now).orElseThrow(() -> new NotThere("no part type " + number));
        String lead = texts.messages().text("whatif.fresh", type.description());
        String back = "/parts/type?number=" + URLEncoder.encode(number, StandardCharsets.UTF_8);
        show(ctx, new WhatIfPages.Subject(number, lead, PARTS, back, number), store.fresh(type, now));
    }

    private void show(Context ctx, WhatIfPages.Subject subject, PartHistory history) {
        List<KnownPlace.DryCabinet> cabinets = store.cabinets(history.moment());
        WhatIfForm form = WhatIfForm.of(ctx, texts, cabinets, history.moment());
        Supposed supposed = new Supposed(desk.standard(history.moment()), history);
        WhatIfPage page = new WhatIfPages(texts).page(subject, form, cabinets, supposed);
        if (form.entered().isRefused()) {
            pages.refuse(ctx, page);
        } else {
            pages.show(ctx, page);
        }
    }
}
