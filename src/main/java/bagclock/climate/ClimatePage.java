package bagclock.climate;

import bagclock.platform.Page;
import java.util.List;

/**
 * Every zone and cabinet as it is now.
 *
 * @param done what was just done; empty for nothing
 * @param notices places where no bag should be opened, or that are no longer dry
 * @param changed items whose answer a cabinet changed that did not hold its class
 * @param worstCase what counts where no reading holds
 */
public record ClimatePage(
        String title,
        String done,
        List<String> notices,
        List<Line> zones,
        List<Line> cabinets,
        List<Changed> changed,
        String worstCase)
        implements Page {
    /** A cabinet, and each item whose answer it changed, in words. */
    public record Changed(String title, List<Item> items) {}

    /** One item. */
    public record Item(String tag, String words) {}

    /**
     * One place.
     *
     * @param last the last reading, with its time
     * @param limit of a zone its declared worst case, of a cabinet its class
     * @param state of a zone whether bags may be opened, of a cabinet whether it is dry
     */
    public record Line(String code, String name, String last, String limit, String state) {}

    @Override
    public String template() {
        return "climate/climate.jte";
    }

    @Override
    public String frontDoor() {
        return "climate";
    }
}
