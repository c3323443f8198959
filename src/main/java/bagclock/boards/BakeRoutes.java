package bagclock.boards;

import bagclock.desk.BoardNote;
import bagclock.desk.BoardView;
import bagclock.desk.Command;
import bagclock.ledger.BoardEntry.Kind;
import bagclock.platform.Entered;
import bagclock.platform.Role;
import bagclock.platform.Visit;
import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Bakes of a board outside a job. */
final class BakeRoutes {
    private static final String PATH = "/boards/{serial}/bake";

    private final Rooms rooms;
    private final BoardWords words;
    private final BakePages pages;

    BakeRoutes(Rooms rooms) {
        this.rooms = rooms;
        this.words = rooms.words();
        this.pages = new BakePages(rooms);
    }

    void register(RoutesConfig routes) {
        routes.get(PATH, this::show, Role.signedIn());
        routes.post(PATH, this::into, Rooms.WORKERS);
        routes.post(PATH + "/end", this::out, Rooms.WORKERS);
        routes.post(PATH + "/elsewhere", this::elsewhere, Rooms.WORKERS);
    }

    /** One sending. */
    private record Call(Context ctx, BoardView view, Entered sent, Instant now) {
        Command.Header header(Instant at) {
            return new Command.Header(Visit.of(ctx).signedIn().id(), at, sent.text(JobForms.KEY));
        }

        HeatActs acts(Instant at) {
            return new HeatActs(view, header(at), "");
        }
    }

    private Call call(Context ctx) {
        Instant now = rooms.now();
        Call call = new Call(ctx, rooms.board(ctx.pathParam("serial"), now), Entered.of(ctx, words.texts()), now);
        if (!Sending.hasKey(call.sent())) {
            throw new BadRequestResponse();
        }
        return call;
    }

    private void show(Context ctx) {
        Instant now = rooms.now();
        BoardView view = rooms.board(ctx.pathParam("serial"), now);
        rooms.pages().show(ctx, pages.page(view, Entered.of(Map.of(), words.texts()), List.of(), now));
    }

    private void into(Context ctx) {
        Call call = call(ctx);
        send(
                call,
                new BakeForm(rooms, call.view(), call.sent()).into(call.now()).map(BakeStep::of));
    }

    private void out(Context ctx) {
        Call call = call(ctx);
        send(call, new BakeForm(rooms, call.view(), call.sent()).out(call.now()).map(BakeStep::of));
    }

    private void elsewhere(Context ctx) {
        Call call = call(ctx);
        send(call, new ElsewhereForm(words, call.view(), call.sent()).step(call.now()));
    }

    private void send(Call call, Optional<BakeStep> step) {
        if (step.isEmpty()) {
            refuse(call, List.of());
        } else {
            note(call, step.get());
        }
    }

    private void note(Call call, BakeStep step) {
        BoardView view = call.view();
        boolean isOut = step.kind() == Kind.BAKE_ENDED;
        if (isOut != view.state().running().isPresent()) {
            refuse(call, List.of(words.text(isOut ? "boards.bake.is-out" : "boards.bake.is-in")));
            return;
        }
        HeatActs acts = call.acts(step.at());
        step.items().accept(acts);
        BoardNote note = new BoardNote(
                call.header(step.at()),
                view.serial(),
                Sending.seen(call.sent()),
                step.kind(),
                step.told(),
                Optional.empty(),
                acts.commands());
        rooms.boards().record(note, call.now()).fold(entry -> done(call, step.kind()), refusals -> {
            refuse(call, words.refusals(refusals));
            return false;
        });
    }

    private static boolean done(Call call, Kind kind) {
        String word = kind == Kind.BAKE_STARTED ? "baking" : "baked";
        call.ctx().redirect("/boards/" + call.view().serial() + "?done=" + word, HttpStatus.SEE_OTHER);
        return true;
    }

    /** The page as it stands now, with what was typed and why it was not taken. */
    private void refuse(Call call, List<String> refusals) {
        rooms.pages().refuse(call.ctx(), pages.page(call.view(), call.sent(), refusals, call.now()));
    }
}
