package bagclock.boards;

import bagclock.platform.Page;
import java.util.List;

/**
 * All boards, board types, and the jobs that are open.
 *
 * @param done words of what was just done; empty for nothing
 */
public record BoardsPage(String title, String done, List<Line> jobs, List<Line> boards, List<Line> types)
        implements Page {
    /** A line that leads on. */
    public record Line(String href, String name, String what) {}

    @Override
    public String template() {
        return "boards/boards.jte";
    }

    @Override
    public String frontDoor() {
        return "bench";
    }
}
