package bagclock.stock;

import bagclock.desk.Command;
import bagclock.desk.Desk;
import bagclock.desk.ItemQuery;
import bagclock.desk.ItemRow;
import bagclock.ledger.Item;
import bagclock.platform.Entered;
import bagclock.platform.NotThere;
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
import java.util.List;
import java.util.Optional;

/** A whole trolley, shelf or bench moved at once. Exactly what the page showed is moved. */
final class TrolleyRoutes {
    private static final int MOST = 500;

    private final Desk desk;
    private final StockStore store;
    private final Pages pages;
    private final Words words;
    private final Clock clock;

    TrolleyRoutes(Desk desk, StockStore store, Pages pages, Words words, Clock clock) {
        this.desk = desk;
        this.store = store;
        this.pages = pages;
        this.words = words;
        this.clock = clock;
    }

    void register(RoutesConfig routes) {
        routes.get("/stock/trolley", this::show, ActRoutes.WORKERS);
        routes.post("/stock/trolley", this::move, ActRoutes.WORKERS);
        routes.post("/stock/trolley/take-back", this::takeBack, ActRoutes.WORKERS);
    }

    private void show(Context ctx) {
        String code = Optional.ofNullable(ctx.queryParam(FieldNames.FROM)).orElse("");
        pages.show(ctx, page(from(code), Told.NOTHING, List.of(), List.of()));
    }

    private KnownPlace from(String code) {
        return store.place(code, clock.instant())
                .filter(place -> !(place instanceof KnownPlace.BakeOven))
                .orElseThrow(() -> new NotThere("no place " + code));
    }

    private void move(Context ctx) {
        Instant now = clock.instant();
        Entered entered = Entered.of(ctx, words.texts());
        KnownPlace from = from(entered.text(FieldNames.FROM));
        String code = entered.text(FieldNames.CODE);
        Optional<KnownPlace> to = store.place(code, now);
        if (to.isEmpty() || to.get() instanceof KnownPlace.BakeOven || code.equals(from.code())) {
            String text = words.text(
                    to.isEmpty() ? "stock.scan.unknown" : "stock.trolley.not-there",
                    to.map(KnownPlace::name).orElse(code));
            pages.refuse(ctx, page(from, new Told(false, text, ""), List.of(), List.of()));
            return;
        }
        Command.Header header = new Command.Header(Visit.of(ctx).signedIn().id(), now, CounterRoutes.key(entered));
        Batch batch = Batch.move(desk, entered.all(FieldNames.TAGS), code, header);
        String title =
                words.text("stock.trolley.moved", batch.done().size(), to.get().name());
        List<TrolleyPage.Item> refused = batch.refused().stream()
                .map(one -> new TrolleyPage.Item(one.tag(), String.join(" ", words.refusals(one.why()))))
                .toList();
        Told told = new Told(
                refused.isEmpty() && !batch.done().isEmpty(),
                title,
                refused.isEmpty() ? "" : words.text("stock.trolley.left", refused.size()));
        List<String> moved = batch.done().stream()
                .map(receipt -> receipt.tag() + ":" + receipt.seq())
                .toList();
        pages.show(ctx, page(from, told, refused, moved));
    }

    /** Each of the entries that the move wrote. */
    private void takeBack(Context ctx) {
        Instant now = clock.instant();
        Entered entered = Entered.of(ctx, words.texts());
        KnownPlace from = from(entered.text(FieldNames.FROM));
        String who = Visit.of(ctx).signedIn().id();
        List<TrolleyPage.Item> refused = new ArrayList<>();
        int back = 0;
        for (String entry : entered.all("moved")) {
            String[] parts = entry.split(":", 2);
            int seq = parts.length == 2 && parts[1].matches("\\d{1,6}") ? Integer.parseInt(parts[1]) : 0;
            Command.Header header = new Command.Header(who, now, CounterRoutes.key(entered) + "/" + parts[0]);
            List<String> why = desk.handle(new Command.TakeBack(header, parts[0], seq), now)
                    .fold(receipt -> List.of(), words::refusals);
            if (why.isEmpty()) {
                back++;
            } else {
                refused.add(new TrolleyPage.Item(parts[0], String.join(" ", why)));
            }
        }
        Told told = new Told(refused.isEmpty(), words.text("stock.trolley.back", back, from.name()), "");
        pages.show(ctx, page(from, told, refused, List.of()));
    }

    private TrolleyPage page(KnownPlace from, Told told, List<TrolleyPage.Item> refused, List<String> moved) {
        Instant now = clock.instant();
        List<Item> there = desk.items(ItemQuery.OPEN.at(from.code()).page(0, MOST), now).rows().stream()
                .map(ItemRow::item)
                .filter(item -> item.board().isEmpty())
                .toList();
        return new TrolleyPage(
                words.text("stock.trolley.title", from.name()),
                words.text("stock.trolley.lead", there.size()),
                from.code(),
                Secret.token(),
                String.join(",", there.stream().map(Item::tag).toList()),
                there.stream()
                        .map(item -> new TrolleyPage.Item(
                                item.tag(), item.partType() + ", " + words.pieces(item.quantity())))
                        .toList(),
                store.places(now).stream()
                        .filter(place -> !(place instanceof KnownPlace.BakeOven)
                                && !place.code().equals(from.code()))
                        .map(place -> new CounterPage.Place(place.code(), place.name()))
                        .toList(),
                told,
                refused,
                String.join(",", moved));
    }
}
