package bagclock.stock;

import bagclock.core.estimate.Beside;
import bagclock.core.estimate.Estimates;
import bagclock.desk.Desk;
import bagclock.desk.ItemPage;
import bagclock.desk.ItemQuery.Sort;
import bagclock.desk.ItemRow;
import bagclock.desk.ItemView;
import bagclock.platform.Choice;
import bagclock.platform.Field;
import bagclock.platform.Heading;
import bagclock.platform.Names;
import bagclock.platform.NotThere;
import bagclock.platform.Pages;
import bagclock.platform.Role;
import bagclock.platform.Texts;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The list of items and the page of one. */
final class ItemRoutes {
    private final Desk desk;
    private final StockStore store;
    private final Names names;
    private final Pages pages;
    private final Words words;
    private final Clock clock;

    /** Where the pages look things up. */
    record Known(Desk desk, StockStore store, Names names) {}

    ItemRoutes(Known known, Pages pages, Words words, Clock clock) {
        this.desk = known.desk();
        this.store = known.store();
        this.names = known.names();
        this.pages = pages;
        this.words = words;
        this.clock = clock;
    }

    void register(RoutesConfig routes) {
        routes.get("/items", this::list, Role.signedIn());
        routes.get("/items/{tag}", this::item, Role.signedIn());
    }

    private void item(Context ctx) {
        Instant now = clock.instant();
        String tag = ctx.pathParam("tag");
        boolean done = ctx.queryParam("done") != null;
        pages.show(
                ctx,
                desk.item(tag, now)
                        .map(view -> page(view, done, now))
                        .orElseThrow(() -> new NotThere("no item " + tag)));
    }

    private bagclock.stock.ItemPage page(ItemView view, boolean done, Instant now) {
        Beside beside = Estimates.of(desk.standard(now), view.history());
        return new ItemPages(words, names).page(view, beside, done, now);
    }

    private void list(Context ctx) {
        Instant now = clock.instant();
        ListForm asked = ListForm.of(ctx);
        ItemPage found = desk.items(asked.query(), now);
        List<Choice> places = new ArrayList<>();
        places.add(Choice.of("", words.text("stock.everywhere")));
        store.places(now).forEach(place -> places.add(Choice.of(place.code(), place.name())));
        boolean more = (long) (asked.page() + 1) * ListForm.PAGE_SIZE < found.total();
        pages.show(
                ctx,
                new ItemsPage(
                        words.text("stock.items"),
                        words.text("stock.items.lead", found.total()),
                        Field.of("text", words.text("stock.search"), asked.text()),
                        Field.of("place", words.text("stock.place"), asked.place()),
                        places,
                        Field.of("within", words.text("stock.within"), asked.within()),
                        withins(),
                        headings(asked),
                        found.rows().stream().map(row -> row(row, now)).toList(),
                        asked.page() > 0 ? asked.onPage(asked.page() - 1).href() : "",
                        more ? asked.onPage(asked.page() + 1).href() : ""));
    }

    private List<Choice> withins() {
        return List.of(
                Choice.of("", words.text("stock.within.any")),
                Choice.of("0", words.text("stock.within.ended")),
                Choice.of("8", words.text("stock.within.8")),
                Choice.of("24", words.text("stock.within.24")),
                Choice.of("72", words.text("stock.within.72")));
    }

    private List<Heading> headings(ListForm asked) {
        return Stream.of(Sort.TAG, Sort.PART_TYPE, Sort.PLACE, Sort.ENDS_AT)
                .map(sort -> new Heading(
                        words.text("stock.col." + sort.name()),
                        asked.sortedBy(sort).href(),
                        sort != asked.sort() ? null : asked.descending() ? "descending" : "ascending"))
                .toList();
    }

    private ItemsPage.Row row(ItemRow row, Instant now) {
        String life = row.totalHours()
                .map(total -> words.text(
                        "stock.used-of",
                        Texts.usedHours(row.usedHours().orElse(BigDecimal.ZERO)),
                        Texts.lifeHours(total)))
                .orElse("");
        return new ItemsPage.Row(
                row.item().tag(),
                row.item().partType(),
                row.level().isEmpty() ? words.text("stock.level.unknown") : row.level(),
                Long.toString(row.item().quantity()),
                words.where(row.item()),
                words.text("stock.clock." + row.clock().code()),
                life,
                row.endsAt()
                        .map(end -> words.text(
                                row.hasEndedBy(now) ? "stock.ended" : "stock.ends",
                                words.texts().at(end, now)))
                        .orElse(""));
    }
}
