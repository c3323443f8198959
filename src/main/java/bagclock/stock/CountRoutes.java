package bagclock.stock;

import bagclock.desk.Command;
import bagclock.desk.Desk;
import bagclock.desk.ItemQuery;
import bagclock.desk.ItemRow;
import bagclock.desk.ItemView;
import bagclock.ledger.Item;
import bagclock.platform.Entered;
import bagclock.platform.Pages;
import bagclock.platform.Secret;
import bagclock.platform.Visit;
import bagclock.register.KnownPlace;
import bagclock.stock.CounterPage.Told;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The stock-take of a place: what is there is scanned one after another, then the differences are shown with what to do.
 * What was scanned stands in the form itself, so that nothing is half written down.
 */
final class CountRoutes {
    private static final int PAGE = 500;
    private static final int MOST = 5000;
    private static final int LONGEST_CODE = 400;

    private final Desk desk;
    private final StockStore store;
    private final Pages pages;
    private final Words words;
    private final Clock clock;

    CountRoutes(Desk desk, StockStore store, Pages pages, Words words, Clock clock) {
        this.desk = desk;
        this.store = store;
        this.pages = pages;
        this.words = words;
        this.clock = clock;
    }

    void register(RoutesConfig routes) {
        routes.get("/stock/count", this::show, ActRoutes.WORKERS);
        routes.post("/stock/count", this::scan, ActRoutes.WORKERS);
        routes.post("/stock/count/differences", ctx -> differences(ctx, Told.NOTHING), ActRoutes.WORKERS);
        routes.post("/stock/count/here", this::here, ActRoutes.WORKERS);
    }

    Optional<KnownPlace> place(String code) {
        return store.place(code, clock.instant()).filter(place -> !(place instanceof KnownPlace.BakeOven));
    }

    private void show(Context ctx) {
        String code = Optional.ofNullable(ctx.queryParam(FieldNames.PLACE)).orElse("");
        pages.show(ctx, page(place(code), List.of(), Told.NOTHING, false));
    }

    private void scan(Context ctx) {
        Entered entered = Entered.of(ctx, words.texts());
        Optional<KnownPlace> place = place(entered.text(FieldNames.PLACE));
        Set<String> found = new LinkedHashSet<>(entered.all(FieldNames.FOUND));
        String code = entered.text(FieldNames.CODE).replace(",", "");
        if (code.isEmpty() || place.isEmpty()) {
            pages.refuse(ctx, page(place, List.copyOf(found), Told.NOTHING, false));
            return;
        }
        boolean again = !found.add(code);
        Optional<ItemView> item = desk.item(code, clock.instant());
        String key = again
                ? "stock.count.again"
                : item.isEmpty()
                        ? "stock.count.nothing"
                        : isAt(item.get().item(), place.get()) ? "stock.count.right" : "stock.count.elsewhere";
        Told told = new Told(
                item.isPresent(),
                words.text(key, code),
                item.map(view -> held(view.item())).orElse(""));
        pages.show(ctx, page(place, List.copyOf(found), told, false));
    }

    private static boolean isAt(Item item, KnownPlace place) {
        return !item.ended() && item.placeCode().filter(place.code()::equals).isPresent();
    }

    private void differences(Context ctx, Told told) {
        Entered entered = Entered.of(ctx, words.texts());
        pages.show(ctx, page(place(entered.text(FieldNames.PLACE)), entered.all(FieldNames.FOUND), told, true));
    }

    /** Everything found that the ledger has elsewhere is moved here, or one of them. */
    private void here(Context ctx) {
        Entered entered = Entered.of(ctx, words.texts());
        Command.Header header =
                new Command.Header(Visit.of(ctx).signedIn().id(), clock.instant(), CounterRoutes.key(entered));
        Batch batch = Batch.move(desk, entered.all(FieldNames.TAGS), entered.text(FieldNames.PLACE), header);
        List<String> why = batch.refused().stream()
                .map(one -> one.tag() + ": " + String.join(" ", words.refusals(one.why())))
                .toList();
        differences(
                ctx,
                new Told(
                        why.isEmpty(),
                        words.text("stock.count.moved", batch.done().size()),
                        String.join(" ", why)));
    }

    private CountPage page(Optional<KnownPlace> place, List<String> found, Told told, boolean finished) {
        Instant now = clock.instant();
        Map<String, Item> expected = place.map(this::expected).orElse(Map.of());
        List<CountPage.Line> scanned = new ArrayList<>();
        List<CountPage.Line> extra = new ArrayList<>();
        List<CountPage.Line> strange = new ArrayList<>();
        for (String tag : found) {
            Optional<Item> item = Optional.ofNullable(expected.get(tag))
                    .or(() -> desk.item(tag, now).map(ItemView::item));
            CountPage.Line line =
                    new CountPage.Line(tag, item.map(this::held).orElse(words.text("stock.count.strange")));
            scanned.add(line);
            if (item.isEmpty()) {
                strange.add(line);
            } else if (!expected.containsKey(tag)) {
                extra.add(line);
            }
        }
        Collections.reverse(scanned);
        return new CountPage(
                place.map(one -> words.text("stock.count.title", one.name()))
                        .orElseGet(() -> words.text("stock.count")),
                place.map(one -> words.text("stock.count.lead", expected.size(), found.size()))
                        .orElseGet(() -> words.text("stock.count.choose")),
                place.map(KnownPlace::code).orElse(""),
                Secret.token(),
                String.join(",", found),
                told,
                places(now),
                scanned,
                finished,
                missing(expected, Set.copyOf(found), now),
                extra,
                strange);
    }

    /** Everything that was expected at a place or scanned there, with how it stands. */
    List<StockTake.Line> lines(KnownPlace place, List<String> found) {
        Map<String, Item> expected = expected(place);
        List<StockTake.Line> lines = new ArrayList<>();
        for (String code : found) {
            Optional<Item> item = Optional.ofNullable(expected.get(code))
                    .or(() -> desk.item(code, clock.instant()).map(ItemView::item));
            StockTake.Standing standing = item.isEmpty()
                    ? StockTake.Standing.STRANGE
                    : expected.containsKey(code) ? StockTake.Standing.FOUND : StockTake.Standing.UNEXPECTED;
            lines.add(line(code, standing, item));
        }
        expected.values().stream()
                .filter(item -> !found.contains(item.tag()))
                .forEach(item -> lines.add(line(item.tag(), StockTake.Standing.MISSING, Optional.of(item))));
        return lines;
    }

    private static StockTake.Line line(String code, StockTake.Standing standing, Optional<Item> item) {
        return new StockTake.Line(
                code.length() > LONGEST_CODE ? code.substring(0, LONGEST_CODE) : code,
                standing,
                item.map(Item::partType).orElse(""),
                item.flatMap(Item::placeCode).orElse(""));
    }

    private Map<String, Item> expected(KnownPlace place) {
        Map<String, Item> expected = new LinkedHashMap<>();
        for (int page = 0; page * PAGE < MOST; page++) {
            List<ItemRow> rows = desk.items(ItemQuery.OPEN.at(place.code()).page(page, PAGE), clock.instant())
                    .rows();
            rows.forEach(row -> expected.put(row.item().tag(), row.item()));
            if (rows.size() < PAGE) {
                break;
            }
        }
        return expected;
    }

    private String held(Item item) {
        return words.text("stock.count.is", item.partType(), words.where(item));
    }

    private List<CounterPage.Place> places(Instant now) {
        return store.places(now).stream()
                .filter(one -> !(one instanceof KnownPlace.BakeOven))
                .map(one -> new CounterPage.Place(one.code(), one.name()))
                .toList();
    }

    private List<CountPage.Line> missing(Map<String, Item> expected, Set<String> found, Instant now) {
        return expected.values().stream()
                .filter(item -> !found.contains(item.tag()))
                .map(item -> new CountPage.Line(item.tag(), missing(item, now)))
                .toList();
    }

    private String missing(Item item, Instant now) {
        return words.text("stock.count.missing", item.partType(), words.texts().at(item.changedAt(), now));
    }
}
