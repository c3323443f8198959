package bagclock.tables;

import bagclock.core.Reason;
import bagclock.core.Refusal;
import bagclock.core.standard.Cell;
import bagclock.core.standard.CellKey;
import bagclock.desk.Desk;
import bagclock.platform.ChangedMeanwhile;
import bagclock.platform.Entered;
import bagclock.platform.Pages;
import bagclock.platform.Role;
import bagclock.platform.SentText;
import bagclock.platform.Visit;
import bagclock.register.Change;
import bagclock.register.ComparedCell;
import bagclock.tables.TablesRoutes.SiteWords;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A site's comparisons as a file, out and in: one comparison serves many sites. */
final class ConfirmationsRoutes {
    private static final String IMPORT = "/tables/import";

    private final Desk desk;
    private final TablesStore store;
    private final Pages pages;
    private final CellValues values;
    private final SiteWords site;
    private final ConfirmationPreview previews;

    ConfirmationsRoutes(Desk desk, TablesStore store, Pages pages, CellValues values, SiteWords site) {
        this.desk = desk;
        this.store = store;
        this.pages = pages;
        this.values = values;
        this.site = site;
        this.previews = new ConfirmationPreview(site.texts(), values);
    }

    void register(RoutesConfig routes) {
        routes.get("/tables/export", this::export, Role.signedIn());
        routes.get(IMPORT, ctx -> pages.show(ctx, previews.empty("")), Role.ENGINEER, Role.ADMINISTRATOR);
        routes.post(IMPORT, this::read, Role.ENGINEER, Role.ADMINISTRATOR);
    }

    private void export(Context ctx) {
        List<CellKey> order = values.shipped().cells().stream().map(Cell::key).toList();
        String text = ConfirmationsFile.write(
                values.shipped().edition().name(),
                store.inOrder(order, site.clock().instant()));
        ctx.contentType("text/csv; charset=utf-8")
                .header("Content-Disposition", "attachment; filename=\"compared-cells.csv\"")
                .result(text);
    }

    private void read(Context ctx) {
        Instant now = site.clock().instant();
        Optional<String> text = SentText.of(ctx);
        if (text.isEmpty()) {
            pages.refuse(ctx, previews.empty(site.texts().refusal(Refusal.of(Reason.FILE_UNREADABLE))));
            return;
        } else if (text.get().isBlank()) {
            pages.refuse(ctx, previews.empty(site.texts().messages().text("tables.import.nothing")));
            return;
        }
        ConfirmationsFile file = ConfirmationsFile.read(text.get(), values, site.today(now));
        Map<CellKey, ComparedCell> before = store.compared(now);
        List<ConfirmationsFile.Line> fresh = file.good().stream()
                .filter(line -> !line.cell().equals(before.get(line.cell().key())))
                .toList();
        boolean sure = "only".equals(ctx.formParam("good"));
        if (sure && !fresh.isEmpty() && keep(ctx, fresh, now)) {
            ctx.redirect("/tables?done=imported", HttpStatus.SEE_OTHER);
            return;
        }
        ConfirmationsPage page = previews.page(
                text.get(), file, fresh, before, new ConfirmationPreview.Basis(store.comparison(now), sure));
        if (sure || !file.bad().isEmpty()) {
            pages.refuse(ctx, page);
        } else {
            pages.show(ctx, page);
        }
    }

    private boolean keep(Context ctx, List<ConfirmationsFile.Line> fresh, Instant now) {
        int basedOn = Entered.of(ctx, site.texts())
                .count(ComparisonForm.BASED_ON, 0, Integer.MAX_VALUE)
                .orElse(0);
        Change change = new Change(now, now, Visit.of(ctx).signedIn().id(), basedOn);
        try {
            desk.keep(fresh.stream().map(ConfirmationsFile.Line::cell).toList(), change);
            return true;
        } catch (ChangedMeanwhile lost) {
            return false;
        }
    }
}
