package bagclock.stock;

import bagclock.desk.Desk;
import bagclock.platform.Database;
import bagclock.platform.Names;
import bagclock.platform.Pages;
import bagclock.platform.Texts;
import io.javalin.config.RoutesConfig;
import java.time.Clock;

/** Every route of the stockroom's pages. */
public final class StockRoutes {
    private final CounterRoutes counter;
    private final ActRoutes acts;
    private final LevelRoutes levels;
    private final LateScanRoutes late;
    private final ScannerRoutes scanner;
    private final ItemRoutes items;
    private final DeliveryRoutes delivery;
    private final TrolleyRoutes trolley;
    private final CountRoutes count;
    private final StockTakeRoutes takes;
    private final DryPackRoutes dryPack;
    private final LotRoutes lots;

    /** Routes of one site. */
    public StockRoutes(Database database, Desk desk, Pages pages, Texts texts, Clock clock) {
        StockStore store = new StockStore(database);
        Words words = new Words(texts);
        ScanStore scans = new ScanStore(database);
        LabelScans labels = new LabelScans(desk, scans);
        this.counter = new CounterRoutes(new CounterRoutes.Known(desk, store, scans), pages, words, clock);
        this.late = new LateScanRoutes(new LateScans(desk, store, scans, words), words, clock);
        ActRoutes.Known known = new ActRoutes.Known(desk, store, labels);
        this.acts = new ActRoutes(known, pages, words, clock);
        this.levels = new LevelRoutes(scans, pages, words, clock);
        this.scanner = new ScannerRoutes(pages, words);
        this.items = new ItemRoutes(new ItemRoutes.Known(desk, store, new Names(database)), pages, words, clock);
        this.delivery = new DeliveryRoutes(known, pages, words, clock);
        this.trolley = new TrolleyRoutes(desk, store, pages, words, clock);
        this.count = new CountRoutes(desk, store, pages, words, clock);
        this.takes = new StockTakeRoutes(
                new StockTakeRoutes.Known(count, new StockTakeStore(database), new Names(database)),
                pages,
                words,
                clock);
        this.dryPack = new DryPackRoutes(desk, pages, words, clock);
        this.lots = new LotRoutes(new LotStore(database), pages, words, clock);
    }

    /** Declares the routes. */
    public void register(RoutesConfig routes) {
        counter.register(routes);
        acts.register(routes);
        levels.register(routes);
        late.register(routes);
        scanner.register(routes);
        items.register(routes);
        delivery.register(routes);
        trolley.register(routes);
        count.register(routes);
        takes.register(routes);
        dryPack.register(routes);
        lots.register(routes);
    }
}
