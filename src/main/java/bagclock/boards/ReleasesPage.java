package bagclock.boards;

import bagclock.platform.Page;
import java.util.List;

/** The releases that engineers gave, newest first. */
public record ReleasesPage(String title, List<Line> lines) implements Page {
    /** Another page. */
    public record Link(String href, String label) {}

    /**
     * One release.
     *
     * @param record when it was given; leads to its record
     * @param about the board or the item
     * @param what the heat that was released
     * @param used record of the heat that it was used for, empty if it was not used
     */
    public record Line(
            Link record, Link about, String what, String verdict, String word, String why, String who, String used) {}

    @Override
    public String template() {
        return "boards/releases.jte";
    }

    @Override
    public String frontDoor() {
        return "bench";
    }
}
