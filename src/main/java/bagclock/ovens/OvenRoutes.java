package bagclock.ovens;

import bagclock.desk.Desk;
import bagclock.desk.ItemView;
import bagclock.platform.Entered;
import bagclock.platform.NotThere;
import bagclock.platform.Pages;
import bagclock.platform.Role;
import bagclock.platform.Texts;
import bagclock.platform.Visit;
import bagclock.register.Change;
import bagclock.register.KnownPlace;
import bagclock.register.KnownPlace.BakeOven;
import bagclock.register.Versioned;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The planner's front door, the ovens themselves, and by when items are needed. */
final class OvenRoutes {
    private static final Set<String> DONE = Set.of("loaded", "unloaded", "hot", "kept", "need");
    private static final Role[] KEEPERS = {Role.PLANNER, Role.ENGINEER};
    private static final String NEEDED_BY = "neededBy";
    private static final String WEIGHT = "weight";
    static final int MOST_WEIGHT = 100;

    private final Desk desk;
    private final OvenStore store;
    private final Ovens ovens;
    private final RunPages runPages;
    private final Pages pages;
    private final Texts texts;
    private final Clock clock;
    private final OvenPages words;

    OvenRoutes(Ovens ovens, RunPages runPages, Pages pages, Texts texts, Clock clock) {
        this.desk = ovens.desk();
        this.store = ovens.store();
        this.ovens = ovens;
        this.runPages = runPages;
        this.pages = pages;
        this.texts = texts;
        this.clock = clock;
        this.words = new OvenPages(new OvenWords(texts), texts);
    }

    void register(RoutesConfig routes) {
        routes.get("/ovens", this::overview, Role.signedIn());
        routes.get("/ovens/new", ctx -> pages.show(ctx, fresh(Entered.of(Map.of(), texts))), KEEPERS);
        routes.post("/ovens/new", this::add, KEEPERS);
        routes.get("/ovens/needs/{tag}", this::showNeed, KEEPERS);
        routes.post("/ovens/needs/{tag}", this::setNeed, KEEPERS);
        routes.get("/ovens/{code}/change", this::showChange, KEEPERS);
        routes.post("/ovens/{code}/change", this::change, KEEPERS);
    }

    private void overview(Context ctx) {
        Instant now = clock.instant();
        String act = ctx.queryParam("done");
        String done = act != null && DONE.contains(act) ? texts.messages().text("ovens.done." + act) : "";
        Inside inside = ovens.inside(now);
        pages.show(
                ctx,
                words.overview(store.ovens(now), inside, ovens.queue(now), done, now)
                        .proving(runPages.proofs(inside.loads(), now)));
    }

    private OvenPage fresh(Entered entered) {
        return words.oven(entered, texts.messages().text("ovens.new"), "/ovens/new", 0);
    }

    private void add(Context ctx) {
        Instant now = clock.instant();
        Entered entered = Entered.of(ctx, texts);
        String code = OvenForm.code(entered, texts);
        Optional<BakeOven> oven = OvenForm.oven(entered, code, texts);
        if (store.isTaken(code, now)) {
            entered.refuse("code", texts.messages().text("ovens.code.taken"));
        }
        if (oven.isEmpty() || entered.isRefused()) {
            pages.refuse(ctx, fresh(entered));
            return;
        }
        keep(ctx, oven.get(), 0, now);
    }

    private void keep(Context ctx, BakeOven oven, int basedOn, Instant now) {
        desk.keep(oven, new Change(now, now, Visit.of(ctx).signedIn().id(), basedOn));
        ctx.redirect("/ovens?done=kept", HttpStatus.SEE_OTHER);
    }

    private void showChange(Context ctx) {
        Versioned<KnownPlace> before = store.oven(ctx.pathParam("code"), clock.instant());
        Entered shown = Entered.of(OvenForm.values((BakeOven) before.fact(), texts), texts);
        pages.show(ctx, changed(shown, before, before.version().number()));
    }

    private OvenPage changed(Entered entered, Versioned<KnownPlace> before, int basedOn) {
        KnownPlace oven = before.fact();
        return words.oven(entered, oven.name(), "/ovens/" + oven.code() + "/change", basedOn);
    }

    private void change(Context ctx) {
        Instant now = clock.instant();
        Versioned<KnownPlace> before = store.oven(ctx.pathParam("code"), now);
        Entered entered = Entered.of(ctx, texts);
        int basedOn = entered.count("basedOn", 1, Integer.MAX_VALUE)
                .orElse(before.version().number());
        Optional<BakeOven> oven = OvenForm.oven(entered, before.fact().code(), texts);
        if (oven.isEmpty()) {
            pages.refuse(ctx, changed(entered, before, basedOn));
            return;
        }
        keep(ctx, oven.get(), basedOn, now);
    }

    private ItemView item(Context ctx) {
        String tag = ctx.pathParam("tag");
        return desk.item(tag, clock.instant()).orElseThrow(() -> new NotThere("no item " + tag));
    }

    private void showNeed(Context ctx) {
        ItemView view = item(ctx);
        Optional<OvenStore.Need> need =
                Optional.ofNullable(store.needs().get(view.item().tag()));
        Map<String, String> values = Map.of(
                NEEDED_BY,
                need.flatMap(OvenStore.Need::by).map(texts::field).orElse(""),
                WEIGHT,
                need.map(OvenStore.Need::weight).map(String::valueOf).orElse("1"));
        pages.show(ctx, words.need(view, Entered.of(values, texts)));
    }

    private void setNeed(Context ctx) {
        ItemView view = item(ctx);
        Entered entered = Entered.of(ctx, texts);
        Optional<Instant> neededBy = entered.text(NEEDED_BY).isEmpty() ? Optional.empty() : entered.time(NEEDED_BY);
        Optional<Integer> weight =
                entered.text(WEIGHT).isEmpty() ? Optional.of(1) : entered.count(WEIGHT, 1, MOST_WEIGHT);
        if (entered.isRefused()) {
            pages.refuse(ctx, words.need(view, entered));
            return;
        }
        OvenStore.Need need = new OvenStore.Need(view.item().tag(), neededBy.orElse(null), weight.orElseThrow());
        store.noteNeed(need, Visit.of(ctx).signedIn().id(), clock.instant());
        ctx.redirect("/ovens?done=need", HttpStatus.SEE_OTHER);
    }
}
