package bagclock.climate;

import bagclock.platform.Choice;
import bagclock.platform.Field;
import java.util.List;

/**
 * What a page says of the other half of a file: one holds temperatures, the other humidities.
 *
 * @param words empty for a file that needs none
 * @param files that it is read with
 * @param wanted whether one is to be chosen or uploaded
 * @param waiting files that can be chosen
 * @param partFrom id of the file whose joining can be undone; empty for none
 */
public record OtherHalf(
        String words,
        List<Link> files,
        boolean wanted,
        Field other,
        List<Choice> waiting,
        Field file,
        String partFrom) {
    /** Name of the field of the chosen file. */
    static final String OTHER = "other";

    /** A file on its own page. */
    public record Link(String id, String name) {}

    /** Of a file that holds both. */
    static final OtherHalf NONE = joined("", List.of(), "");

    /** Keeps its own copies. */
    public OtherHalf {
        files = List.copyOf(files);
        waiting = List.copyOf(waiting);
    }

    /** It was found. */
    static OtherHalf joined(String words, List<Link> files, String partFrom) {
        return new OtherHalf(
                words, files, false, Field.of(OTHER, "", ""), List.of(), Field.of("file", "", ""), partFrom);
    }
}
