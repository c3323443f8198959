package bagclock.ovens;

import bagclock.desk.Desk;
import bagclock.platform.Database;
import bagclock.platform.Live;
import bagclock.platform.Names;
import bagclock.platform.Pages;
import bagclock.platform.Texts;
import io.javalin.config.RoutesConfig;
import java.time.Clock;
import java.time.Instant;
import java.util.List;

/** Every route of the planner's pages. */
public final class OvensRoutes implements AutoCloseable {
    private final OvenStore store;
    private final OvenRoutes ovens;
    private final LoadRoutes loading;
    private final RunRoutes runs;
    private final ChartRoutes chartRoutes;
    private final InterruptionRoutes interruptions;
    private final ToldRuns toldRuns;
    private final EndedRoutes ended;
    private final RulesRoutes rules;
    private final PlanRoutes plans;
    private final PlanDesk planDesk;

    /** The rooms that the pages read from and write to, beside the desk. */
    public record Rooms(Database database, Live live) {}

    /** Routes of one site. */
    public OvensRoutes(Rooms rooms, Desk desk, Pages pages, Texts texts, Clock clock) {
        this.store = new OvenStore(rooms.database(), rooms.live()::tell);
        PlanStore planStore = new PlanStore(rooms.database(), rooms.live()::tell);
        Ovens all = new Ovens(desk, store);
        OvenWords words = new OvenWords(texts);
        ChartStore charts = new ChartStore(rooms.database(), rooms.live()::tell);
        BandStore bands = new BandStore(rooms.database());
        PlanAtLoad planAtLoad = new PlanAtLoad(store, planStore, words, texts);
        this.loading = new LoadRoutes(all, planAtLoad, pages, texts, clock);
        RunPages runPages = new RunPages(
                new ChartWords(words, texts, new Names(rooms.database())),
                new Charts(desk, charts, bands),
                planAtLoad,
                store,
                texts);
        EndedPages endedPages = new EndedPages(
                new EndedRuns(all, charts), new LateProof(desk, charts, words), runPages, planAtLoad, texts);
        this.ovens = new OvenRoutes(all, runPages, pages, texts, clock);
        this.runs = new RunRoutes(all, runPages, pages, texts, clock);
        this.interruptions = new InterruptionRoutes(all, runPages, pages, texts, clock);
        this.chartRoutes = new ChartRoutes(all, endedPages, pages, texts, clock);
        this.planDesk = new PlanDesk(all, charts, planStore, texts.zone());
        this.toldRuns = new ToldRuns(all, runPages.charts(), endedPages);
        this.ended = new EndedRoutes(all, endedPages, pages, texts, clock);
        this.rules = new RulesRoutes(planStore, bands, pages, texts, clock);
        this.plans = new PlanRoutes(
                new PlanRoutes.Stores(planStore, new CalendarStore(rooms.database())), planDesk, pages, texts, clock);
    }

    /** Keeps runs that ended before, unless some are kept already. */
    public void keep(List<ToldRun> runs, Instant now) {
        toldRuns.keep(runs, now);
    }

    /** Keeps by when items are needed, unless that is known of some already. */
    public void keepNeeds(List<ToldNeed> needs, String who, Instant now) {
        if (store.needs().isEmpty()) {
            needs.forEach(need -> store.noteNeed(new OvenStore.Need(need.tag(), need.by(), need.weight()), who, now));
        }
    }

    /** Plans what waits and publishes that, unless a plan is published already. */
    public void publishFirst(String who, Instant now) {
        planDesk.publishFirst(who, now);
    }

    /** Declares the routes. */
    public void register(RoutesConfig routes) {
        ovens.register(routes);
        loading.register(routes);
        runs.register(routes);
        chartRoutes.register(routes);
        interruptions.register(routes);
        ended.register(routes);
        rules.register(routes);
        plans.register(routes);
    }

    /** Ends the searches for better plans. */
    @Override
    public void close() {
        planDesk.close();
    }
}
