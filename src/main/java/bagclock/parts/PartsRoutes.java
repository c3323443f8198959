package bagclock.parts;

import bagclock.desk.Desk;
import bagclock.parts.PartForms.State;
import bagclock.platform.ChangedMeanwhile;
import bagclock.platform.Database;
import bagclock.platform.Entered;
import bagclock.platform.Names;
import bagclock.platform.Pages;
import bagclock.platform.Role;
import bagclock.platform.Texts;
import bagclock.platform.Visit;
import bagclock.register.Change;
import bagclock.register.PartType;
import bagclock.register.Versioned;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Instant;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Part types: the list, one of them, the form, files. */
public final class PartsRoutes {
    private static final Set<String> DONE = Set.of("added", "changed", "imported");
    private static final String NUMBER = "number";
    private static final String SEEN = "seen";

    private final Desk desk;
    private final Pages pages;
    private final PartWords words;
    private final Clock clock;
    private final PartsStore store;
    private final PartPages partPages;
    private final PartForms forms;
    private final PartsImportRoutes imports;

    /** Routes of one site. */
    public PartsRoutes(Database database, Desk desk, Pages pages, Texts texts, Clock clock) {
        this.desk = desk;
        this.pages = pages;
        this.clock = clock;
        this.words = new PartWords(texts);
        this.store = new PartsStore(database);
        this.partPages = new PartPages(words, new Names(database));
        this.forms = new PartForms(words);
        this.imports = new PartsImportRoutes(desk, store, pages, words, clock);
    }

    /** Declares the routes. */
    public void register(RoutesConfig routes) {
        routes.get("/parts", this::list, Role.signedIn());
        routes.get("/parts/type", this::show, Role.signedIn());
        routes.get("/parts/new", this::showNew, Role.ENGINEER, Role.ADMINISTRATOR);
        routes.post("/parts/new", this::add, Role.ENGINEER, Role.ADMINISTRATOR);
        routes.get("/parts/change", this::showChange, Role.ENGINEER, Role.ADMINISTRATOR);
        routes.post("/parts/change", this::change, Role.ENGINEER, Role.ADMINISTRATOR);
        routes.get("/parts/export", this::export, Role.signedIn());
        imports.register(routes);
    }

    private void list(Context ctx) {
        ListForm asked = ListForm.of(ctx);
        pages.show(ctx, partPages.list(asked, store.list(asked, clock.instant()), done(ctx)));
    }

    private String done(Context ctx) {
        String act = ctx.queryParam("done");
        return act != null && DONE.contains(act) ? words.text("parts.done." + act) : "";
    }

    private void show(Context ctx) {
        Instant now = clock.instant();
        Versioned<PartType> type = store.one(number(ctx), now);
        String number = type.fact().number();
        pages.show(
                ctx, partPages.one(store.versions(number), type, desk.standard(now), store.items(number), done(ctx)));
    }

    private static String number(Context ctx) {
        return Optional.ofNullable(ctx.queryParam(NUMBER)).orElse("").strip();
    }

    private void export(Context ctx) {
        ctx.contentType("text/csv; charset=utf-8")
                .header("Content-Disposition", "attachment; filename=\"part-types.csv\"")
                .result(PartsCsv.of(store.all(ListForm.of(ctx), clock.instant())));
    }

    private void showNew(Context ctx) {
        Map<String, String> values = new HashMap<>();
        Arrays.stream(Column.values())
                .forEach(column -> Optional.ofNullable(ctx.queryParam(column.code()))
                        .ifPresent(value -> values.put(column.code(), value)));
        pages.show(ctx, forms.page(Entered.of(values, words.texts()), State.fresh(), List.of()));
    }

    private void add(Context ctx) {
        Instant now = clock.instant();
        Entered entered = Entered.of(ctx, words.texts());
        String number = entered.text(Column.NUMBER.code());
        if (store.find(number, now).isPresent()) {
            entered.refuse(Column.NUMBER.code(), words.text("parts.number.taken"));
        }
        keep(ctx, entered, State.fresh(), now);
    }

    private void showChange(Context ctx) {
        Instant now = clock.instant();
        Versioned<PartType> type = store.one(number(ctx), now);
        State state = new State(type.fact().number(), type.version().number(), "", false);
        Entered entered = Entered.of(PartForms.values(type.fact()), words.texts());
        pages.show(ctx, forms.page(entered, state, Doubts.about(type.fact(), desk.standard(now))));
    }

    private void change(Context ctx) {
        Instant now = clock.instant();
        Entered entered = Entered.of(ctx, words.texts());
        Versioned<PartType> before = store.one(entered.text(NUMBER), now);
        int basedOn = entered.count("basedOn", 1, Integer.MAX_VALUE)
                .orElse(before.version().number());
        keep(ctx, entered, new State(before.fact().number(), basedOn, "", false), now);
    }

    private void keep(Context ctx, Entered entered, State state, Instant now) {
        Map<Column, String> texts = PartForms.texts(entered);
        if (!state.number().isEmpty()) {
            texts.put(Column.NUMBER, state.number());
        }
        PartReading.Read read = PartReading.of(texts);
        read.faults()
                .forEach(fault ->
                        entered.refuse(fault.column().code(), words.texts().refusal(fault.refusal())));
        List<Doubt> doubts =
                read.type().map(type -> Doubts.about(type, desk.standard(now))).orElse(List.of());
        Set<String> seen = new HashSet<>(List.of(entered.text(SEEN).split(" ")));
        if (read.type().isEmpty() || entered.isRefused()) {
            refuse(ctx, entered, state.refused(words.text("parts.refused"), false), doubts);
        } else if (!doubts.isEmpty()
                && !seen.containsAll(List.of(PartForms.seen(doubts).split(" ")))) {
            refuse(ctx, entered, state.refused(words.text("parts.doubtful", doubts.size()), true), doubts);
        } else {
            keep(ctx, entered, state, read.type().get());
        }
    }

    private void refuse(Context ctx, Entered entered, State state, List<Doubt> doubts) {
        pages.refuse(ctx, forms.page(entered, state, doubts));
    }

    private void keep(Context ctx, Entered entered, State state, PartType type) {
        Instant now = clock.instant();
        try {
            desk.keep(type, new Change(now, now, Visit.of(ctx).signedIn().id(), state.basedOn()));
        } catch (ChangedMeanwhile lost) {
            Versioned<PartType> other = store.one(type.number(), now);
            String changed = words.labels(Changed.between(other.fact(), type));
            State again = new State(
                    type.number(), other.version().number(), words.text("parts.changed-meanwhile", changed), true);
            refuse(ctx, entered, again, Doubts.about(type, desk.standard(now)));
            return;
        }
        String done = state.number().isEmpty() ? "added" : "changed";
        ctx.redirect(PartPages.href(type.number()) + "&done=" + done, HttpStatus.SEE_OTHER);
    }
}
