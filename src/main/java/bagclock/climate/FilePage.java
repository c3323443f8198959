package bagclock.climate;

import bagclock.platform.Page;
import bagclock.readings.Asked;
import java.util.List;

/**
 * One file of a logger: what must be said about it, what would be read from it, how its import stands.
 *
 * @param problem why it can't be imported; empty for none
 * @param asked fields of what is open or was said; none once it is imported
 * @param found what was found, in words
 * @param readings the first of them
 * @param gaps times without samples, in words
 * @param faults lines that can't be used
 * @param state of an import, in words; empty before the first
 * @param samplesDone of a running import
 */
public record FilePage(
        String title,
        String id,
        String lead,
        String problem,
        List<Asked> asked,
        List<String> found,
        List<ZonePage.Row> readings,
        List<String> gaps,
        List<ImportPage.BadLine> faults,
        String state,
        boolean running,
        long samplesDone,
        long samplesAll,
        boolean ready,
        boolean canTakeBack)
        implements Page {
    @Override
    public String template() {
        return "climate/file.jte";
    }

    @Override
    public String frontDoor() {
        return "climate";
    }
}
