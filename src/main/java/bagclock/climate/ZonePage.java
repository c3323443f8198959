package bagclock.climate;

import bagclock.platform.Choice;
import bagclock.platform.Field;
import bagclock.platform.Page;
import java.util.List;

/**
 * One zone or cabinet: its last days as curves and as a table.
 *
 * @param lead the last reading in a sentence
 * @param notice empty for none
 * @param facts what was declared
 * @param curves empty if it is not logged or nothing was read
 * @param periods what the curves show, as a table
 * @param days how far back can be looked; the chosen one is {@code back}
 * @param older address of older readings; empty if there are none
 */
public record ZonePage(
        String title,
        String code,
        String kind,
        String done,
        String lead,
        String notice,
        boolean logged,
        List<Fact> facts,
        List<Curve> curves,
        List<Period> periods,
        List<Choice> days,
        String back,
        List<Row> readings,
        String older,
        ReadingFields entry)
        implements Page {
    /** Something declared, in words. */
    public record Fact(String name, String value) {}

    /** Lowest and highest values of a part of the time drawn, or that nothing was read in it. */
    public record Period(String from, String to, String temperature, String humidity) {}

    /** One reading. */
    public record Row(String machine, String at, String temperature, String humidity) {}

    /** The fields of a reading that is typed in. */
    public record ReadingFields(Field at, Field temperature, Field humidity) {}

    @Override
    public String template() {
        return "climate/zone.jte";
    }

    @Override
    public String frontDoor() {
        return "climate";
    }
}
