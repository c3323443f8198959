package bagclock.parts;

import bagclock.platform.Page;
import java.util.List;

/**
 * One part type: what is known, since when, and which items use it.
 *
 * @param done what was just done; empty for nothing
 * @param doubts what contradicts itself or the standard
 * @param more how many items are not shown, in words; empty for none
 */
public record PartPage(
        String title,
        String lead,
        String done,
        String change,
        List<String> doubts,
        List<Group> groups,
        List<Item> items,
        String more,
        String allItems,
        List<Version> versions)
        implements Page {
    /** Facts that belong together. */
    public record Group(String title, List<Fact> facts) {}

    /** One fact; several lines for a list. */
    public record Fact(String name, List<String> lines) {}

    /** An item of this type. */
    public record Item(String tag, String href, String quantity, String where) {}

    /** What somebody entered. */
    public record Version(String number, String at, String machine, String who, String what) {}

    @Override
    public String template() {
        return "parts/part.jte";
    }

    @Override
    public String frontDoor() {
        return "parts";
    }
}
