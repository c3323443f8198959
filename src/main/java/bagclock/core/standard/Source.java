package bagclock.core.standard;

import java.util.List;

/**
 * A public page in which values were read.
 *
 * @param id short name that table lines use, such as {@code S4}
 * @param links addresses; empty where the source is another table of the same edition
 */
public record Source(String id, String title, List<String> links) {
    /** Keeps its own copy of the links. */
    public Source {
        links = List.copyOf(links);
    }
}
