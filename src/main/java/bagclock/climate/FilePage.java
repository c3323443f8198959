package bagclock.climate;

import bagclock.platform.Page;
import bagclock.readings.Asked;
import java.util.List;
import java.util.stream.Stream;

/**
 * One file of a logger: what must be said about it, what would be read from it, how its import stands.
 *
 * @param problem why it can't be imported; empty for none
 * @param asked fields of what is open or was said; none once it is imported
 * @param ready whether it can be imported as it is
 * @param half of a file that holds temperature or humidity only
 */
public record FilePage(
        String title,
        String id,
        String lead,
        String problem,
        List<Asked> asked,
        Seen seen,
        Standing standing,
        boolean ready,
        OtherHalf half)
        implements Page {
    /**
     * What was seen in it.
     *
     * @param found in words
     * @param readings the first of them
     * @param gaps times without samples, in words
     * @param faults lines that can't be used
     */
    public record Seen(
            List<String> found, List<ZonePage.Row> readings, List<String> gaps, List<ImportPage.BadLine> faults) {
        static final Seen NOTHING = new Seen(List.of(), List.of(), List.of(), List.of());
    }

    /**
     * How its import stands.
     *
     * @param state in words; empty before the first
     * @param samplesDone of a running import
     */
    public record Standing(String state, boolean running, long samplesDone, long samplesAll, boolean canTakeBack) {
        /** Nothing runs, and nothing can be taken back. */
        static Standing resting(String state) {
            return new Standing(state, false, 0, 0, false);
        }
    }

    /** The same with its other half. */
    FilePage with(OtherHalf other) {
        return new FilePage(title, id, lead, problem, asked, seen, standing, ready, other);
    }

    /** The same, asking one thing more. */
    FilePage asking(Asked more) {
        return asking(Stream.concat(asked.stream(), Stream.of(more)).toList());
    }

    /** The same, with these words beside a field. */
    FilePage refusing(String name, String words) {
        return asking(asked.stream()
                .map(one ->
                        one.field().name().equals(name) ? new Asked(one.field().refused(words), one.choices()) : one)
                .toList());
    }

    private FilePage asking(List<Asked> all) {
        return new FilePage(title, id, lead, problem, all, seen, standing, ready, half);
    }

    @Override
    public String template() {
        return "climate/file.jte";
    }

    @Override
    public String frontDoor() {
        return "climate";
    }
}
