package bagclock.ovens;

import bagclock.core.proof.ChartProof;
import bagclock.logfile.Layout;
import bagclock.platform.Entered;
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
import java.util.Optional;

/** The chart of a load: upload, what must be said, what it would prove, keeping it as proof and taking that back. */
final class ChartRoutes {
    private static final String RUN = "/ovens/{code}/loads/{at}";
    private static final String FILE = "file";

    private final Ovens ovens;
    private final Charts charts;
    private final RunPages runPages;
    private final ChartPages words;
    private final Pages pages;
    private final Texts texts;
    private final Clock clock;

    ChartRoutes(Ovens ovens, RunPages runPages, Pages pages, Texts texts, Clock clock) {
        this.ovens = ovens;
        this.charts = runPages.charts();
        this.runPages = runPages;
        this.words = new ChartPages(runPages.words(), runPages.chartWords(), texts);
        this.pages = pages;
        this.texts = texts;
        this.clock = clock;
    }

    void register(RoutesConfig routes) {
        routes.post(RUN + "/charts", this::upload, Role.signedIn());
        routes.get(RUN + "/charts/{id}", this::show, Role.signedIn());
        routes.post(RUN + "/charts/{id}/look", this::look, Role.signedIn());
        routes.post(RUN + "/charts/{id}/keep", this::keep, Role.signedIn());
        routes.post(RUN + "/charts/{id}/take-back", this::takeBack, Role.signedIn());
    }

    private static String who(Context ctx) {
        return Visit.of(ctx).signedIn().id();
    }

    private void upload(Context ctx) {
        Instant now = clock.instant();
        Load load = RunRoutes.load(ctx, ovens, now);
        UploadedFile file = ctx.uploadedFile(FILE);
        if (file == null || file.size() == 0) {
            Entered entered = Entered.of(RunRoutes.usual(load, now, runPages.words(), texts), texts);
            entered.refuse(FILE, texts.messages().text("climate.file.choose"));
            RunPages.Told told = RunPages.Told.fresh(RunRoutes.places(ovens.store(), now));
            pages.refuse(ctx, runPages.run(load, entered, told, now));
            return;
        }
        String name = file.filename().isBlank() ? load.oven().name() : file.filename();
        LoggerFile kept = charts.store().add(load, name, file.content(), new Source(who(ctx), now));
        ctx.redirect(OvenPages.href(load) + "/charts/" + kept.id(), HttpStatus.SEE_OTHER);
    }

    /** One look at a chart. */
    private record Look(Load load, LoggerFile file, Optional<Layout> layout, Instant now) {}

    private Look at(Context ctx) {
        Instant now = clock.instant();
        Load load = RunRoutes.load(ctx, ovens, now);
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
        ChartProof.Stay stay = new ChartProof.Stay(look.load().loadedAt(), look.now());
        return charts.weigh(look.load(), look.file(), read, stay, look.now());
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
        Load load = look.load();
        ProofRow.Head head = new ProofRow.Head(load.oven().code(), load.loadedAt(), look.now(), who(ctx));
        charts.store().add(ProofRow.of(head, look.file().id(), read.answers()));
        ctx.redirect(OvenPages.href(load), HttpStatus.SEE_OTHER);
    }

    private void takeBack(Context ctx) {
        Instant now = clock.instant();
        Load load = RunRoutes.load(ctx, ovens, now);
        charts.store()
                .proof(load)
                .filter(row -> row.fileId().equals(ctx.pathParam("id")))
                .ifPresent(row -> charts.store().add(row.takenBack(now, who(ctx))));
        ctx.redirect(OvenPages.href(load), HttpStatus.SEE_OTHER);
    }
}
