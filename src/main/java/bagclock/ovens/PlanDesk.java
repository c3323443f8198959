package bagclock.ovens;

import bagclock.core.oven.Anneal;
import bagclock.core.oven.Bounds;
import bagclock.core.oven.Budget;
import bagclock.core.oven.Found;
import bagclock.core.oven.Plan;
import bagclock.core.oven.PlanCheck;
import bagclock.core.oven.Problem;
import bagclock.core.oven.Replan;
import bagclock.core.oven.Run;
import bagclock.core.oven.Score;
import bagclock.core.oven.Shop;
import bagclock.core.oven.ShopInMinutes;
import bagclock.core.quantity.Celsius;
import bagclock.ovens.StoredPlan.Search;
import bagclock.ovens.solver.Solver;
import bagclock.platform.NotThere;
import bagclock.platform.Secret;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Collectors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Makes drafts. A draft is there at once; then one search after the other makes it better in the background, as long as
 * neither it nor another is published.
 */
final class PlanDesk implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(PlanDesk.class);
    private static final Duration ANNEALING = Duration.ofMillis(1_500);
    /** More than cores: each thread of the solver searches in its own way, and with fewer some ways are not tried. */
    private static final int WORKERS = 8;

    private static final int MOST_ENDED = 50;
    private static final int FIRST_STEPS = 20_000;

    private final OvenStore ovenStore;
    private final Ovens ovens;
    private final ChartStore charts;
    private final PlanStore store;
    private final ZoneId zone;
    private final Solver solver = Solver.usual(WORKERS);
    private final ExecutorService searches = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "plan-search");
        thread.setDaemon(true);
        return thread;
    });

    PlanDesk(Ovens ovens, ChartStore charts, PlanStore store, ZoneId zone) {
        this.ovenStore = ovens.store();
        this.ovens = ovens;
        this.charts = charts;
        this.store = store;
        this.zone = zone;
    }

    /** The shop as it is. */
    ShopNow shop(Instant now) {
        Instant minute = now.truncatedTo(ChronoUnit.MINUTES);
        return new ShopNow(
                minute,
                zone,
                store.rules(),
                ovenStore.ovens(now),
                ended(),
                ovens.inside(now),
                ovens.queue(now),
                store.outages(now),
                store.rushes(now),
                store.published());
    }

    private List<Run> ended() {
        record Filling(String oven, Instant loadedAt, double setPointC) {}
        return charts.ends(MOST_ENDED).stream()
                .collect(Collectors.groupingBy(end -> new Filling(end.oven(), end.loadedAt(), end.setPointC())))
                .entrySet()
                .stream()
                .map(filling -> new Run(
                        filling.getKey().oven(),
                        new Celsius(filling.getKey().setPointC()),
                        filling.getValue().stream()
                                .map(end -> new Run.Stay(end.tag(), end.loadedAt(), end.outAt()))
                                .toList()))
                .toList();
    }

    /** A new draft: what was published is kept where it can be; from nothing where nothing was. */
    StoredPlan draft(ShopNow now, ShopNow.Supposed supposed, List<PlanChange> changes, String who) {
        Shop shop = supposed.intake().shop();
        Replan replan = new Replan(shop);
        Optional<Plan> before = now.published().map(StoredPlan::plan);
        Found found = before.map(replan::inserted).orElseGet(replan::fresh);
        boolean isSought = !now.rules().search().isZero();
        StoredPlan draft = made(now, supposed, found, isSought ? Search.SEARCHING : Search.DONE, changes);
        store.add(draft, who);
        if (isSought) {
            searches.execute(() -> search(draft, shop, now.rules(), before));
        }
        return draft;
    }

    /**
     * A plan for a site that has none, made at once and published, from the full hour after the next on: so its first run
     * is not late before anybody has seen it.
     */
    void publishFirst(String who, Instant now) {
        if (store.published().isPresent()) {
            return;
        }
        ShopNow shop = shop(now.truncatedTo(ChronoUnit.HOURS).plus(2, ChronoUnit.HOURS));
        ShopNow.Supposed supposed = shop.asItIs();
        Replan replan = new Replan(supposed.intake().shop());
        Found found =
                new Anneal().improve(replan.minutes().problem(), replan.fresh().sketch(), Budget.of(FIRST_STEPS, 1));
        StoredPlan draft = made(shop, supposed, found, Search.DONE, List.of());
        store.add(draft, who);
        store.publish(draft, who, now);
    }

    private static StoredPlan made(
            ShopNow now, ShopNow.Supposed supposed, Found found, Search search, List<PlanChange> changes) {
        Shop shop = supposed.intake().shop();
        return new StoredPlan(
                Secret.token(),
                now.published().map(StoredPlan::id),
                now.now(),
                Optional.empty(),
                search,
                found.score(),
                found.bounds(),
                lawful(shop, ShopInMinutes.of(shop).plan(found.sketch())),
                supposed.pinned(),
                changes);
    }

    private static Plan lawful(Shop shop, Plan plan) {
        if (!PlanCheck.faults(shop, plan).isEmpty()) {
            throw new IllegalStateException("unlawful plan: " + PlanCheck.faults(shop, plan));
        }
        return plan;
    }

    private void search(StoredPlan draft, Shop shop, PlanRules rules, Optional<Plan> before) {
        try {
            Replan replan = new Replan(shop);
            ShopInMinutes minutes = replan.minutes();
            Problem problem = before.map(plan -> minutes.anchored(plan, rules.movePrice()))
                    .orElse(minutes.problem());
            Found start = new Found(minutes.sketch(draft.plan()), draft.score(), draft.bounds());
            if (!store.isOpen(draft.id())) {
                store.better(with(draft, shop, minutes, start, Search.BROKEN_OFF));
                return;
            }
            Duration annealing = rules.search().compareTo(ANNEALING) < 0 ? rules.search() : ANNEALING;
            Found annealed = new Anneal()
                    .improve(
                            problem,
                            start.sketch(),
                            Budget.of(annealing, draft.id().hashCode()));
            boolean isOpen = store.isOpen(draft.id());
            store.better(with(draft, shop, minutes, annealed, isOpen ? Search.SEARCHING : Search.BROKEN_OFF));
            if (!isOpen) {
                return;
            }
            Solver.Answer answer = solver.search(problem, annealed.sketch(), Budget.of(rules.search(), 1), found -> {});
            Found proved = answer.found();
            Bounds bounds = answer.ending() == Solver.Ending.BROKEN_OFF ? annealed.bounds() : proved.bounds();
            store.better(with(
                    draft,
                    shop,
                    minutes,
                    new Found(proved.sketch(), proved.score(), higher(bounds, annealed.bounds())),
                    Search.valueOf(answer.ending().name())));
        } catch (RuntimeException failure) {
            if (searches.isShutdown()) {
                return; // the site closes: the draft goes with it
            }
            LOG.warn("the search for a better plan failed; the draft stays as it is", failure);
        }
    }

    /** Lateness that a lot has with all ovens to itself is a bound too. */
    private static Bounds higher(Bounds one, Bounds other) {
        long late = Math.max(one.late().orElse(0), other.late().orElse(0));
        return new Bounds(OptionalLong.of(late), one.ovenMinutes(), one.runs());
    }

    private static StoredPlan with(StoredPlan draft, Shop shop, ShopInMinutes minutes, Found found, Search search) {
        return new StoredPlan(
                draft.id(),
                draft.basedOn(),
                draft.madeAt(),
                Optional.empty(),
                search,
                new Score(
                        found.score().late(),
                        found.score().ovenMinutes(),
                        found.score().runs(),
                        0),
                found.bounds(),
                lawful(shop, minutes.plan(found.sketch())),
                draft.pinned(),
                draft.changes());
    }

    /** A draft or a published plan. */
    StoredPlan plan(String id) {
        return store.plan(id).orElseThrow(() -> new NotThere("no plan " + id));
    }

    @Override
    public void close() {
        searches.shutdownNow();
        solver.close();
    }
}
