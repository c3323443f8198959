package bagclock.boards;

import bagclock.core.Outcome;
import bagclock.core.heat.HeatPlan.Purpose;
import bagclock.core.quantity.Celsius;
import bagclock.desk.BoardAsk;
import bagclock.desk.BoardNote;
import bagclock.desk.BoardReply;
import bagclock.desk.BoardView;
import bagclock.desk.Command;
import bagclock.ledger.BoardEntry;
import bagclock.ledger.BoardEntry.Kind;
import bagclock.ledger.BoardNotes;
import bagclock.platform.Entered;
import bagclock.platform.NotThere;
import bagclock.platform.Role;
import bagclock.platform.Visit;
import bagclock.register.HeatProfile;
import bagclock.register.Versioned;
import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A rework job, step by step. */
final class JobRoutes {
    private static final String PATH = "/boards/{serial}/jobs/{job}";
    private static final int LONGEST_WHY = 400;

    private final Rooms rooms;
    private final BoardWords words;
    private final JobPages pages;

    JobRoutes(Rooms rooms) {
        this.rooms = rooms;
        this.words = rooms.words();
        this.pages = new JobPages(rooms);
    }

    void register(RoutesConfig routes) {
        routes.get(PATH, this::show, Role.signedIn());
        routes.post(PATH + "/step", this::step, Rooms.WORKERS);
        routes.post(PATH + "/bake", this::bake, Rooms.WORKERS);
        routes.post(PATH + "/bake-end", this::bakeEnd, Rooms.WORKERS);
        routes.post(PATH + "/elsewhere", this::elsewhere, Rooms.WORKERS);
        routes.post(PATH + "/heat", this::heat, Rooms.WORKERS);
        routes.post(PATH + "/reball", this::reball, Rooms.WORKERS);
        routes.post(PATH + "/release", this::release, Role.ENGINEER);
    }

    /** One request about a job. */
    private record Call(Context ctx, BoardView view, Job job, Entered sent, Instant now) {
        String who() {
            return Visit.of(ctx).signedIn().id();
        }

        String path() {
            return "/boards/" + view.serial() + "/jobs/" + job.number();
        }

        Map<String, String> told() {
            return new HashMap<>(Map.of(BoardNotes.JOB, Integer.toString(job.number())));
        }

        Optional<Instant> at(String name) {
            return TypedMoment.of(sent, name, view, now);
        }

        Command.Header header(Instant at) {
            return new Command.Header(who(), at, sent.text(JobForms.KEY));
        }

        BakeForm bakeForm(Rooms rooms) {
            return new BakeForm(rooms, view, sent);
        }
    }

    private Call call(Context ctx) {
        Instant now = rooms.now();
        BoardView view = rooms.board(ctx.pathParam("serial"), now);
        String number = ctx.pathParam("job");
        Job job = Job.of(view.standing(), Sending.number(number)).orElseThrow(() -> new NotThere("no job " + number));
        Call call = new Call(ctx, view, job, Entered.of(ctx, words.texts()), now);
        if ("POST".equals(ctx.method().name()) && !Sending.hasKey(call.sent())) {
            throw new BadRequestResponse();
        }
        return call;
    }

    private List<HeatProfile> profiles(Call call) {
        HeatProfile.Kind kind =
                call.job().nextHeat() == Purpose.PLACEMENT ? HeatProfile.Kind.PLACEMENT : HeatProfile.Kind.REMOVAL;
        return rooms.boards().profiles(call.view().board().fact().type(), call.now()).stream()
                .map(Versioned::fact)
                .filter(profile -> profile.kind() == kind)
                .filter(profile -> profile.location().equals(call.job().location()))
                .sorted(Comparator.comparing(HeatProfile::measuredOn).reversed())
                .toList();
    }

    private void show(Context ctx) {
        Call call = call(ctx);
        HeatForm form = HeatForm.asked(ctx, words.texts(), profiles(call));
        boolean readable = isReadable(call, form);
        Entered empty = Entered.of(Map.of(), words.texts());
        boolean done = ctx.queryParam("done") != null;
        JobPages.Told told = new JobPages.Told(done ? words.text("boards.job.noted") : "", List.of(), empty, may(ctx));
        JobPage page = pages.page(new JobPages.Asked(call.view(), call.job(), form, call.now()), told);
        if (readable) {
            rooms.pages().show(ctx, page);
        } else {
            rooms.pages().refuse(ctx, page);
        }
    }

    private static boolean may(Context ctx) {
        return Visit.of(ctx).signedIn().roles().contains(Role.ENGINEER);
    }

    /** The numbers can be read, and the part that was scanned is there. */
    private boolean isReadable(Call call, HeatForm form) {
        form.peak();
        form.length();
        form.part()
                .filter(tag -> rooms.desk()
                        .item(tag, call.now())
                        .filter(item -> !item.item().ended())
                        .isEmpty())
                .ifPresent(tag -> form.entered().refuse(HeatForm.PART, words.text("boards.job.part.unknown", tag)));
        return !form.entered().isRefused();
    }

    private void step(Context ctx) {
        Call call = call(ctx);
        Map<String, String> told = call.told();
        String step = call.sent().text(JobForms.STEP);
        String why = call.sent().text(JobForms.WHY);
        if (why.length() > LONGEST_WHY) {
            call.sent().refuse(JobForms.WHY, words.text("entered.long", LONGEST_WHY));
        }
        told.put(BoardNotes.STEP, step);
        told.put(BoardNotes.WHY, why);
        Kind kind = step.equals(Step.INSPECT.code()) ? Kind.JOB_CLOSED : Kind.STEP_DONE;
        Saying saying = new Saying(call.now(), kind, told, Optional.empty());
        note(call, saying, acts(call, call.now()));
    }

    private void bake(Context ctx) {
        Call call = call(ctx);
        send(call, call.bakeForm(rooms).into(call.now()).map(BakeStep::of));
    }

    private void bakeEnd(Context ctx) {
        Call call = call(ctx);
        send(call, call.bakeForm(rooms).out(call.now()).map(BakeStep::of));
    }

    private void elsewhere(Context ctx) {
        Call call = call(ctx);
        send(call, new ElsewhereForm(words, call.view(), call.sent()).step(call.now()));
    }

    private void send(Call call, Optional<BakeStep> step) {
        if (step.isEmpty()) {
            refuse(call, List.of());
            return;
        }
        BakeStep bake = step.get();
        Map<String, String> told = call.told();
        told.putAll(bake.told());
        HeatActs acts = acts(call, bake.at());
        bake.items().accept(acts);
        note(call, new Saying(bake.at(), bake.kind(), told, Optional.empty()), acts);
    }

    private void heat(Context ctx) {
        Call call = call(ctx);
        Purpose purpose = call.job().nextHeat();
        HeatForm form = HeatForm.sent(ctx, words.texts(), profiles(call));
        Optional<Instant> at = call.at(HeatForm.AT);
        Optional<Celsius> measured =
                call.sent().numberOrNone(HeatForm.MEASURED, 20, 400).map(Celsius::new);
        boolean readable = isReadable(call, form)
                && !(purpose == Purpose.PLACEMENT && form.part().isEmpty());
        if (!readable || call.sent().isRefused()) {
            refuse(call, List.of());
            return;
        }
        String number = Integer.toString(call.job().number());
        BoardAsk ask = form.ask(call.view().serial(), call.job().location(), purpose, at.orElseThrow());
        BoardReply reply = rooms.boards().mayHeat(ask);
        HeatActs acts = acts(call, at.get());
        form.part().flatMap(tag -> rooms.desk().item(tag, call.now())).ifPresent(item -> acts.taking(item.item()));
        acts.heat(reply, ask, measured, number);
        Map<String, String> told = call.told();
        call.view()
                .state()
                .openRelease(number, purpose.code())
                .ifPresent(entry -> told.put(BoardNotes.RELEASE, Integer.toString(entry.seq())));
        note(call, new Saying(at.get(), Kind.HEATED, told, Optional.of(ask)), acts);
    }

    private void reball(Context ctx) {
        Call call = call(ctx);
        Optional<Instant> at = call.at(JobForms.BALLED_AT);
        Optional<Celsius> measured =
                call.sent().numberOrNone(JobForms.BALLED_PEAK, 20, 400).map(Celsius::new);
        if (call.sent().isRefused() || call.job().kept().isEmpty()) {
            refuse(call, List.of());
            return;
        }
        String tag = call.job().kept().get();
        Map<String, String> told = call.told();
        told.put(BoardNotes.STEP, "reball");
        told.put(BoardNotes.ITEM, tag);
        HeatActs acts = acts(call, at.orElseThrow()).reball(tag, measured);
        note(call, new Saying(at.get(), Kind.STEP_DONE, told, Optional.empty()), acts);
    }

    private void release(Context ctx) {
        Call call = call(ctx);
        HeatForm form = HeatForm.sent(ctx, words.texts(), profiles(call));
        String why = call.sent().required(JobForms.REASON);
        if (call.sent().isRefused() || !isReadable(call, form)) {
            refuse(call, List.of());
            return;
        }
        Map<String, String> told = call.told();
        told.put(BoardNotes.WHY, why);
        BoardAsk ask =
                form.ask(call.view().serial(), call.job().location(), call.job().nextHeat(), call.now());
        Saying saying = new Saying(call.now(), Kind.RELEASED, told, Optional.of(ask));
        note(call, saying, acts(call, call.now()));
    }

    private HeatActs acts(Call call, Instant at) {
        return new HeatActs(
                call.view(),
                call.header(at),
                words.text(
                        "boards.job.scrapped", call.view().serial(), call.job().number()));
    }

    /** What is to be written. */
    private record Saying(Instant at, Kind kind, Map<String, String> told, Optional<BoardAsk> ask) {}

    private void note(Call call, Saying saying, HeatActs acts) {
        Map<String, String> told = new HashMap<>(saying.told());
        told.putAll(acts.told());
        BoardNote note = new BoardNote(
                call.header(saying.at()),
                call.view().serial(),
                Sending.seen(call.sent()),
                saying.kind(),
                told,
                saying.ask(),
                acts.commands());
        boolean sameStep = call.job().step().code().equals(call.sent().text(JobForms.STEP));
        if (call.sent().isRefused() || (Sending.seen(call.sent()) == call.view().newest() && !sameStep)) {
            refuse(call, List.of(words.text("boards.job.other-step")));
            return;
        }
        Outcome<BoardEntry> outcome = rooms.boards().record(note, call.now());
        outcome.fold(
                entry -> {
                    call.ctx().redirect(call.path() + "?done=" + entry.seq(), HttpStatus.SEE_OTHER);
                    return true;
                },
                refusals -> {
                    refuse(call, words.refusals(refusals));
                    return false;
                });
    }

    /** The page as it stands now, with what was typed and why it was not taken. */
    private void refuse(Call call, List<String> refusals) {
        HeatForm form = HeatForm.sent(call.ctx(), words.texts(), profiles(call));
        isReadable(call, form);
        JobPages.Told told = new JobPages.Told("", refusals, call.sent(), may(call.ctx()));
        rooms.pages()
                .refuse(call.ctx(), pages.page(new JobPages.Asked(call.view(), call.job(), form, call.now()), told));
    }
}
