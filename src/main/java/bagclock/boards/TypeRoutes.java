package bagclock.boards;

import bagclock.core.standard.Part;
import bagclock.platform.Entered;
import bagclock.platform.Messages;
import bagclock.platform.NotThere;
import bagclock.platform.Role;
import bagclock.platform.SentText;
import bagclock.platform.Texts;
import bagclock.platform.Visit;
import bagclock.register.BoardType;
import bagclock.register.Change;
import bagclock.register.PartType;
import bagclock.register.Versioned;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Board types and their parts lists. */
final class TypeRoutes {
    private static final String PATH = "/boards/types";
    private static final Set<String> DONE = Set.of("added", "changed", "imported", "profiled");

    private final Rooms rooms;
    private final Texts texts;
    private final Messages messages;
    private final TypePages words;

    TypeRoutes(Rooms rooms) {
        this.rooms = rooms;
        this.texts = rooms.words().texts();
        this.messages = texts.messages();
        this.words = new TypePages(rooms);
    }

    void register(RoutesConfig routes) {
        routes.get(PATH + "/new", this::showNew, Rooms.WORKERS);
        routes.post(PATH + "/new", this::add, Rooms.WORKERS);
        routes.get(PATH + "/{number}", this::show, Role.signedIn());
        routes.get(PATH + "/{number}/change", this::showChange, Role.ENGINEER);
        routes.post(PATH + "/{number}/change", this::change, Role.ENGINEER);
        routes.get(PATH + "/{number}/parts", this::showParts, Rooms.WORKERS);
        routes.post(PATH + "/{number}/parts", this::importParts, Rooms.WORKERS);
    }

    static Versioned<BoardType> type(Rooms rooms, Context ctx, Instant now) {
        String number = ctx.pathParam("number");
        return rooms.boards().type(number, now).orElseThrow(() -> new NotThere("no board type " + number));
    }

    private void show(Context ctx) {
        Instant now = rooms.now();
        String done = Optional.ofNullable(ctx.queryParam("done"))
                .filter(DONE::contains)
                .orElse("");
        BoardType type = type(rooms, ctx, now).fact();
        rooms.pages().show(ctx, words.page(type, done.isEmpty() ? "" : messages.text("boards.done." + done), now));
    }

    private void showNew(Context ctx) {
        rooms.pages().show(ctx, fresh(Entered.of(Map.of(), texts)));
    }

    private FormPage fresh(Entered entered) {
        return new FormPage(
                messages.text("boards.type.new"),
                messages.text("boards.type.lead"),
                "/boards",
                messages.text("boards.title"),
                "",
                form(PATH + "/new", List.of(), TypeForm.inputs(entered, messages, true)));
    }

    private FormPart form(String action, List<Hidden> hidden, List<Input> inputs) {
        return new FormPart("", "", action, hidden, inputs, messages.text("boards.type.keep"), true);
    }

    private void add(Context ctx) {
        Instant now = rooms.now();
        TypeForm form = TypeForm.sent(ctx, texts, List.of());
        boolean taken =
                rooms.boards().type(form.entered().text(TypeForm.NUMBER), now).isPresent();
        if (taken) {
            form.entered().refuse(TypeForm.NUMBER, messages.text("boards.type.taken"));
        }
        if (form.type().isEmpty() || taken) {
            rooms.pages().refuse(ctx, fresh(form.entered()));
            return;
        }
        rooms.boards().keep(form.type().get(), change(ctx, now, 0));
        ctx.redirect(PATH + "/" + form.type().get().number() + "?done=added", HttpStatus.SEE_OTHER);
    }

    static Change change(Context ctx, Instant now, int basedOn) {
        return new Change(now, now, Visit.of(ctx).signedIn().id(), basedOn);
    }

    private void showChange(Context ctx) {
        Versioned<BoardType> type = type(rooms, ctx, rooms.now());
        Entered entered = TypeForm.of(type.fact(), type.version().number(), texts);
        rooms.pages().show(ctx, changed(type.fact(), entered));
    }

    private FormPage changed(BoardType type, Entered entered) {
        String path = PATH + "/" + type.number();
        List<Hidden> hidden = List.of(
                new Hidden(TypeForm.NUMBER, type.number()),
                new Hidden(TypeForm.BASED_ON, entered.text(TypeForm.BASED_ON)));
        return new FormPage(
                messages.text("boards.type.change", type.number()),
                messages.text("boards.type.lead"),
                path,
                type.number(),
                "",
                form(path + "/change", hidden, TypeForm.inputs(entered, messages, false)));
    }

    private void change(Context ctx) {
        Instant now = rooms.now();
        BoardType before = type(rooms, ctx, now).fact();
        TypeForm form = TypeForm.sent(ctx, texts, before.spots());
        Optional<Integer> basedOn = form.entered().count(TypeForm.BASED_ON, 1, Integer.MAX_VALUE);
        boolean same = form.entered().text(TypeForm.NUMBER).equals(before.number());
        if (form.type().isEmpty() || basedOn.isEmpty() || !same) {
            rooms.pages().refuse(ctx, changed(before, form.entered()));
            return;
        }
        rooms.boards().keep(form.type().get(), change(ctx, now, basedOn.get()));
        ctx.redirect(PATH + "/" + before.number() + "?done=changed", HttpStatus.SEE_OTHER);
    }

    private void showParts(Context ctx) {
        Versioned<BoardType> type = type(rooms, ctx, rooms.now());
        rooms.pages().show(ctx, words.parts(type.fact(), type.version().number(), ""));
    }

    private void importParts(Context ctx) {
        Instant now = rooms.now();
        Versioned<BoardType> type = type(rooms, ctx, now);
        String text = SentText.withReplacements(ctx);
        String based = Optional.ofNullable(ctx.formParam(TypeForm.BASED_ON)).orElse("");
        int basedOn = based.matches("\\d{1,9}")
                ? Integer.parseInt(based)
                : type.version().number();
        if (text.isBlank()) {
            rooms.pages().refuse(ctx, words.missing(type.fact(), basedOn));
            return;
        }
        PartsList list = PartsList.read(text);
        List<String> unknown = unknown(list, now);
        boolean goodOnly = "only".equals(ctx.formParam("good"));
        boolean doubtful = !list.bad().isEmpty() || !unknown.isEmpty();
        if (list.good().isEmpty() || (doubtful && !goodOnly)) {
            rooms.pages().refuse(ctx, words.unread(type.fact(), basedOn, text, list, unknown));
            return;
        }
        Change first = change(ctx, now, 0);
        unknown.forEach(number -> rooms.desk().keep(unknownType(number, list), first));
        rooms.boards().keep(type.fact().with(list.spots()), change(ctx, now, basedOn));
        ctx.redirect(PATH + "/" + type.fact().number() + "?done=imported", HttpStatus.SEE_OTHER);
    }

    private List<String> unknown(PartsList list, Instant now) {
        return list.good().stream()
                .map(PartsList.Line::partNumber)
                .distinct()
                .filter(number -> rooms.store().partType(number, now).isEmpty())
                .toList();
    }

    /** Nothing is known of it but its number: every answer about it is the strict one. */
    private static PartType unknownType(String number, PartsList list) {
        String description = list.good().stream()
                .filter(line -> line.partNumber().equals(number))
                .map(PartsList.Line::description)
                .filter(words -> !words.isEmpty())
                .findFirst()
                .map(words -> words.length() > 200 ? words.substring(0, 200) : words)
                .orElse("");
        return new PartType(number, "", description, new PartType.Source("", ""), Part.UNKNOWN);
    }
}
