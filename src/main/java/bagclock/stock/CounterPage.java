package bagclock.stock;

import bagclock.platform.Page;
import bagclock.register.KnownPlace;
import java.util.List;

/**
 * The clerk's front door: scan an item, scan a place, done.
 *
 * @param held tag of the item that was scanned and waits for its place; empty for none
 * @param place code of the place that was scanned without an item; empty for none
 * @param key makes a second sending of the next scan harmless
 * @param told what became of the last scan; empty title for nothing
 */
public record CounterPage(
        String title,
        String held,
        String heldWords,
        String place,
        String placeName,
        String key,
        Told told,
        List<Scan> scans,
        List<Place> places)
        implements Page {
    /** The page that offers what can be done with a whole place. */
    CounterPage at(KnownPlace whole) {
        return new CounterPage(title, held, heldWords, whole.code(), whole.name(), key, told, scans, places);
    }

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
