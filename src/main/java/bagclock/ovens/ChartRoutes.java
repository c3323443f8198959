package bagclock.ovens;

import bagclock.logfile.Layout;
import bagclock.platform.Entered;
import bagclock.platform.NotAllowed;
import bagclock.platform.Page;
import bagclock.platform.Pages;
import bagclock.platform.Role;
import bagclock.platform.Texts;
import bagclock.platform.Visit;
import bagclock.readings.LoggerFile;
import bagclock.readings.Source;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The chart of a load, or of a run that ended: upload, what must be said, what it would prove, keeping it as proof and
 * taking that back. Of a run that ended it corrects the hours.
 */
final class ChartRoutes {
    private static final String LOADS = "/ovens/{code}/loads/{at}";
    private static final String RUNS = "/ovens/{code}/runs/{at}";
    private static final String FILE = "file";
    private static final String DECIDED = "decided";

    private final Ovens ovens;
    private final Charts charts;
    private final RunPages runPages;
    private final EndedPages endedPages;
    private final EndedRuns ended;
    private final LateProof late;
    private final ChartPages words;
    private final Pages pages;
    private final Texts texts;
    private final Clock clock;

    ChartRoutes(Ovens ovens, EndedPages endedPages, Pages pages, Texts texts, Clock clock) {
        this.ovens = ovens;
        this.runPages = endedPages.runPages();
        this.charts = runPages.charts();
        this.endedPages = endedPages;
        this.ended = endedPages.runs();
        this.late = endedPages.late();
        this.words = new ChartPages(runPages.words(), runPages.chartWords(), texts);
        this.pages = pages;
        this.texts = texts;
        this.clock = clock;
    }

    void register(RoutesConfig routes) {
        for (String run : List.of(LOADS, RUNS)) {
            routes.post(run + "/charts", this::upload, Role.signedIn());
            routes.get(run + "/charts/{id}", this::show, Role.signedIn());
            routes.post(run + "/charts/{id}/look", this::look, Role.signedIn());
            routes.post(run + "/charts/{id}/keep", this::keep, Role.signedIn());
            routes.post(run + "/charts/{id}/take-back", this::takeBack, Role.signedIn());
        }
    }

    private Load load(Context ctx, Instant now) {
        return ctx.path().contains("/runs/")
                ? ended.load(ctx.pathParam("code"), RunRoutes.moment(ctx), now)
                : RunRoutes.load(ctx, ovens, now);
    }

    private static String who(Context ctx) {
        return Visit.of(ctx).signedIn().id();
    }

    private void upload(Context ctx) {
        Instant now = clock.instant();
        Load load = load(ctx, now);
        UploadedFile file = ctx.uploadedFile(FILE);
        if (file == null || file.size() == 0) {
            pages.refuse(ctx, withoutFile(load, now));
            return;
        }
        String name = file.filename().isBlank() ? load.oven().name() : file.filename();
        LoggerFile kept = charts.store().add(load, name, file.content(), new Source(who(ctx), now));
        ctx.redirect(OvenPages.href(load) + "/charts/" + kept.id(), HttpStatus.SEE_OTHER);
    }

    private Page withoutFile(Load load, Instant now) {
        Entered entered = Entered.of(RunRoutes.usual(load, now, runPages.words(), texts), texts);
        entered.refuse(FILE, texts.messages().text("climate.file.choose"));
        return load.outAt().isPresent()
                ? endedPages.page(load, entered, List.of(), now)
                : runPages.run(load, entered, RunPages.Told.fresh(RunRoutes.places(ovens.store(), now)), now);
    }

    /** One look at a chart. */
    private record Look(Load load, LoggerFile file, Optional<Layout> layout, Instant now) {}

    private Look at(Context ctx) {
        Instant now = clock.instant();
        Load load = load(ctx, now);
        LoggerFile file = charts.store().file(load, ctx.pathParam("id"));
        return new Look(load, file, charts.layout(file), now);
    }

    private void show(Context ctx) {
        Look look = at(ctx);
        if (look.layout().isEmpty()) {
            pages.show(ctx, words.unreadable(look.load(), look.file()));
            return;
        }
        Layout layout = look.layout().get();
        ChartAnswers said = charts.store()
                .saidLast(look.load().oven().code())
                .map(last -> last.on(layout))
                .orElseGet(() -> ChartAnswers.usual(layout));
        Entered entered = Entered.of(ChartForm.values(said, layout), texts);
        pages.show(ctx, page(look, layout, charts.read(look.file(), layout, said), entered));
    }

    private ChartPage page(Look look, Layout layout, ReadChart read, Entered entered) {
        Optional<Charts.Weighed> weighed = read.isReady() ? Optional.of(weigh(look, read)) : Optional.empty();
        return words.page(new ChartPages.Shown(look.load(), look.file(), layout, read), weighed, entered, look.now());
    }

    private Charts.Weighed weigh(Look look, ReadChart read) {
        return charts.weigh(look.load(), look.file(), read, look.load().outAt().orElse(look.now()), look.now());
    }

    /** With what was said so far. */
    private void look(Context ctx) {
        Look look = at(ctx);
        if (look.layout().isEmpty()) {
            pages.refuse(ctx, words.unreadable(look.load(), look.file()));
            return;
        }
        Entered entered = Entered.of(ctx, texts);
        ReadChart read = said(look, entered);
        ChartPage page = page(look, look.layout().get(), read, entered);
        if (entered.isRefused()) {
            pages.refuse(ctx, page);
        } else {
            pages.show(ctx, page);
        }
    }

    private ReadChart said(Look look, Entered entered) {
        Layout layout = look.layout().orElseThrow();
        return charts.read(look.file(), layout, ChartForm.answers(entered, layout, texts.messages()));
    }

    private void keep(Context ctx) {
        Look look = at(ctx);
        if (look.layout().isEmpty()) {
            pages.refuse(ctx, words.unreadable(look.load(), look.file()));
            return;
        }
        Entered entered = Entered.of(ctx, texts);
        ReadChart read = said(look, entered);
        if (entered.isRefused() || !read.isReady()) {
            pages.refuse(ctx, page(look, look.layout().get(), read, entered));
            return;
        }
        boolean decided = entered.isChecked(DECIDED);
        if (decided && !Visit.of(ctx).signedIn().isOneOf(RunRoutes.DECIDES)) {
            throw new NotAllowed("what was too hot waits for an engineer");
        }
        Load load = look.load();
        List<String> refused = correct(look, read, new LateProof.Word(who(ctx), decided, look.now()));
        if (load.outAt().isPresent() && !refused.isEmpty()) {
            pages.refuse(ctx, endedPages.page(load, Entered.of(Map.of(), texts), refused, look.now()));
            return;
        }
        ProofRow.Head head = new ProofRow.Head(load.oven().code(), load.loadedAt(), look.now(), who(ctx));
        charts.store().add(ProofRow.of(head, look.file().id(), read.answers()));
        ctx.redirect(OvenPages.href(load), HttpStatus.SEE_OTHER);
    }

    /** What of the run is out by now: all of it, or what was taken out before. */
    private List<String> correct(Look look, ReadChart read, LateProof.Word word) {
        Load load = look.load();
        return ended.find(load.oven().code(), load.loadedAt(), look.now())
                .map(out -> late.prove(out, at -> charts.weigh(load, look.file(), read, at, look.now()), word))
                .orElse(List.of());
    }

    private void takeBack(Context ctx) {
        Instant now = clock.instant();
        Load load = load(ctx, now);
        Optional<ProofRow> row =
                charts.store().proof(load).filter(one -> one.fileId().equals(ctx.pathParam("id")));
        List<String> refused = row.flatMap(one -> ended.find(load.oven().code(), load.loadedAt(), now))
                .map(out -> late.takeBack(out, new LateProof.Word(who(ctx), false, now)))
                .orElse(List.of());
        if (!refused.isEmpty()) {
            pages.refuse(ctx, endedPages.page(load, Entered.of(Map.of(), texts), refused, now));
            return;
        }
        row.ifPresent(one -> charts.store().add(one.takenBack(now, who(ctx))));
        ctx.redirect(OvenPages.href(load), HttpStatus.SEE_OTHER);
    }
}
