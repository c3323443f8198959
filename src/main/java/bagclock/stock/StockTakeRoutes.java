package bagclock.stock;

import bagclock.platform.CsvTable;
import bagclock.platform.Entered;
import bagclock.platform.Names;
import bagclock.platform.NotThere;
import bagclock.platform.Pages;
import bagclock.platform.Visit;
import bagclock.register.KnownPlace;
import bagclock.stock.StockTake.Standing;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.stream.Stream;

/** Stock-takes as records: kept once, listed, shown, saved as a table. */
final class StockTakeRoutes {
    private final CountRoutes count;
    private final StockTakeStore store;
    private final Names names;
    private final Pages pages;
    private final Words words;
    private final Clock clock;

    /** Where stock-takes are counted and kept, and people named. */
    record Known(CountRoutes count, StockTakeStore store, Names names) {}

    StockTakeRoutes(Known known, Pages pages, Words words, Clock clock) {
        this.count = known.count();
        this.store = known.store();
        this.names = known.names();
        this.pages = pages;
        this.words = words;
        this.clock = clock;
    }

    void register(RoutesConfig routes) {
        routes.post("/stock/count/keep", this::keep, ActRoutes.WORKERS);
        routes.get("/stock/counts", this::list, ActRoutes.WORKERS);
        routes.get("/stock/counts/{id}", this::show, ActRoutes.WORKERS);
        routes.get("/stock/counts/{id}/csv", this::table, ActRoutes.WORKERS);
    }

    private void keep(Context ctx) {
        Instant now = clock.instant();
        Entered entered = Entered.of(ctx, words.texts());
        KnownPlace place =
                count.place(entered.text(FieldNames.PLACE)).orElseThrow(() -> new NotThere("no place to count"));
        String id = UUID.nameUUIDFromBytes(CounterRoutes.key(entered).getBytes(StandardCharsets.UTF_8))
                .toString();
        store.keep(new StockTake(
                id,
                place.code(),
                place.name(),
                now,
                Visit.of(ctx).signedIn().id(),
                count.lines(place, entered.all(FieldNames.FOUND))));
        ctx.redirect("/stock/counts/" + id, HttpStatus.SEE_OTHER);
    }

    private void list(Context ctx) {
        Instant now = clock.instant();
        pages.show(
                ctx,
                new StockTakesPage(
                        words.text("stock.takes"),
                        store.newest().stream()
                                .map(take -> new StockTakesPage.Line(
                                        take.id(),
                                        take.placeName(),
                                        words.texts().machine(take.takenAt()),
                                        words.texts().at(take.takenAt(), now),
                                        names.of(take.who()),
                                        take.count(Standing.FOUND),
                                        take.count(Standing.MISSING),
                                        take.count(Standing.UNEXPECTED),
                                        take.count(Standing.STRANGE)))
                                .toList()));
    }

    private StockTake take(Context ctx) {
        return store.take(ctx.pathParam("id")).orElseThrow(() -> new NotThere("no such stock-take"));
    }

    private void show(Context ctx) {
        StockTake take = take(ctx);
        String at = words.texts().at(take.takenAt(), clock.instant());
        pages.show(
                ctx,
                new StockTakePage(
                        words.text("stock.count.title", take.placeName()),
                        words.text("stock.take.lead", at, names.of(take.who())),
                        take.id(),
                        Stream.of(Standing.values())
                                .map(standing -> group(take, standing))
                                .toList()));
    }

    private StockTakePage.Group group(StockTake take, Standing standing) {
        return new StockTakePage.Group(
                words.text("stock.take." + standing.name(), take.count(standing)),
                standing != Standing.STRANGE,
                take.of(standing).stream()
                        .map(line -> new CountPage.Line(line.code(), said(line)))
                        .toList());
    }

    private String said(StockTake.Line line) {
        if (line.standing() == Standing.STRANGE) {
            return "";
        }
        return line.ledgerPlace().isEmpty()
                ? line.partType()
                : words.text("stock.count.is", line.partType(), line.ledgerPlace());
    }

    private void table(Context ctx) {
        StockTake take = take(ctx);
        String table = CsvTable.of(
                List.of("code", "standing", "part_type", "ledger_place", "counted_place", "taken_at", "who"),
                take.lines().stream().map(line -> cells(take, line)).toList());
        ctx.contentType("text/csv; charset=utf-8")
                .header("Content-Disposition", "attachment; filename=\"stock-take.csv\"")
                .result(table);
    }

    private List<String> cells(StockTake take, StockTake.Line line) {
        return Stream.of(
                        line.code(),
                        line.standing().name().toLowerCase(Locale.ROOT),
                        line.partType(),
                        line.ledgerPlace(),
                        take.placeCode(),
                        words.texts().machine(take.takenAt()),
                        names.of(take.who()))
                .map(CsvTable::defused)
                .toList();
    }
}
