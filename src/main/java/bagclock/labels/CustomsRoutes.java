package bagclock.labels;

import bagclock.desk.Desk;
import bagclock.platform.Choice;
import bagclock.platform.Entered;
import bagclock.platform.Messages;
import bagclock.platform.Pages;
import bagclock.platform.Role;
import bagclock.platform.Texts;
import bagclock.platform.Visit;
import bagclock.register.Change;
import bagclock.register.HouseCustoms;
import bagclock.register.LabelCode;
import bagclock.register.PrintSize;
import bagclock.register.Versioned;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The site's choice of sizes and codes, and whether the wall display is shown. */
final class CustomsRoutes {
    static final Set<Role> KEEPERS = Set.of(Role.ENGINEER, Role.ADMINISTRATOR);
    static final String PATH = "/labels/customs";
    private static final String ITEM = "item";
    private static final String BAG = "bag";
    private static final String SHEET = "sheet";
    private static final String CODE = "code";
    private static final String WALL = "wall";
    private static final String BASED_ON = "basedOn";
    private static final String SHOWN = "shown";
    private static final String HIDDEN = "hidden";
    private static final int LAST_VERSION = 1_000_000;

    private final Desk desk;
    private final LabelStore store;
    private final Pages pages;
    private final Messages messages;
    private final Texts texts;
    private final Clock clock;
    private final LabelWords words;
    private final Typeface type = new Typeface();

    CustomsRoutes(Desk desk, LabelStore store, Pages pages, Texts texts, Clock clock) {
        this.desk = desk;
        this.store = store;
        this.pages = pages;
        this.messages = texts.messages();
        this.texts = texts;
        this.clock = clock;
        this.words = new LabelWords(texts);
    }

    void register(RoutesConfig routes) {
        Role[] keepers = KEEPERS.toArray(Role[]::new);
        routes.get(PATH, this::show, keepers);
        routes.post(PATH, this::keep, keepers);
    }

    private void show(Context ctx) {
        Versioned<HouseCustoms> now = store.customs(clock.instant());
        HouseCustoms customs = now.fact();
        Map<String, String> values = Map.of(
                ITEM, customs.item().name(),
                BAG, customs.bag().name(),
                SHEET, customs.sheet().name(),
                CODE, customs.code().name(),
                WALL, customs.wallShown() ? SHOWN : HIDDEN);
        pages.show(ctx, page(Entered.of(values, texts), now.version().number(), ctx.queryParam("done") != null));
    }

    private void keep(Context ctx) {
        Instant now = clock.instant();
        Entered entered = Entered.of(ctx, texts);
        Optional<PrintSize> item = size(entered, ITEM, PrintSize.labels());
        Optional<PrintSize> bag = size(entered, BAG, PrintSize.labels());
        Optional<PrintSize> sheet = size(entered, SHEET, PrintSize.sheets());
        Optional<LabelCode> code = chosen(entered, CODE, LabelCode.parse(entered.text(CODE)));
        Optional<Boolean> wall = chosen(
                entered,
                WALL,
                Optional.of(entered.text(WALL))
                        .filter(List.of(SHOWN, HIDDEN)::contains)
                        .map(SHOWN::equals));
        int basedOn = entered.count(BASED_ON, 0, LAST_VERSION).orElse(0);
        if (entered.isRefused()) {
            pages.refuse(ctx, page(entered, basedOn, false));
            return;
        }
        desk.keep(
                new HouseCustoms(
                        item.orElseThrow(),
                        bag.orElseThrow(),
                        sheet.orElseThrow(),
                        code.orElseThrow(),
                        wall.orElseThrow()),
                new Change(now, now, Visit.of(ctx).signedIn().id(), basedOn));
        ctx.redirect(PATH + "?done", HttpStatus.SEE_OTHER);
    }

    private Optional<PrintSize> size(Entered entered, String field, List<PrintSize> sizes) {
        return chosen(entered, field, PrintSize.parse(entered.text(field), sizes));
    }

    private <T> Optional<T> chosen(Entered entered, String field, Optional<T> value) {
        if (value.isEmpty()) {
            entered.refuse(field, messages.text("labels.choose"));
        }
        return value;
    }

    private CustomsPage page(Entered entered, int basedOn, boolean done) {
        List<Choice> labels = PrintSize.labels().stream()
                .map(size -> new Choice(size.name(), words(size.width(), size.height()), linear(size)))
                .toList();
        List<Choice> sheets = PrintSize.sheets().stream()
                .map(size -> new Choice(
                        size.name(), messages.text("labels.sheet." + size.name()), words(size.width(), size.height())))
                .toList();
        List<Choice> codes = Arrays.stream(LabelCode.values())
                .map(code -> new Choice(
                        code.name(),
                        messages.text("labels.code." + code.name()),
                        messages.text("labels.code." + code.name() + ".note")))
                .toList();
        List<Choice> walls = List.of(
                new Choice(SHOWN, messages.text("labels.wall.shown"), messages.text("labels.wall.shown.note")),
                new Choice(HIDDEN, messages.text("labels.wall.hidden"), messages.text("labels.wall.hidden.note")));
        Versioned<HouseCustoms> now = store.customs(clock.instant());
        return new CustomsPage(
                messages.text("labels.customs"),
                done,
                basedOn,
                now.version().number() == 0
                        ? messages.text("labels.customs.usual")
                        : messages.text(
                                "labels.customs.since", texts.at(now.version().validFrom())),
                entered.field(ITEM, messages.text("labels.customs.item")),
                entered.field(BAG, messages.text("labels.customs.bag")),
                labels,
                entered.field(SHEET, messages.text("labels.customs.sheet")),
                sheets,
                entered.field(CODE, messages.text("labels.customs.code"), messages.text("labels.customs.code.hint")),
                codes,
                entered.field(WALL, messages.text("labels.customs.wall")),
                walls);
    }

    /** Which tags leave room for a Code 128 on this size, at any of the printers. */
    private String linear(PrintSize size) {
        Bars.Room room = LabelDrawing.besideMatrix(size.width(), size.height());
        int characters = Arrays.stream(LabelCode.values())
                .flatMapToDouble(code -> code.dot().stream())
                .mapToInt(dot -> Bars.characters(dot, room))
                .min()
                .orElse(0);
        if (characters == 0) {
            return messages.text("labels.linear.none");
        }
        LabelText wordy = words.wordy(clock.instant());
        boolean isWordy = Arrays.stream(LabelCode.values())
                .filter(code -> code.dot().isPresent())
                .allMatch(code -> LabelDrawing.withBars(type, wordy, size.width(), size.height(), code.dot())
                        .isPresent());
        return messages.text(isWordy ? "labels.linear" : "labels.linear.few-words", characters);
    }

    private String words(double width, double height) {
        return messages.text("labels.size", texts.number(width), texts.number(height));
    }
}
