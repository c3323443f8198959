package bagclock.boards;

import bagclock.desk.BoardView;
import bagclock.platform.NotThere;
import bagclock.platform.Role;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/** Records of heats, and the list of releases. */
final class RecordRoutes {
    private final Rooms rooms;
    private final RecordPages pages;

    RecordRoutes(Rooms rooms) {
        this.rooms = rooms;
        this.pages = new RecordPages(rooms.words());
    }

    void register(RoutesConfig routes) {
        routes.get("/boards/releases", this::releases, Role.signedIn());
        routes.get("/boards/{serial}/heats/{seq}", this::show, Role.signedIn());
    }

    private void releases(Context ctx) {
        rooms.pages().show(ctx, new ReleaseLines(rooms).page());
    }

    private void show(Context ctx) {
        BoardView view = rooms.board(ctx.pathParam("serial"), rooms.now());
        String seq = ctx.pathParam("seq");
        int number = Sending.number(seq);
        rooms.pages().show(ctx, pages.of(view, number).orElseThrow(() -> new NotThere("no heat " + seq)));
    }
}
