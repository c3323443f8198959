package bagclock.boards;

import bagclock.core.heat.HeatPlan.Purpose;
import bagclock.desk.BoardAsk;
import bagclock.desk.BoardNote;
import bagclock.desk.BoardView;
import bagclock.desk.Command;
import bagclock.ledger.BoardEntry;
import bagclock.ledger.BoardEntry.Kind;
import bagclock.ledger.BoardNotes;
import bagclock.platform.Entered;
import bagclock.platform.Role;
import bagclock.platform.Visit;
import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Heats of a whole board outside a job: a wave, a second reflow, a pass through the rework machine. */
final class WholeRoutes {
    private static final String PATH = "/boards/{serial}/heat";

    private final Rooms rooms;
    private final BoardWords words;
    private final WholePages pages;

    WholeRoutes(Rooms rooms) {
        this.rooms = rooms;
        this.words = rooms.words();
        this.pages = new WholePages(rooms);
    }

    void register(RoutesConfig routes) {
        routes.get(PATH, this::show, Role.signedIn());
        routes.post(PATH, this::record, Rooms.WORKERS);
        routes.post(PATH + "/release", this::release, Role.ENGINEER);
    }

    /** One sending. */
    private record Call(Context ctx, BoardView view, HeatForm form, Instant now) {
        Entered sent() {
            return form.entered();
        }

        Command.Header header(Instant at) {
            return new Command.Header(Visit.of(ctx).signedIn().id(), at, sent().text(JobForms.KEY));
        }

        BoardAsk ask(Instant at) {
            return form.ask(view.serial(), "", Purpose.WHOLE_BOARD, at);
        }
    }

    private Call call(Context ctx) {
        Instant now = rooms.now();
        BoardView view = rooms.board(ctx.pathParam("serial"), now);
        HeatForm form = HeatForm.sent(ctx, words.texts(), rooms.wholeProfiles(view, now));
        if (!Sending.hasKey(form.entered())) {
            throw new BadRequestResponse();
        }
        return new Call(ctx, view, form, now);
    }

    private void show(Context ctx) {
        Instant now = rooms.now();
        BoardView view = rooms.board(ctx.pathParam("serial"), now);
        HeatForm form = HeatForm.asked(ctx, words.texts(), rooms.wholeProfiles(view, now));
        WholePage page = pages.page(view, form, pages.nothing(mayRelease(ctx)), now);
        if (form.entered().isRefused()) {
            rooms.pages().refuse(ctx, page);
        } else {
            rooms.pages().show(ctx, page);
        }
    }

    private static boolean isReadable(HeatForm form) {
        form.peak();
        form.length();
        return !form.entered().isRefused();
    }

    private static boolean mayRelease(Context ctx) {
        return Visit.of(ctx).signedIn().roles().contains(Role.ENGINEER);
    }

    private void record(Context ctx) {
        Call call = call(ctx);
        Optional<Instant> at = TypedMoment.of(call.sent(), HeatForm.AT, call.view(), call.now());
        String what = call.sent().required(JobForms.WHY);
        if (!isReadable(call.form())) {
            refuse(call, List.of());
            return;
        }
        BoardAsk ask = call.ask(at.orElseThrow());
        HeatActs acts = new HeatActs(call.view(), call.header(at.get()), "");
        acts.heat(rooms.boards().mayHeat(ask), ask, Optional.empty(), "");
        Map<String, String> told = new HashMap<>(acts.told());
        told.put(BoardNotes.JOB, "");
        told.put(BoardNotes.WHY, what);
        call.view()
                .state()
                .openRelease("", Purpose.WHOLE_BOARD.code())
                .ifPresent(entry -> told.put(BoardNotes.RELEASE, Integer.toString(entry.seq())));
        note(
                call,
                new Saying(at.get(), Kind.HEATED, told, acts.commands()),
                "/boards/" + call.view().serial() + "/heats/");
    }

    private void release(Context ctx) {
        Call call = call(ctx);
        String why = call.sent().required(JobForms.REASON);
        if (!isReadable(call.form())) {
            refuse(call, List.of());
            return;
        }
        Map<String, String> told = Map.of(BoardNotes.JOB, "", BoardNotes.WHY, why);
        note(call, new Saying(call.now(), Kind.RELEASED, told, List.of()), "");
    }

    /** What is to be written. */
    private record Saying(Instant at, Kind kind, Map<String, String> told, List<Command> commands) {}

    private void note(Call call, Saying saying, String records) {
        BoardNote note = new BoardNote(
                call.header(saying.at()),
                call.view().serial(),
                Sending.seen(call.sent()),
                saying.kind(),
                saying.told(),
                Optional.of(call.ask(saying.at())),
                saying.commands());
        rooms.boards()
                .record(note, call.now())
                .fold(entry -> done(call, records, entry), refusals -> refuse(call, words.refusals(refusals)));
    }

    /** After a heat to its record, after a release back to the question. */
    private static boolean done(Call call, String records, BoardEntry entry) {
        String back = WholePages.path(call.view()) + call.form().query();
        call.ctx().redirect(records.isEmpty() ? back : records + entry.seq(), HttpStatus.SEE_OTHER);
        return true;
    }

    /** The page as it stands now, with what was typed and why it was not taken. */
    private boolean refuse(Call call, List<String> refusals) {
        WholePages.Told told = new WholePages.Told(refusals, call.sent(), mayRelease(call.ctx()));
        rooms.pages().refuse(call.ctx(), pages.page(call.view(), call.form(), told, call.now()));
        return false;
    }
}
