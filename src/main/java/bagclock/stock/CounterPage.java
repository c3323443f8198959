package bagclock.stock;

import bagclock.platform.Page;
import bagclock.register.KnownPlace;
import java.util.List;

/**
 * The clerk's front door: scan an item, scan a place, done.
 *
 * @param held tag of the item that was scanned and waits for its place; empty for none
 * @param place code of the place that was scanned without an item; empty for none
 * @param next what the next scan carries
 * @param told what became of the last scan; empty title for nothing
 */
public record CounterPage(
        String title,
        String held,
        String heldWords,
        String place,
        String placeName,
        Next next,
        Told told,
        List<Scan> scans,
        List<Place> places)
        implements Page {
    /** The page that offers what can be done with a whole place. */
    CounterPage at(KnownPlace whole) {
        return new CounterPage(title, held, heldWords, whole.code(), whole.name(), next, told, scans, places);
    }

    /**
     * What a scan of this page carries.
     *
     * @param key makes a second sending harmless
     * @param pass names who made it, should it arrive late
     */
    public record Next(String key, String pass) {}

    /** What became of a scan. */
    public record Told(boolean accepted, String title, String text) {
        static final Told NOTHING = new Told(true, "", "");
    }

    /** One of this person's newest entries. */
    public record Scan(String tag, String words, String machine, String at) {}

    /** A place and the code that its label shows. */
    public record Place(String code, String name) {}

    @Override
    public String template() {
        return "stock/counter.jte";
    }

    @Override
    public String frontDoor() {
        return "stock";
    }
}
