package bagclock.tables;

import bagclock.core.standard.Cell;
import bagclock.core.standard.CellKey;
import bagclock.core.standard.Standard;
import bagclock.core.standard.Table;
import bagclock.desk.Decided;
import bagclock.desk.Desk;
import bagclock.platform.ChangedMeanwhile;
import bagclock.platform.Database;
import bagclock.platform.Entered;
import bagclock.platform.Messages;
import bagclock.platform.Names;
import bagclock.platform.NotThere;
import bagclock.platform.Pages;
import bagclock.platform.Person;
import bagclock.platform.Role;
import bagclock.platform.Texts;
import bagclock.platform.Visit;
import bagclock.register.Change;
import bagclock.register.ComparedCell;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The tables of the standard, compared cell by cell with the site's own copy. */
public final class TablesRoutes {
    private static final String NUMBER = "number";
    private static final Set<String> DONE = Set.of("compared", "imported", "taken-back");

    private final Desk desk;
    private final Pages pages;
    private final Messages messages;
    private final Texts texts;
    private final Clock clock;
    private final TablesStore store;
    private final CellValues values;
    private final TablePages words;
    private final ConfirmationsRoutes confirmations;

    /**
     * Routes of one site.
     *
     * @param shipped the tables without the site's own values
     */
    public TablesRoutes(Database database, Standard shipped, Desk desk, Pages pages, SiteWords site) {
        this.desk = desk;
        this.pages = pages;
        this.texts = site.texts();
        this.messages = texts.messages();
        this.clock = site.clock();
        this.store = new TablesStore(database);
        this.values = new CellValues(shipped);
        this.words = new TablePages(values, texts, new Names(database));
        this.confirmations = new ConfirmationsRoutes(desk, store, pages, values, site);
    }

    /** The site's words and its clock. */
    public record SiteWords(Texts texts, Clock clock) {
        LocalDate today(Instant now) {
            return now.atZone(texts.zone()).toLocalDate();
        }
    }

    /** Declares the routes. */
    public void register(RoutesConfig routes) {
        confirmations.register(routes);
        routes.get("/tables", this::all, Role.signedIn());
        routes.get("/tables/{table}", this::sheet, Role.signedIn());
        routes.get("/tables/{table}/cell", this::cell, Role.signedIn());
        routes.get("/tables/{table}/compare", this::showCompare, Role.ENGINEER, Role.ADMINISTRATOR);
        routes.post("/tables/{table}/compare", this::compare, Role.ENGINEER, Role.ADMINISTRATOR);
        routes.post("/tables/{table}/take-back", this::takeBack, Role.ENGINEER, Role.ADMINISTRATOR);
    }

    private void all(Context ctx) {
        Instant now = clock.instant();
        pages.show(ctx, words.all(desk.standard(now), desk.decided(now.minus(Decided.LATELY), now), done(ctx)));
    }

    private String done(Context ctx) {
        String act = ctx.queryParam("done");
        return act != null && DONE.contains(act) ? messages.text("tables.done." + act) : "";
    }

    private static Table table(Context ctx) {
        String path = ctx.pathParam("table");
        return TablePages.table(path).orElseThrow(() -> new NotThere("no table " + path));
    }

    private Layout layout(Context ctx, Instant now) {
        return Layout.of(table(ctx), desk.standard(now).cells());
    }

    private void sheet(Context ctx) {
        pages.show(ctx, words.sheet(layout(ctx, clock.instant()), done(ctx)));
    }

    private static int grid(Layout layout, String text) {
        int last = layout.grids().size() - 1;
        return text.matches("\\d{1,3}") ? Math.min(last, Integer.parseInt(text)) : 0;
    }

    private void showCompare(Context ctx) {
        Instant now = clock.instant();
        Layout layout = layout(ctx, now);
        int grid = grid(
                layout, Optional.ofNullable(ctx.queryParam(ComparisonForm.GRID)).orElse(""));
        Entered empty = Entered.of(
                Map.of(
                        ComparisonForm.BY,
                        Visit.of(ctx).signedIn().display(),
                        ComparisonForm.ON,
                        today(now).toString()),
                texts);
        pages.show(ctx, words.comparing(layout, grid, empty, store.comparison(now), ""));
    }

    private LocalDate today(Instant now) {
        return now.atZone(texts.zone()).toLocalDate();
    }

    private void compare(Context ctx) {
        Instant now = clock.instant();
        Layout layout = layout(ctx, now);
        Entered entered = Entered.of(ctx, texts);
        int grid = grid(layout, entered.text(ComparisonForm.GRID));
        List<ComparedCell> compared =
                ComparisonForm.cells(entered, layout.grids().get(grid), values, today(now));
        String refusal = entered.isRefused()
                ? messages.text("tables.refused")
                : compared.isEmpty() ? messages.text("tables.nothing-compared") : "";
        if (refusal.isEmpty()) {
            refusal = keep(ctx, entered, compared, now);
        }
        if (refusal.isEmpty()) {
            ctx.redirect(TablePages.href(layout.table()) + "?done=compared", HttpStatus.SEE_OTHER);
        } else {
            pages.refuse(ctx, words.comparing(layout, grid, entered, store.comparison(now), refusal));
        }
    }

    /** Why nothing was kept; empty when all was. */
    private String keep(Context ctx, Entered entered, List<ComparedCell> compared, Instant now) {
        Person person = Visit.of(ctx).signedIn();
        int basedOn =
                entered.count(ComparisonForm.BASED_ON, 0, Integer.MAX_VALUE).orElse(0);
        try {
            desk.keep(compared, new Change(now, now, person.id(), basedOn));
            return "";
        } catch (ChangedMeanwhile lost) {
            return messages.text("tables.changed-meanwhile");
        }
    }

    private void cell(Context ctx) {
        Instant now = clock.instant();
        CellKey key = new CellKey(table(ctx), query(ctx, "row"), query(ctx, "column"));
        Layout layout = layout(ctx, now);
        Layout.Placed placed = placed(layout).stream()
                .filter(one -> one.cell().key().equals(key))
                .findFirst()
                .orElseThrow(() -> new NotThere("no cell " + key));
        pages.show(ctx, words.cell(layout, placed, store.history(key), store.comparison(now)));
    }

    private static String query(Context ctx, String name) {
        return Optional.ofNullable(ctx.queryParam(name)).orElse("");
    }

    private static List<Layout.Placed> placed(Layout layout) {
        return layout.grids().stream()
                .flatMap(grid -> grid.rows().stream())
                .flatMap(row -> row.cells().stream())
                .toList();
    }

    private void takeBack(Context ctx) {
        Instant now = clock.instant();
        Entered entered = Entered.of(ctx, texts);
        String number = entered.text(NUMBER);
        Cell cell = placed(layout(ctx, now)).stream()
                .filter(one -> Integer.toString(one.number()).equals(number))
                .map(Layout.Placed::cell)
                .findFirst()
                .orElseThrow(() -> new NotThere("no cell " + number));
        Person person = Visit.of(ctx).signedIn();
        int basedOn =
                entered.count(ComparisonForm.BASED_ON, 0, Integer.MAX_VALUE).orElse(0);
        ComparedCell back = new ComparedCell(cell.key(), Optional.empty(), person.display(), today(now), "");
        desk.keep(List.of(back), new Change(now, now, person.id(), basedOn));
        ctx.redirect(TablePages.href(cell.table()) + "?done=taken-back", HttpStatus.SEE_OTHER);
    }
}
