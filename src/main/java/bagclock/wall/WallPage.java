package bagclock.wall;

import bagclock.platform.Page;
import java.util.List;

/**
 * The wall display, in sentences.
 *
 * @param asOf when it was worked out
 * @param soon whose heat must end soonest
 * @param past how many have outlived their floor life, in words; empty for none
 * @param ovens what is in each oven and when it may come out
 * @param air where the air is above its limit
 */
public record WallPage(
        String title, String machine, String asOf, List<Item> soon, String past, List<Oven> ovens, List<String> air)
        implements Page {
    /**
     * An item that must be heated soon.
     *
     * @param end the moment in words
     */
    public record Item(String tag, String part, String where, String end) {}

    /** One oven that is not empty. */
    public record Oven(String name, String ready, String tags) {}

    @Override
    public String template() {
        return "wall/wall.jte";
    }
}
