package bagclock.stock;

import bagclock.desk.ActionCode;
import bagclock.desk.Command;
import bagclock.desk.Desk;
import bagclock.desk.ItemView;
import bagclock.ledger.CheckDigit;
import bagclock.platform.Entered;
import bagclock.platform.Pages;
import bagclock.platform.Secret;
import bagclock.platform.Visit;
import bagclock.register.KnownPlace;
import bagclock.scan.CharacterMap;
import bagclock.scan.Decoder;
import bagclock.scan.Standing;
import bagclock.stock.CounterPage.Told;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Scans: an item, then a place. */
final class CounterRoutes {
    private static final int LAST_SCANS = 10;
    private static final Pattern ITEM_PAGE = Pattern.compile("https?://[^/]+/items/([A-Za-z0-9._-]{1,40})(?:[/?].*)?");

    private final Desk desk;
    private final StockStore store;
    private final ScanStore passes;
    private final Pages pages;
    private final Words words;
    private final Clock clock;

    /** Where scans are looked up, and who may tell them late. */
    record Known(Desk desk, StockStore store, ScanStore passes) {}

    CounterRoutes(Known known, Pages pages, Words words, Clock clock) {
        this.desk = known.desk();
        this.store = known.store();
        this.passes = known.passes();
        this.pages = pages;
        this.words = words;
        this.clock = clock;
    }

    void register(RoutesConfig routes) {
        routes.get("/stock", ctx -> pages.show(ctx, page(ctx, "", Told.NOTHING)), ActRoutes.WORKERS);
        routes.post("/stock", this::scan, ActRoutes.WORKERS);
        routes.post("/stock/take-back", this::takeBack, ActRoutes.WORKERS);
        routes.get("/scan", this::find, ActRoutes.WORKERS);
    }

    /** The scan field of the bar: leads to what the code names. */
    private void find(Context ctx) {
        Instant now = clock.instant();
        String raw = Optional.ofNullable(ctx.queryParam("code")).orElse("");
        String code = raw.strip();
        if (LabelScans.isLabel(raw)) {
            readLabel(ctx, raw, "");
        } else if (desk.item(code, now).isPresent()) {
            ctx.redirect("/items/" + code, HttpStatus.SEE_OTHER);
        } else if (store.place(code, now).isPresent()) {
            ctx.redirect("/items?place=" + code, HttpStatus.SEE_OTHER);
        } else {
            String item = itemOf(ctx);
            ActionCode.of(code)
                    .filter(action -> !action.needsItem() || !item.isEmpty())
                    .filter(action -> action != ActionCode.UNDO)
                    .ifPresentOrElse(action -> act(ctx, action, item), () -> readLabel(ctx, raw, ""));
        }
    }

    /** A maker's label leads to the receiving form; anything else is told unknown. */
    private void readLabel(Context ctx, String raw, String held) {
        if (Decoder.read(raw).standing() != Standing.REFUSED) {
            String scan = URLEncoder.encode(Decoder.portable(raw), StandardCharsets.UTF_8);
            ctx.redirect("/stock/receive?scan=" + scan, HttpStatus.SEE_OTHER);
        } else if (LabelScans.isLabel(raw)) {
            Told told = new Told(false, words.text("stock.scan.no-label"), words.text("stock.scan.no-label.text"));
            pages.refuse(ctx, page(ctx, held, told));
        } else {
            pages.refuse(ctx, page(ctx, held, unknown(raw.strip())));
        }
    }

    /** The item whose page the scan was made on; empty for none. */
    private static String itemOf(Context ctx) {
        Matcher page =
                ITEM_PAGE.matcher(Optional.ofNullable(ctx.header("Referer")).orElse(""));
        return page.matches() ? page.group(1) : "";
    }

    /** A drawn tag tells a wrong digit by itself. */
    private Told unknown(String code) {
        if (code.indexOf(CharacterMap.DOUBTFUL) >= 0) {
            return new Told(
                    false, words.text("stock.scan.unknown", code), words.text("stock.flag.CHARACTERS_DOUBTFUL"));
        }
        return CheckDigit.isMisread(code)
                ? new Told(false, words.text("stock.scan.misread", code), words.text("stock.scan.misread.text"))
                : new Told(false, words.text("stock.scan.unknown", code), "");
    }

    private void act(Context ctx, ActionCode action, String held) {
        if (action.needsItem() && held.isEmpty()) {
            Told told = new Told(false, words.text("stock.scan.item-first", action.code()), "");
            pages.refuse(ctx, page(ctx, "", told));
        } else if (action == ActionCode.UNDO) {
            takeBack(ctx);
        } else {
            ctx.redirect(address(action, "/items/" + held), HttpStatus.SEE_OTHER);
        }
    }

    private static String address(ActionCode action, String item) {
        return switch (action) {
            case OPEN -> item + "/acts/open";
            case CLOSE -> item + "/dry-pack";
            case SPLIT -> item + "/acts/split";
            case JOIN -> item + "/acts/join";
            case USE -> item + "/acts/use-up";
            case PRINT -> item + "/label";
            case RECEIVE -> "/stock/receive";
            case DELIVER -> "/stock/delivery";
            case UNDO -> "/stock";
        };
    }

    /** The form's key, or a fresh one. */
    static String key(Entered entered) {
        return entered.text(FieldNames.KEY).isEmpty() ? Secret.token() : entered.text(FieldNames.KEY);
    }

    private void scan(Context ctx) {
        Instant now = clock.instant();
        Entered entered = Entered.of(ctx, words.texts());
        String code = entered.text(FieldNames.CODE);
        String held = entered.text(FieldNames.HELD);
        String raw = Optional.ofNullable(ctx.formParam(FieldNames.CODE)).orElse("");
        if (LabelScans.isLabel(raw)) {
            readLabel(ctx, raw, held);
            return;
        }
        Optional<KnownPlace> place = store.place(code, now);
        Optional<ActionCode> action = ActionCode.of(code);
        if (desk.item(code, now).isPresent()) {
            pages.show(ctx, page(ctx, code, Told.NOTHING));
        } else if (place.isEmpty() && action.isPresent()) {
            act(ctx, action.get(), held);
        } else if (place.isEmpty()) {
            readLabel(ctx, raw, held);
        } else if (held.isEmpty()) {
            pages.show(ctx, page(ctx, "", Told.NOTHING).at(place.get()));
        } else if (place.get() instanceof KnownPlace.BakeOven) {
            ctx.redirect("/ovens/load?oven=" + code + "&tag=" + held, HttpStatus.SEE_OTHER);
        } else {
            move(ctx, entered, held, place.get());
        }
    }

    private void move(Context ctx, Entered entered, String held, KnownPlace place) {
        Instant now = clock.instant();
        Command.Header header = new Command.Header(Visit.of(ctx).signedIn().id(), now, key(entered));
        desk.handle(new Command.Move(header, held, place.code()), now)
                .fold(
                        receipt -> {
                            String title = words.text("stock.scan.moved", held, place.name());
                            pages.show(ctx, page(ctx, "", new Told(true, title, sentence(held, now))));
                            return held;
                        },
                        refusals -> {
                            String text = String.join(" ", words.refusals(refusals));
                            Told told = new Told(false, words.text("stock.scan.not-moved", held), text);
                            pages.refuse(ctx, page(ctx, held, told));
                            return held;
                        });
    }

    private String sentence(String tag, Instant now) {
        return desk.item(tag, now)
                .map(view -> words.sentence(view.answer(), now))
                .orElse("");
    }

    private void takeBack(Context ctx) {
        Instant now = clock.instant();
        Entered entered = Entered.of(ctx, words.texts());
        Command.Header header = new Command.Header(Visit.of(ctx).signedIn().id(), now, key(entered));
        desk.handle(new Command.TakeBackLast(header), now)
                .fold(
                        receipt -> {
                            String title = words.text("stock.taken-back", receipt.tag());
                            pages.show(ctx, page(ctx, "", new Told(true, title, "")));
                            return now;
                        },
                        refusals -> {
                            String text = String.join(" ", words.refusals(refusals));
                            pages.refuse(ctx, page(ctx, "", new Told(false, words.text("stock.not-taken-back"), text)));
                            return now;
                        });
    }

    private CounterPage page(Context ctx, String held, Told told) {
        Instant now = clock.instant();
        String who = Visit.of(ctx).signedIn().id();
        List<CounterPage.Scan> scans = desk.newestOf(who, LAST_SCANS).stream()
                .map(entry -> new CounterPage.Scan(
                        entry.tag(),
                        words.act(entry),
                        words.texts().machine(entry.happenedAt()),
                        words.texts().at(entry.happenedAt(), now)))
                .toList();
        List<CounterPage.Place> places = store.places(now).stream()
                .map(place -> new CounterPage.Place(place.code(), place.name()))
                .toList();
        String heldWords =
                held.isEmpty() ? "" : desk.item(held, now).map(this::held).orElse("");
        String pass = "late " + Visit.of(ctx).csrfToken();
        passes.givePass(pass, who, now);
        CounterPage.Next next = new CounterPage.Next(Secret.token(), pass);
        return new CounterPage(words.text("door.stock"), held, heldWords, "", "", next, told, scans, places);
    }

    private String held(ItemView view) {
        return view.item().partType() + ", " + words.where(view.item());
    }
}
