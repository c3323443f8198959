package bagclock.boards;

import bagclock.desk.BoardDesk;
import bagclock.desk.BoardView;
import bagclock.desk.Desk;
import bagclock.platform.NotThere;
import bagclock.platform.Pages;
import bagclock.platform.Role;
import bagclock.register.HeatProfile;
import bagclock.register.Versioned;
import java.time.Clock;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;

/** What all routes of boards work with. */
record Rooms(Desk desk, BoardsStore store, Pages pages, BoardWords words, Clock clock) {
    static final Role[] WORKERS = {Role.TECHNICIAN, Role.ENGINEER};

    BoardDesk boards() {
        return desk.boards();
    }

    Instant now() {
        return clock.instant();
    }

    /** The heat profiles of a whole board, newest measurement first. */
    List<HeatProfile> wholeProfiles(BoardView view, Instant now) {
        return boards().profiles(view.board().fact().type(), now).stream()
                .map(Versioned::fact)
                .filter(profile -> profile.kind() == HeatProfile.Kind.WHOLE_BOARD)
                .sorted(Comparator.comparing(HeatProfile::measuredOn).reversed())
                .toList();
    }

    BoardView board(String serial, Instant now) {
        return boards().board(serial, now).orElseThrow(() -> new NotThere("no board " + serial));
    }
}
