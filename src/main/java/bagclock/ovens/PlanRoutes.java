package bagclock.ovens;

import bagclock.core.oven.Plan;
import bagclock.core.oven.Run;
import bagclock.platform.Entered;
import bagclock.platform.Pages;
import bagclock.platform.Role;
import bagclock.platform.Texts;
import bagclock.platform.Visit;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The plan: seen by all who sign in, drafted and published by planners and engineers. */
final class PlanRoutes {
    private static final Role[] KEEPERS = {Role.PLANNER, Role.ENGINEER};
    private static final Set<String> DONE = Set.of("published", "rules", "back");
    private static final String USUAL_RANGE = "days";

    /** What was over before this is in no calendar any more. */
    private static final Duration CALENDAR_BACK = Duration.ofDays(31);

    private final PlanStore store;
    private final CalendarStore calendar;
    private final PlanDesk desk;
    private final Pages pages;
    private final Texts texts;
    private final Clock clock;
    private final OvenWords words;
    private final PlanPages planPages;

    /** The stores that the pages read. */
    record Stores(PlanStore plans, CalendarStore calendar) {}

    PlanRoutes(Stores stores, PlanDesk desk, Pages pages, Texts texts, Clock clock) {
        this.store = stores.plans();
        this.calendar = stores.calendar();
        this.desk = desk;
        this.pages = pages;
        this.texts = texts;
        this.clock = clock;
        this.words = new OvenWords(texts);
        this.planPages = new PlanPages(words, texts);
    }

    void register(RoutesConfig routes) {
        routes.get("/ovens/plan", this::show, Role.signedIn());
        routes.get("/ovens/plan/print", this::print, Role.signedIn());
        routes.get("/ovens/plan/plan.csv", this::table, Role.signedIn());
        routes.get("/ovens/plan/plan.ics", this::calendar, Role.signedIn());
        routes.post("/ovens/plan/outages/{id}/end", this::endOutage, KEEPERS);
        routes.post("/ovens/plan/drafts", this::draft, KEEPERS);
        routes.get("/ovens/plan/drafts/{id}", this::showDraft, Role.signedIn());
        routes.post("/ovens/plan/drafts/{id}/publish", this::publish, KEEPERS);
    }

    private static String range(Context ctx) {
        String asked = Optional.ofNullable(ctx.queryParam("range")).orElse(USUAL_RANGE);
        return PlanPages.RANGES.containsKey(asked) ? asked : USUAL_RANGE;
    }

    private Entered nothing() {
        Instant now = clock.instant();
        return Entered.of(
                Map.of(
                        "closeFrom",
                        texts.field(now),
                        "closeTo",
                        texts.field(now.plus(Duration.ofHours(4))),
                        "rushPositions",
                        "1",
                        "rushTemperature",
                        "125",
                        "rushHours",
                        "8",
                        "rushWeight",
                        "1",
                        "rushBy",
                        texts.field(now.plus(Duration.ofHours(24)))),
                texts);
    }

    private void show(Context ctx) {
        String act = ctx.queryParam("done");
        String done = act != null && DONE.contains(act) ? words.text("plan.done." + act) : "";
        pages.show(ctx, published(ctx, nothing(), done));
    }

    private PlanPage published(Context ctx, Entered entered, String done) {
        Instant now = clock.instant();
        ShopNow shop = desk.shop(now);
        return planPages.page(
                new PlanPages.Shown(shop, shop.asItIs(), shop.published(), range(ctx), done), entered, now);
    }

    private void draft(Context ctx) {
        Instant now = clock.instant();
        Entered entered = Entered.of(ctx, texts);
        ShopNow shop = desk.shop(now);
        Optional<List<PlanChange>> changes = PlanForm.read(entered, texts, shop, now);
        if (changes.isEmpty()) {
            pages.refuse(ctx, published(ctx, entered, "").naming(PlanForm.ofRuns(entered)));
            return;
        }
        ShopNow.Supposed supposed = shop.supposing(changes.get());
        if (!supposed.refused().isEmpty()) {
            PlanPage page = planPages.page(
                    new PlanPages.Shown(shop, shop.asItIs(), shop.published(), range(ctx), ""), entered, now);
            LetGoWords why = new LetGoWords(words, texts, shop, now);
            pages.refuse(
                    ctx,
                    page.naming(supposed.refused().stream().map(why::refused).toList()));
            return;
        }
        String who = Visit.of(ctx).signedIn().id();
        StoredPlan draft = desk.draft(shop, supposed, changes.get(), who);
        ctx.redirect("/ovens/plan/drafts/" + draft.id(), HttpStatus.SEE_OTHER);
    }

    private void showDraft(Context ctx) {
        pages.show(ctx, drafted(ctx, desk.plan(ctx.pathParam("id"))));
    }

    private PlanPage drafted(Context ctx, StoredPlan draft) {
        Instant now = clock.instant();
        ShopNow shop = desk.shop(now);
        return planPages.page(
                new PlanPages.Shown(shop, shop.supposing(draft.changes()), Optional.of(draft), range(ctx), ""),
                nothing(),
                now);
    }

    private void publish(Context ctx) {
        StoredPlan draft = desk.plan(ctx.pathParam("id"));
        if (store.publish(draft, Visit.of(ctx).signedIn().id(), clock.instant())) {
            ctx.redirect("/ovens/plan?done=published", HttpStatus.SEE_OTHER);
        } else {
            pages.refuse(ctx, drafted(ctx, draft));
        }
    }

    private void endOutage(Context ctx) {
        store.endOutage(ctx.pathParam("id"), Visit.of(ctx).signedIn().id(), clock.instant());
        ctx.redirect("/ovens/plan?done=back", HttpStatus.SEE_OTHER);
    }

    private Plan plan() {
        return store.published().map(StoredPlan::plan).orElseGet(() -> new Plan(List.of()));
    }

    private void table(Context ctx) {
        ctx.contentType("text/csv; charset=utf-8")
                .header("Content-Disposition", "attachment; filename=\"oven-plan.csv\"")
                .result(new PlanExport(words, texts).table(plan()));
    }

    private void calendar(Context ctx) {
        ctx.contentType("text/calendar; charset=utf-8")
                .header("Content-Disposition", "attachment; filename=\"oven-plan.ics\"")
                .result(new PlanExport(words, texts)
                        .calendar(calendar.entries(clock.instant().minus(CALENDAR_BACK))));
    }

    /** The next day and night. */
    private void print(Context ctx) {
        Instant now = clock.instant();
        Instant until = now.plus(Duration.ofHours(24));
        PlanPage page = published(ctx, nothing(), "");
        Set<String> soon = plan().runs().stream()
                .filter(run -> run.startAt().isBefore(until) && run.endAt().isAfter(now))
                .map(Run::lots)
                .flatMap(List::stream)
                .collect(Collectors.toSet());
        pages.show(
                ctx,
                new PlanPrintPage(
                        words.text("plan.print.title", texts.at(now)),
                        page.lead(),
                        page.named(),
                        page.without(),
                        page.runs().stream()
                                .filter(run -> run.lots().stream().anyMatch(soon::contains)
                                        || run.start().isEmpty())
                                .toList()));
    }
}
