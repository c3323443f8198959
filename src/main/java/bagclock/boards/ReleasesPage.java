package bagclock.boards;

import bagclock.platform.Page;
import java.util.List;

/** The releases that engineers gave, newest first. */
public record ReleasesPage(String title, List<Line> lines) implements Page {
    /** One release; {@code used} leads to the heat that it was used for, empty if it was not used. */
    public record Line(
            String when,
            String board,
            String what,
            String verdict,
            String word,
            String why,
            String who,
            String href,
            String used) {}

    @Override
    public String template() {
        return "boards/releases.jte";
    }

    @Override
    public String frontDoor() {
        return "bench";
    }
}
