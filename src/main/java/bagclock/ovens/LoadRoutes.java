package bagclock.ovens;

import bagclock.core.Refusal;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.desk.Command;
import bagclock.desk.Desk;
import bagclock.desk.ItemView;
import bagclock.platform.Choice;
import bagclock.platform.Entered;
import bagclock.platform.Pages;
import bagclock.platform.Role;
import bagclock.platform.Secret;
import bagclock.platform.Texts;
import bagclock.platform.Visit;
import bagclock.register.KnownPlace.BakeOven;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Loading an oven: all of a load goes in, or none of it. */
final class LoadRoutes {
    private static final String KEY = "key";
    private static final String OVEN = LoadForm.OVEN;
    private static final String TAG = LoadForm.TAG;
    private static final String OFF_PLAN = "offPlan";

    private final Desk desk;
    private final OvenStore store;
    private final Ovens ovens;
    private final Pages pages;
    private final Texts texts;
    private final Clock clock;
    private final OvenWords words;
    private final OvenPages ovenPages;
    private final PlanAtLoad plan;

    LoadRoutes(Ovens ovens, PlanAtLoad plan, Pages pages, Texts texts, Clock clock) {
        this.desk = ovens.desk();
        this.store = ovens.store();
        this.plan = plan;
        this.ovens = ovens;
        this.pages = pages;
        this.texts = texts;
        this.clock = clock;
        this.words = new OvenWords(texts);
        this.ovenPages = new OvenPages(words, texts);
    }

    void register(RoutesConfig routes) {
        routes.get("/ovens/load", this::show, Role.signedIn());
        routes.post("/ovens/load", this::load, Role.signedIn());
        routes.post("/ovens/load/scan", this::scan, Role.signedIn());
    }

    private void show(Context ctx) {
        Instant now = clock.instant();
        Map<String, String> values = new HashMap<>();
        values.put("at", texts.field(now));
        values.put("setPoint", Optional.ofNullable(ctx.queryParam("setPoint")).orElse(""));
        values.put(TAG, String.join(",", ctx.queryParams("tag")));
        values.put(OVEN, Optional.ofNullable(ctx.queryParam("oven")).orElse(""));
        pages.show(ctx, page(Entered.of(values, texts), Secret.token(), List.of(), now));
    }

    private LoadPage page(Entered entered, String key, List<String> refusals, Instant now) {
        return page(entered, new Said(key, ""), refusals, now);
    }

    /** The key of the form, and what was just done, in words. */
    private record Said(String key, String added) {}

    private LoadPage page(Entered entered, Said said, List<String> refusals, Instant now) {
        LoadPage page = ovenPages.load(entered, said.key(), refusals, store.ovens(now), ovens.queue(now));
        List<String> listed = page.itemChoices().stream().map(Choice::value).toList();
        List<Choice> others = entered.all(TAG).stream()
                .filter(tag -> !listed.contains(tag))
                .map(tag -> Choice.of(tag, tag))
                .toList();
        PlanAtLoad.Compared compared = LoadForm.soFar(entered, texts, now)
                .map(load -> plan.compare(load, now))
                .orElse(PlanAtLoad.Compared.NOTHING);
        return page.adding(said.added(), others)
                .beside(new LoadPage.Beside(
                        compared.planned(), compared.off(), !compared.off().isEmpty()));
    }

    /** One scan after another: an oven's code chooses the oven, a tag joins the load if nothing speaks against it. */
    private void scan(Context ctx) {
        Instant now = clock.instant();
        Entered entered = Entered.of(ctx, texts);
        String key = entered.text(KEY).isEmpty() ? Secret.token() : entered.text(KEY);
        String code = entered.text(LoadForm.CODE).toUpperCase(Locale.ROOT);
        Map<String, String> values = new HashMap<>();
        LoadForm.FIELDS.forEach(name -> values.put(name, entered.text(name)));
        values.put(LoadForm.CODE, "");
        Optional<BakeOven> oven =
                store.ovens(now).stream().filter(one -> one.code().equals(code)).findFirst();
        if (oven.isPresent()) {
            values.put(OVEN, code);
            String chosen = words.text("ovens.scan.oven", oven.get().name());
            pages.show(ctx, page(Entered.of(values, texts), new Said(key, chosen), List.of(), now));
            return;
        } else if (entered.all(TAG).contains(code)) {
            List<String> there = List.of(words.text("ovens.fit", code, words.text("ovens.scan.there")));
            pages.refuse(ctx, page(Entered.of(values, texts), key, there, now));
            return;
        }
        Optional<LoadForm> form = LoadForm.read(entered, now, words.text("ovens.items.none"));
        if (form.isEmpty()) {
            pages.refuse(ctx, page(entered, key, List.of(), now));
            return;
        }
        List<String> refusals = objections(form.get(), entered, now);
        if (entered.isRefused()) {
            pages.refuse(ctx, page(entered, key, refusals, now));
        } else if (!refusals.isEmpty()) {
            pages.refuse(ctx, page(Entered.of(values, texts), key, refusals, now));
        } else {
            values.put(TAG, String.join(",", form.get().tags()));
            String added =
                    words.text("ovens.scan.added", code, form.get().tags().size());
            pages.show(ctx, page(Entered.of(values, texts), new Said(key, added), List.of(), now));
        }
    }

    private void load(Context ctx) {
        Instant now = clock.instant();
        Entered entered = Entered.of(ctx, texts);
        String key = entered.text(KEY).isEmpty() ? Secret.token() : entered.text(KEY);
        Optional<LoadForm> form = LoadForm.read(entered, now, words.text("ovens.items.none"));
        List<String> refusals = form.map(load -> objections(load, entered, now)).orElse(List.of());
        if (form.isEmpty() || entered.isRefused() || !refusals.isEmpty()) {
            pages.refuse(ctx, page(entered, key, refusals, now));
            return;
        }
        PlanAtLoad.Compared compared = plan.compare(form.get(), now);
        if (!compared.off().isEmpty() && !entered.isChecked(OFF_PLAN)) {
            pages.refuse(ctx, page(entered, key, List.of(words.text("plan.match.ask")), now));
            return;
        }
        String who = Visit.of(ctx).signedIn().id();
        List<String> refused = start(form.get(), new Sender(who, key), now);
        if (refused.isEmpty()) {
            plan.keep(compared, who, now);
            ctx.redirect("/ovens?done=loaded", HttpStatus.SEE_OTHER);
        } else {
            pages.refuse(ctx, page(entered, key, refused, now));
        }
    }

    /** Who sends, and the key of the form. */
    private record Sender(String who, String key) {}

    private List<String> objections(LoadForm load, Entered entered, Instant now) {
        Optional<BakeOven> oven = store.ovens(now).stream()
                .filter(one -> one.code().equals(load.oven()))
                .findFirst();
        if (oven.isEmpty()) {
            entered.refuse("oven", words.text("entered.choose"));
            return List.of();
        }
        if (!oven.get().reaches(load.setPoint())) {
            entered.refuse("setPoint", words.text("ovens.set-point.range", words.ability(oven.get())));
            return List.of();
        }
        List<String> objections = new ArrayList<>();
        Optional<RelativeHumidity> shown = load.shown().or(() -> oven.get().holds());
        Fit fit = new Fit(words, load.setPoint(), shown);
        for (String tag : load.tags()) {
            Optional<ItemView> view = desk.item(tag, now);
            Optional<String> objection =
                    view.isEmpty() ? Optional.of(words.text("ovens.fit.unknown")) : fit.objection(view.get());
            objection.ifPresent(why -> objections.add(words.text("ovens.fit", tag, why)));
        }
        int taken = ovens.inside(now).taken(load.oven());
        if (taken + load.tags().size() > oven.get().positions()) {
            objections.add(
                    words.text("ovens.full", oven.get().name(), oven.get().positions() - taken));
        }
        return objections;
    }

    private List<String> start(LoadForm load, Sender sender, Instant now) {
        List<String> refused = new ArrayList<>();
        for (String tag : load.tags()) {
            Command.Header header = new Command.Header(sender.who(), load.at(), sender.key() + "/" + tag);
            Command command = new Command.StartBake(header, tag, load.oven(), load.setPoint(), load.shown());
            List<Refusal> refusals = desk.handle(command, now).fold(receipt -> List.of(), all -> all);
            if (!refusals.isEmpty()) {
                refused.add(words.text("ovens.fit", tag, words.refusals(refusals)));
            }
        }
        return refused;
    }
}
