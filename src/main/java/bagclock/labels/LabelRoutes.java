package bagclock.labels;

import bagclock.desk.ActionCode;
import bagclock.desk.Desk;
import bagclock.desk.ItemView;
import bagclock.labels.LabelPage.Link;
import bagclock.labels.LabelPage.Print;
import bagclock.platform.Database;
import bagclock.platform.Messages;
import bagclock.platform.NotThere;
import bagclock.platform.Pages;
import bagclock.platform.Role;
import bagclock.platform.Texts;
import bagclock.platform.Visit;
import bagclock.register.HouseCustoms;
import bagclock.register.LabelCode;
import bagclock.register.PrintSize;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Labels of items and bags, and the sheet of codes; as pages to print and as PDF. */
public final class LabelRoutes {
    private static final String ITEM = "item";
    private static final String BAG = "bag";

    private final Desk desk;
    private final LabelStore store;
    private final Pages pages;
    private final Messages messages;
    private final LabelWords words;
    private final CustomsRoutes customs;
    private final TestCodeRoutes testCode;
    private final Clock clock;
    private final Typeface type = new Typeface();

    /** Routes of one site. */
    public LabelRoutes(Database database, Desk desk, Pages pages, Texts texts, Clock clock) {
        this.desk = desk;
        this.store = new LabelStore(database);
        this.pages = pages;
        this.messages = texts.messages();
        this.words = new LabelWords(texts);
        this.customs = new CustomsRoutes(desk, store, pages, texts, clock);
        this.testCode = new TestCodeRoutes(store, pages, messages, clock, type);
        this.clock = clock;
    }

    /** Declares the routes. */
    public void register(RoutesConfig routes) {
        Role[] readers = Role.signedIn();
        routes.get("/items/{tag}/label", ctx -> labels(ctx, asked(ctx, ITEM, List.of(ctx.pathParam("tag")))), readers);
        routes.get(
                "/items/{tag}/bag-label", ctx -> labels(ctx, asked(ctx, BAG, List.of(ctx.pathParam("tag")))), readers);
        routes.get("/labels", ctx -> labels(ctx, asked(ctx)), readers);
        routes.get("/labels/pdf", this::pdf, readers);
        routes.get("/labels/size/{size}", LabelRoutes::sizeSheet, Role.ANYONE);
        routes.get("/places/codes", this::codes, readers);
        routes.get("/places/codes/pdf", this::codesPdf, readers);
        customs.register(routes);
        testCode.register(routes);
    }

    /** Which labels, in which size. */
    private record Asked(String kind, PrintSize size, LabelCode code, List<String> tags) {
        String query(PrintSize other) {
            return "kind=" + kind + "&size=" + other.name()
                    + tags.stream().map(tag -> "&tag=" + encoded(tag)).collect(Collectors.joining());
        }

        boolean isBag() {
            return kind.equals(BAG);
        }
    }

    private Asked asked(Context ctx) {
        List<String> tags = ctx.queryParams("tag");
        if (tags.isEmpty()) {
            throw new NotThere("labels of no item");
        }
        return asked(ctx, BAG.equals(ctx.queryParam("kind")) ? BAG : ITEM, tags);
    }

    private Asked asked(Context ctx, String kind, List<String> tags) {
        HouseCustoms usual = store.customs(clock.instant()).fact();
        PrintSize size = Optional.ofNullable(ctx.queryParam("size"))
                .flatMap(name -> PrintSize.parse(name, PrintSize.labels()))
                .orElse(kind.equals(BAG) ? usual.bag() : usual.item());
        return new Asked(kind, size, usual.code(), tags);
    }

    private void labels(Context ctx, Asked asked) {
        Instant now = clock.instant();
        List<Print> prints =
                asked.tags().stream().map(tag -> print(asked, tag, now)).toList();
        String first = asked.tags().get(0);
        boolean single = asked.tags().size() == 1;
        String key = asked.isBag() ? "labels.bag" : "labels.item";
        pages.show(
                ctx,
                new LabelPage(
                        single
                                ? messages.text(key, first)
                                : messages.text("labels.many", asked.tags().size()),
                        messages.text("labels.lead"),
                        ctx.queryParam("done") == null ? "" : messages.text("labels.sealed"),
                        asked.size().name(),
                        "/labels/pdf?" + asked.query(asked.size()),
                        sizes(asked),
                        single
                                ? new Link("/items/" + first, messages.text("labels.back.item", first), false)
                                : new Link("/stock", messages.text("door.stock"), false),
                        prints));
    }

    private List<Link> sizes(Asked asked) {
        return PrintSize.labels().stream()
                .map(size -> new Link(
                        "/labels?" + asked.query(size), sizeWords(size.width(), size.height()), size == asked.size()))
                .toList();
    }

    private String sizeWords(double width, double height) {
        return messages.text("labels.size", plain(width), plain(height));
    }

    private static String plain(double length) {
        return length % 1 == 0 ? Long.toString((long) length) : Double.toString(length);
    }

    private Print print(Asked asked, String tag, Instant now) {
        ItemView view = desk.item(tag, now).orElseThrow(() -> new NotThere("no item " + tag));
        var history = desk.evidence(tag, now).history();
        LabelText text = asked.isBag() ? words.bag(view, history) : words.item(view, history);
        Drawing drawing = LabelDrawing.of(
                type,
                text,
                asked.size().width(),
                asked.size().height(),
                asked.code().dot());
        return new Print(spoken(text), drawing);
    }

    private static String spoken(LabelText text) {
        return Stream.of(List.of(text.tag(), text.sentence()), text.lines(), List.of(text.caution()))
                .flatMap(List::stream)
                .collect(Collectors.joining(" "));
    }

    private void pdf(Context ctx) {
        Asked asked = asked(ctx);
        Instant now = clock.instant();
        List<Drawing> drawings = asked.tags().stream()
                .map(tag -> print(asked, tag, now).drawing())
                .toList();
        send(ctx, "label", Pdf.of(String.join(", ", asked.tags()), drawings));
    }

    static void send(Context ctx, String name, byte[] file) {
        ctx.contentType("application/pdf")
                .header("Content-Disposition", "inline; filename=\"" + name + ".pdf\"")
                .result(file);
    }

    /** One style sheet for each size: the content policy allows no style within a page. */
    private static void sizeSheet(Context ctx) {
        String name = ctx.pathParam("size");
        PrintSize size =
                PrintSize.parse(name, List.of(PrintSize.values())).orElseThrow(() -> new NotThere("no size " + name));
        ctx.contentType("text/css; charset=utf-8")
                .result(String.format(
                        Locale.ROOT, "@page { size: %.1fmm %.1fmm; margin: 0; }\n", size.width(), size.height()));
    }

    private void codes(Context ctx) {
        Instant now = clock.instant();
        HouseCustoms usual = store.customs(now).fact();
        List<Print> prints = sheets(usual, now).stream()
                .map(drawing -> new Print(
                        drawing.lines().stream().map(Drawing.Line::text).collect(Collectors.joining(" ")), drawing))
                .toList();
        pages.show(
                ctx,
                new LabelPage(
                        messages.text("labels.codes"),
                        messages.text("labels.codes.lead"),
                        "",
                        usual.sheet().name(),
                        "/places/codes/pdf",
                        customs(ctx),
                        new Link("/climate", messages.text("menu.climate"), false),
                        prints));
    }

    /** Where the sizes are chosen, for those who may. */
    private List<Link> customs(Context ctx) {
        return Visit.of(ctx).signedIn().isOneOf(CustomsRoutes.KEEPERS)
                ? List.of(new Link(CustomsRoutes.PATH, messages.text("labels.customs"), false))
                : List.of();
    }

    private void codesPdf(Context ctx) {
        Instant now = clock.instant();
        List<Drawing> sheets = sheets(store.customs(now).fact(), now);
        send(ctx, "codes", Pdf.of(messages.text("labels.codes"), sheets));
    }

    private List<Drawing> sheets(HouseCustoms usual, Instant now) {
        List<CodeSheet.Coded> codes = Stream.concat(
                        store.places(now).stream().map(place -> new CodeSheet.Coded(place.code(), place.name())),
                        Arrays.stream(ActionCode.values())
                                .map(action -> new CodeSheet.Coded(
                                        action.code(), messages.text("labels.action." + action.name()))))
                .toList();
        return CodeSheet.of(type, codes, usual);
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
