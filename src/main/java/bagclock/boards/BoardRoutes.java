package bagclock.boards;

import bagclock.core.Outcome;
import bagclock.desk.BoardNote;
import bagclock.desk.BoardView;
import bagclock.desk.Command;
import bagclock.ledger.BoardEntry;
import bagclock.ledger.BoardEntry.Kind;
import bagclock.ledger.BoardNotes;
import bagclock.platform.Entered;
import bagclock.platform.Role;
import bagclock.platform.Secret;
import bagclock.platform.Visit;
import bagclock.register.KnownBoard;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Boards by serial number. */
final class BoardRoutes {
    private static final Set<String> DONE = Set.of("added", "mounted", "back", "baking", "baked", "taken-back");
    private static final Set<String> NOT_A_SERIAL = Set.of("new", "types", "releases", "rules");

    private final Rooms rooms;
    private final BoardWords words;
    private final BoardPages pages;

    BoardRoutes(Rooms rooms) {
        this.rooms = rooms;
        this.words = rooms.words();
        this.pages = new BoardPages(rooms);
    }

    void register(RoutesConfig routes) {
        routes.get("/boards", this::list, Role.signedIn());
        routes.get("/boards/new", this::showNew, Rooms.WORKERS);
        routes.post("/boards/new", this::add, Rooms.WORKERS);
        routes.get("/boards/{serial}", this::show, Role.signedIn());
        routes.post("/boards/{serial}/jobs", this::openJob, Rooms.WORKERS);
        routes.post("/boards/{serial}/mount", this::mount, Rooms.WORKERS);
        routes.post("/boards/{serial}/back", this::cameBack, Rooms.WORKERS);
        routes.post("/boards/{serial}/take-back", this::takeBack, Rooms.WORKERS);
    }

    private void list(Context ctx) {
        rooms.pages().show(ctx, pages.boards("", rooms.now()));
    }

    private void showNew(Context ctx) {
        String serial = Optional.ofNullable(ctx.queryParam("serial")).orElse("");
        Entered entered = Entered.of(Map.of(BoardPages.SERIAL, serial), words.texts());
        rooms.pages().show(ctx, pages.fresh(entered, rooms.now()));
    }

    private void add(Context ctx) {
        Instant now = rooms.now();
        Entered sent = Entered.of(ctx, words.texts());
        String serial = sent.required(BoardPages.SERIAL);
        if (!serial.isEmpty() && (!serial.matches("[A-Za-z0-9._-]{1,24}") || NOT_A_SERIAL.contains(serial))) {
            sent.refuse(BoardPages.SERIAL, words.text("boards.serial.malformed"));
        } else if (rooms.boards().board(serial, now).isPresent()) {
            sent.refuse(BoardPages.SERIAL, words.text("boards.serial.taken"));
        }
        if (rooms.boards().type(sent.text(BoardPages.TYPE), now).isEmpty()) {
            sent.refuse(BoardPages.TYPE, words.text("entered.choose"));
        }
        if (sent.isRefused()) {
            rooms.pages().refuse(ctx, pages.fresh(sent, now));
            return;
        }
        KnownBoard board = BoardPages.known(sent);
        rooms.boards().keep(board, TypeRoutes.change(ctx, now, 0));
        if (board.fromField()) {
            BoardView view = rooms.board(serial, now);
            rooms.boards().record(back(ctx, view, now), now);
        }
        ctx.redirect("/boards/" + serial + "?done=added", HttpStatus.SEE_OTHER);
    }

    private void show(Context ctx) {
        Instant now = rooms.now();
        BoardView view = rooms.board(ctx.pathParam("serial"), now);
        String done = Optional.ofNullable(ctx.queryParam("done"))
                .filter(DONE::contains)
                .orElse("");
        String told = done.isEmpty() ? "" : words.text("boards.done." + done);
        Entered empty = Entered.of(Map.of(), words.texts());
        rooms.pages().show(ctx, pages.board(view, told, empty, List.of(), now));
    }

    private static Command.Header header(Context ctx, Instant now) {
        String key = Optional.ofNullable(ctx.formParam(JobForms.KEY))
                .filter(text -> text.matches("[A-Za-z0-9_-]{20,60}"))
                .orElseGet(Secret::token);
        return new Command.Header(Visit.of(ctx).signedIn().id(), now, key);
    }

    private void openJob(Context ctx) {
        Instant now = rooms.now();
        BoardView view = rooms.board(ctx.pathParam("serial"), now);
        Entered sent = Entered.of(ctx, words.texts());
        String location = sent.required(BoardPages.LOCATION);
        String why = sent.required(JobForms.WHY);
        Optional<OldPart> fate = OldPart.parse(sent.text(BoardPages.FATE));
        boolean known =
                view.type().flatMap(type -> type.fact().partAt(location)).isPresent()
                        || view.itemAt(location).isPresent();
        if (!location.isEmpty() && !known) {
            String type = view.board().fact().type();
            sent.refuse(BoardPages.LOCATION, words.text("refusal.LOCATION_UNKNOWN", location, type));
        }
        if (fate.isEmpty()) {
            sent.refuse(BoardPages.FATE, words.text("entered.choose"));
        }
        if (sent.isRefused()) {
            refuse(ctx, view, sent, List.of());
            return;
        }
        Map<String, String> told = new HashMap<>();
        told.put(BoardNotes.LOCATION, location);
        told.put(BoardNotes.WHY, why);
        told.put(BoardNotes.FATE, fate.orElseThrow().code());
        BoardNote note = new BoardNote(
                header(ctx, now),
                view.serial(),
                Sending.seen(sent),
                Kind.JOB_OPENED,
                told,
                Optional.empty(),
                List.of());
        done(ctx, view, sent, rooms.boards().record(note, now), "/boards/" + view.serial() + "/jobs/");
    }

    private void done(Context ctx, BoardView view, Entered sent, Outcome<BoardEntry> outcome, String to) {
        outcome.fold(
                entry -> {
                    ctx.redirect(to.endsWith("/") ? to + entry.seq() : to, HttpStatus.SEE_OTHER);
                    return true;
                },
                refusals -> {
                    refuse(ctx, view, sent, words.refusals(refusals));
                    return false;
                });
    }

    private void refuse(Context ctx, BoardView view, Entered sent, List<String> refusals) {
        rooms.pages().refuse(ctx, pages.board(view, "", sent, refusals, rooms.now()));
    }

    /** The part was soldered on elsewhere, or before anybody told. */
    private void mount(Context ctx) {
        Instant now = rooms.now();
        BoardView view = rooms.board(ctx.pathParam("serial"), now);
        Entered sent = Entered.of(ctx, words.texts());
        String tag = sent.required(BoardPages.TAG);
        String spot = sent.required("spot");
        if (!tag.isEmpty() && rooms.desk().item(tag, now).isEmpty()) {
            sent.refuse(BoardPages.TAG, words.text("boards.job.part.unknown", tag));
        } else if (view.itemAt(spot).isPresent()) {
            sent.refuse("spot", words.text("boards.mount.taken", spot));
        }
        if (sent.isRefused()) {
            refuse(ctx, view, sent, List.of());
            return;
        }
        Command command = new Command.Mount(header(ctx, now), tag, view.serial(), spot, Optional.empty());
        rooms.desk()
                .handle(command, now)
                .fold(
                        receipt -> {
                            ctx.redirect("/boards/" + view.serial() + "?done=mounted", HttpStatus.SEE_OTHER);
                            return true;
                        },
                        refusals -> {
                            refuse(ctx, view, sent, words.refusals(refusals));
                            return false;
                        });
    }

    private void cameBack(Context ctx) {
        Instant now = rooms.now();
        BoardView view = rooms.board(ctx.pathParam("serial"), now);
        Entered sent = Entered.of(ctx, words.texts());
        BoardNote note = back(ctx, view, now);
        BoardNote seen = new BoardNote(
                note.header(),
                note.serial(),
                Sending.seen(sent),
                note.kind(),
                note.told(),
                note.ask(),
                note.commands());
        done(ctx, view, sent, rooms.boards().record(seen, now), "/boards/" + view.serial() + "?done=back");
    }

    /** The newest entry did not happen; whoever took it back in a job goes on there, if the job is still there. */
    private void takeBack(Context ctx) {
        Instant now = rooms.now();
        BoardView view = rooms.board(ctx.pathParam("serial"), now);
        Entered sent = Entered.of(ctx, words.texts());
        String job = sent.text(TakeBack.JOB);
        boolean stays = view.last()
                .filter(last -> !job.isEmpty() && !job.equals(Integer.toString(last.seq())))
                .isPresent();
        String to = "/boards/" + view.serial() + (stays ? "/jobs/" + job : "") + "?done=taken-back";
        done(ctx, view, sent, rooms.boards().takeBack(header(ctx, now), view.serial(), Sending.seen(sent), now), to);
    }

    private static BoardNote back(Context ctx, BoardView view, Instant now) {
        Command.Header header = header(ctx, now);
        List<Command> commands = new HeatActs(view, header, "").cameBack().commands();
        return new BoardNote(
                header, view.serial(), view.newest(), Kind.CAME_BACK, Map.of(), Optional.empty(), commands);
    }
}
