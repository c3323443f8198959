package bagclock.boards;

import bagclock.platform.Entered;
import bagclock.platform.Messages;
import bagclock.platform.Texts;
import bagclock.platform.Visit;
import bagclock.register.BoardType;
import bagclock.register.HeatProfile;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** Heat profiles of a board type. */
final class ProfileRoutes {
    private static final String PATH = "/boards/types/{number}/profiles/new";

    private final Rooms rooms;
    private final Texts texts;
    private final Messages messages;

    ProfileRoutes(Rooms rooms) {
        this.rooms = rooms;
        this.texts = rooms.words().texts();
        this.messages = texts.messages();
    }

    void register(RoutesConfig routes) {
        routes.get(PATH, this::show, Rooms.WORKERS);
        routes.post(PATH, this::add, Rooms.WORKERS);
    }

    private LocalDate today() {
        return rooms.now().atZone(texts.zone()).toLocalDate();
    }

    private void show(Context ctx) {
        BoardType type = TypeRoutes.type(rooms, ctx, rooms.now()).fact();
        Map<String, String> usual = Map.of(
                ProfileForm.MEASURED_ON,
                today().toString(),
                ProfileForm.MEASURED_BY,
                Visit.of(ctx).signedIn().display());
        rooms.pages().show(ctx, page(type, Entered.of(usual, texts)));
    }

    private FormPage page(BoardType type, Entered entered) {
        String back = "/boards/types/" + type.number();
        return new FormPage(
                messages.text("boards.profile.title", type.number()),
                messages.text("boards.profile.lead"),
                back,
                type.number(),
                "",
                new FormPart(
                        "",
                        "",
                        back + "/profiles/new",
                        List.of(),
                        ProfileForm.inputs(entered, messages),
                        messages.text("boards.profile.keep"),
                        true));
    }

    private void add(Context ctx) {
        Instant now = rooms.now();
        BoardType type = TypeRoutes.type(rooms, ctx, now).fact();
        ProfileForm form = ProfileForm.sent(ctx, texts, type, today());
        if (form.profile().isEmpty()) {
            rooms.pages().refuse(ctx, page(type, form.entered()));
            return;
        }
        HeatProfile told = form.profile().get();
        int number = rooms.boards().profiles(type.number(), now).size() + 1;
        HeatProfile profile = new HeatProfile(
                type.number() + "." + number,
                told.boardType(),
                told.location(),
                told.kind(),
                told.tool(),
                told.partPeak(),
                told.neighbours(),
                told.elsewhere(),
                told.length(),
                told.measuredOn(),
                told.measuredBy());
        rooms.boards().keep(profile, TypeRoutes.change(ctx, now, 0));
        ctx.redirect("/boards/types/" + type.number() + "?done=profiled", HttpStatus.SEE_OTHER);
    }
}
