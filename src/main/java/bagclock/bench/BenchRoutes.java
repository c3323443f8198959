package bagclock.bench;

import bagclock.bench.BenchPages.Answered;
import bagclock.core.Reason;
import bagclock.core.Refusal;
import bagclock.core.heat.Answer;
import bagclock.core.heat.HeatPlan;
import bagclock.core.quantity.Celsius;
import bagclock.desk.BoardAsk;
import bagclock.desk.BoardReply;
import bagclock.desk.Command;
import bagclock.desk.Decided;
import bagclock.desk.Desk;
import bagclock.desk.HistoryLine;
import bagclock.desk.ItemView;
import bagclock.desk.Receipt;
import bagclock.platform.Entered;
import bagclock.platform.Messages;
import bagclock.platform.Names;
import bagclock.platform.NotThere;
import bagclock.platform.Pages;
import bagclock.platform.Role;
import bagclock.platform.Secret;
import bagclock.platform.Texts;
import bagclock.platform.Visit;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The bench: may it be heated, and the record that it was. */
public final class BenchRoutes {
    /** The technician's front door. */
    public static final String PATH = "/bench";

    private static final Role[] RECORDERS = {Role.TECHNICIAN, Role.ENGINEER};
    private static final int LONGEST_KEY = 100;

    private final Desk desk;
    private final Pages pages;
    private final Texts texts;
    private final Messages messages;
    private final Clock clock;
    private final BenchPages words;
    private final HeatPages heats;

    /** Routes of one site. */
    public BenchRoutes(Desk desk, Names names, Pages pages, Texts texts, Clock clock) {
        this.desk = desk;
        this.pages = pages;
        this.texts = texts;
        this.messages = texts.messages();
        this.clock = clock;
        this.words = new BenchPages(names, texts);
        this.heats = new HeatPages(names, texts);
    }

    /** Declares the routes. */
    public void register(RoutesConfig routes) {
        routes.get(PATH, this::ask, Role.signedIn());
        routes.post(PATH, this::recordHeat, RECORDERS);
        routes.post(PATH + "/release", this::release, Role.ENGINEER);
        routes.get(PATH + "/heats/{tag}/{seq}", this::heat, Role.signedIn());
    }

    private void ask(Context ctx) {
        Instant now = clock.instant();
        PlanForm form = PlanForm.asked(ctx, texts, now);
        if (form.plan().isEmpty()) {
            pages.refuse(ctx, words.question(form));
        } else if (form.code().isEmpty()) {
            pages.show(ctx, words.question(form, desk.decided(now.minus(Decided.LATELY), now)));
        } else {
            answer(ctx, form, form.plan().get(), now);
        }
    }

    private void answer(Context ctx, PlanForm form, HeatPlan plan, Instant now) {
        Optional<ItemView> item = item(form.code(), now);
        if (item.isPresent()) {
            answerItem(ctx, form, item.get(), now);
            return;
        }
        Optional<String> serial = board(form.code(), now);
        if (serial.isEmpty()) {
            form.entered().refuse(PlanForm.CODE, messages.text("bench.code.unknown", form.code()));
            pages.refuse(ctx, words.question(form));
        } else {
            BoardReply reply = desk.boards().mayHeat(BoardAsk.everywhere(serial.get(), plan));
            pages.show(ctx, words.board(form, serial.get(), reply, now));
        }
    }

    private void answerItem(Context ctx, PlanForm form, ItemView item, Instant now) {
        if (item.item().ended()) {
            String gone =
                    texts.refusal(Refusal.of(Reason.ITEM_ENDED, item.item().tag()));
            form.entered().refuse(PlanForm.CODE, gone);
            pages.refuse(ctx, words.question(form));
            return;
        }
        Entered fresh = Entered.of(Map.of(BenchPages.AT, texts.field(now), BenchPages.KEY, Secret.token()), texts);
        HeatPlan plan = form.plan().orElseThrow();
        pages.show(ctx, words.item(form, answered(item, plan), fresh, "", now));
    }

    private Answered answered(ItemView item, HeatPlan plan) {
        String tag = item.item().tag();
        Answer answer = desk.mayHeat(tag, Optional.of(plan), plan.at());
        return new Answered(item, answer, desk.releases(tag).open(plan, answer));
    }

    /** As typed, else in capitals. */
    private Optional<ItemView> item(String code, Instant now) {
        return desk.item(code, now).or(() -> desk.item(code.toUpperCase(Locale.ROOT), now));
    }

    /** The serial number of a board that is entered, or that items sit on; as typed, else in capitals. */
    private Optional<String> board(String code, Instant now) {
        return Stream.of(code, code.toUpperCase(Locale.ROOT))
                .filter(serial -> desk.boards().board(serial, now).isPresent()
                        || !desk.onBoard(serial).isEmpty())
                .findFirst();
    }

    private void recordHeat(Context ctx) {
        Instant now = clock.instant();
        PlanForm form = PlanForm.sent(ctx, texts, now);
        ItemView item = item(form.code(), now).orElseThrow(() -> new NotThere("no item " + form.code()));
        Entered sent = form.entered();
        Optional<Instant> at = sent.pastTime(BenchPages.AT, now);
        Optional<Celsius> measured =
                sent.numberOrNone(BenchPages.MEASURED, 20, 400).map(Celsius::new);
        String key = sent.text(BenchPages.KEY);
        if (form.plan().isEmpty() || key.isEmpty() || key.length() > LONGEST_KEY) {
            pages.refuse(ctx, words.question(form));
        } else if (sent.isRefused()) {
            refuse(ctx, form, item, "", now);
        } else {
            Command.Header header = new Command.Header(Visit.of(ctx).signedIn().id(), at.orElseThrow(), key);
            Command command =
                    new Command.Heat(header, item.item().tag(), form.plan().get(), measured);
            desk.handle(command, now)
                    .fold(receipt -> done(ctx, receipt), refusals -> refuse(ctx, form, item, words(refusals), now));
        }
    }

    /** The engineer is led back to the question, beside whose answer the release now stands. */
    private void release(Context ctx) {
        Instant now = clock.instant();
        PlanForm form = PlanForm.released(ctx, texts, now);
        ItemView item = item(form.code(), now).orElseThrow(() -> new NotThere("no item " + form.code()));
        Entered sent = form.entered();
        String why = sent.required(BenchPages.WHY);
        String key = sent.text(BenchPages.KEY);
        if (form.plan().isEmpty() || key.isEmpty() || key.length() > LONGEST_KEY) {
            pages.refuse(ctx, words.question(form));
        } else if (sent.isRefused()) {
            refuse(ctx, form, item, "", now);
        } else {
            Command.Header header = new Command.Header(Visit.of(ctx).signedIn().id(), now, key);
            Command command =
                    new Command.Release(header, item.item().tag(), form.plan().get(), why);
            desk.handle(command, now).fold(receipt -> again(ctx, form), refusals -> {
                sent.refuse(BenchPages.WHY, words(refusals));
                return refuse(ctx, form, item, "", now);
            });
        }
    }

    private static boolean again(Context ctx, PlanForm form) {
        ctx.redirect(form.address(), HttpStatus.SEE_OTHER);
        return true;
    }

    private String words(List<Refusal> refusals) {
        return refusals.stream().map(texts::refusal).collect(Collectors.joining(" "));
    }

    private boolean refuse(Context ctx, PlanForm form, ItemView item, String refusal, Instant now) {
        Answered answered = answered(item, form.plan().orElseThrow());
        pages.refuse(ctx, words.item(form, answered, form.entered(), refusal, now));
        return false;
    }

    private static boolean done(Context ctx, Receipt receipt) {
        ctx.redirect(PATH + "/heats/" + receipt.tag() + "/" + receipt.seq() + "?done=recorded", HttpStatus.SEE_OTHER);
        return true;
    }

    private void heat(Context ctx) {
        Instant now = clock.instant();
        String tag = ctx.pathParam("tag");
        String seq = ctx.pathParam("seq");
        ItemView item = desk.item(tag, now).orElseThrow(() -> new NotThere("no item " + tag));
        HistoryLine line = item.lines().stream()
                .filter(one -> seq.equals(Integer.toString(one.entry().seq())))
                .findFirst()
                .orElseThrow(() -> new NotThere("no entry " + seq + " of " + tag));
        boolean isNew = "recorded".equals(ctx.queryParam("done"));
        pages.show(
                ctx,
                heats.of(item, line, desk.releases(tag), isNew)
                        .orElseThrow(() -> new NotThere("no heat " + seq + " of " + tag)));
    }
}
