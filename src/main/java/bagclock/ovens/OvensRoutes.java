package bagclock.ovens;

import bagclock.desk.Desk;
import bagclock.platform.Database;
import bagclock.platform.Live;
import bagclock.platform.Names;
import bagclock.platform.Pages;
import bagclock.platform.Texts;
import io.javalin.config.RoutesConfig;
import java.time.Clock;

/** Every route of the planner's pages. */
public final class OvensRoutes implements AutoCloseable {
    private final OvenRoutes ovens;
    private final LoadRoutes loading;
    private final RunRoutes runs;
    private final ChartRoutes charts;
    private final InterruptionRoutes interruptions;
    private final PlanRoutes plans;
    private final PlanDesk planDesk;

    /** The rooms that the pages read from and write to, beside the desk. */
    public record Rooms(Database database, Live live) {}

    /** Routes of one site. */
    public OvensRoutes(Rooms rooms, Desk desk, Pages pages, Texts texts, Clock clock) {
        OvenStore store = new OvenStore(rooms.database(), rooms.live()::tell);
        this.loading = new LoadRoutes(desk, store, pages, texts, clock);
        Ovens all = new Ovens(desk, store);
        OvenWords words = new OvenWords(texts);
        RunPages runPages = new RunPages(
                words,
                new ChartWords(words, texts, new Names(rooms.database())),
                new Charts(desk, new ChartStore(rooms.database(), rooms.live()::tell)),
                texts);
        this.ovens = new OvenRoutes(all, runPages, pages, texts, clock);
        this.runs = new RunRoutes(all, runPages, pages, texts, clock);
        this.interruptions = new InterruptionRoutes(all, runPages, pages, texts, clock);
        this.charts = new ChartRoutes(all, runPages, pages, texts, clock);
        PlanStore planStore = new PlanStore(rooms.database(), rooms.live()::tell);
        this.planDesk = new PlanDesk(store, new Ovens(desk, store), planStore, texts.zone());
        this.plans = new PlanRoutes(planStore, planDesk, pages, texts, clock);
    }

    /** Declares the routes. */
    public void register(RoutesConfig routes) {
        ovens.register(routes);
        loading.register(routes);
        runs.register(routes);
        charts.register(routes);
        interruptions.register(routes);
        plans.register(routes);
    }

    /** Ends the searches for better plans. */
    @Override
    public void close() {
        planDesk.close();
    }
}
