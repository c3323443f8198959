package bagclock.boards;

import bagclock.desk.Desk;
import bagclock.platform.Database;
import bagclock.platform.Names;
import bagclock.platform.Pages;
import bagclock.platform.Texts;
import io.javalin.config.RoutesConfig;
import java.time.Clock;

/** Boards, board types, heat profiles, rework jobs, records and releases. */
public final class BoardsRoutes {
    private final Rooms rooms;

    /** Routes of one site. */
    public BoardsRoutes(Database database, Desk desk, Pages pages, Texts texts, Clock clock) {
        BoardWords words = new BoardWords(texts, new Names(database));
        this.rooms = new Rooms(desk, new BoardsStore(database), pages, words, clock);
    }

    /** Declares the routes; fixed words before serial numbers. */
    public void register(RoutesConfig routes) {
        new TypeRoutes(rooms).register(routes);
        new ProfileRoutes(rooms).register(routes);
        new RecordRoutes(rooms).register(routes);
        new RulesRoutes(rooms).register(routes);
        new WholeRoutes(rooms).register(routes);
        new BakeRoutes(rooms).register(routes);
        new BoardRoutes(rooms).register(routes);
        new JobRoutes(rooms).register(routes);
    }
}
