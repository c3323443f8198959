package bagclock.boards;

import bagclock.desk.BoardView;
import bagclock.ledger.BoardEntry;
import bagclock.platform.NotThere;
import bagclock.platform.Role;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Instant;

/** Records of heats, and the list of releases. */
final class RecordRoutes {
    private static final int MOST_RELEASES = 500;

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
        Instant now = rooms.now();
        var released = rooms.boards().newest(BoardEntry.Kind.RELEASED, MOST_RELEASES);
        rooms.pages().show(ctx, pages.releases(released, rooms, now));
    }

    private void show(Context ctx) {
        BoardView view = rooms.board(ctx.pathParam("serial"), rooms.now());
        String seq = ctx.pathParam("seq");
        int number = seq.matches("\\d{1,9}") ? Integer.parseInt(seq) : 0;
        rooms.pages().show(ctx, pages.of(view, number).orElseThrow(() -> new NotThere("no heat " + seq)));
    }
}
