package bagclock.boards;

import bagclock.platform.ChangedMeanwhile;
import bagclock.platform.Entered;
import bagclock.platform.Role;
import bagclock.register.BoardRules;
import bagclock.register.Version;
import bagclock.register.Versioned;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** What the site chooses for its boards. */
final class RulesRoutes {
    private static final String PATH = "/boards/rules";
    private static final int LAST_VERSION = 1_000_000;

    private final Rooms rooms;
    private final BoardWords words;

    RulesRoutes(Rooms rooms) {
        this.rooms = rooms;
        this.words = rooms.words();
    }

    void register(RoutesConfig routes) {
        routes.get(PATH, this::show, Role.ENGINEER);
        routes.post(PATH, this::keep, Role.ENGINEER);
    }

    private void show(Context ctx) {
        Versioned<BoardRules> rules = rooms.boards().rules(rooms.now());
        Entered entered =
                Entered.of(RulesForm.values(rules.fact(), rules.version().number()), words.texts());
        rooms.pages().show(ctx, page(entered, rules.version(), ""));
    }

    private FormPage page(Entered entered, Version version, String refusal) {
        String state = version.number() == 0
                ? words.text("boards.rules.usual")
                : words.text(
                        "boards.rules.version",
                        version.number(),
                        words.texts().at(version.validFrom()),
                        words.name(version.who()));
        return new FormPage(
                words.text("boards.rules"),
                words.text("boards.rules.lead") + " " + state,
                "/boards",
                words.text("boards.title"),
                refusal,
                new FormPart(
                        "",
                        "",
                        PATH,
                        List.of(new Hidden(RulesForm.BASED_ON, entered.text(RulesForm.BASED_ON))),
                        RulesForm.inputs(entered, words.texts().messages()),
                        words.text("boards.rules.keep"),
                        true));
    }

    private void keep(Context ctx) {
        Instant now = rooms.now();
        Entered entered = Entered.of(ctx, words.texts());
        int basedOn = entered.count(RulesForm.BASED_ON, 0, LAST_VERSION).orElse(0);
        Optional<BoardRules> told = RulesForm.read(entered);
        Version version = rooms.boards().rules(now).version();
        if (told.isEmpty()) {
            rooms.pages().refuse(ctx, page(entered, version, ""));
            return;
        }
        try {
            rooms.boards().keep(told.get(), TypeRoutes.change(ctx, now, basedOn));
            ctx.redirect(PATH, HttpStatus.SEE_OTHER);
        } catch (ChangedMeanwhile lost) {
            rooms.pages().refuse(ctx, page(entered, version, words.text("boards.rules.meanwhile")));
        }
    }
}
