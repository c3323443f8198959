package bagclock.boards;

import bagclock.desk.BoardDesk;
import bagclock.desk.BoardView;
import bagclock.desk.Desk;
import bagclock.platform.NotThere;
import bagclock.platform.Pages;
import bagclock.platform.Role;
import java.time.Clock;
import java.time.Instant;

/** What all routes of boards work with. */
record Rooms(Desk desk, BoardsStore store, Pages pages, BoardWords words, Clock clock) {
    static final Role[] WORKERS = {Role.TECHNICIAN, Role.ENGINEER};

    BoardDesk boards() {
        return desk.boards();
    }

    Instant now() {
        return clock.instant();
    }

    BoardView board(String serial, Instant now) {
        return boards().board(serial, now).orElseThrow(() -> new NotThere("no board " + serial));
    }
}
