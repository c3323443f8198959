package bagclock.boards;

import bagclock.platform.Page;
import java.util.List;

/**
 * A board type: what it bears, what sits where, how it was measured.
 *
 * @param done words of what was just done; empty for nothing
 */
public record TypePage(
        String title,
        String number,
        String lead,
        String done,
        List<Fact> facts,
        List<Line> lines,
        String count,
        List<Profile> profiles,
        List<Board> boards)
        implements Page {
    /** One fact. */
    public record Fact(String name, String value) {}

    /** A part type and its locations; {@code state} says what is not known of it. */
    public record Line(String partNumber, String href, String description, String locations, String state) {}

    /** A heat profile; {@code state} says that it is too old, or nothing. */
    public record Profile(String id, String what, String tool, String peaks, String when, String state) {}

    /** A board of this type. */
    public record Board(String serial, String href) {}

    @Override
    public String template() {
        return "boards/type.jte";
    }

    @Override
    public String frontDoor() {
        return "bench";
    }
}
