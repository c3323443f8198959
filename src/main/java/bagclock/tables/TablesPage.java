package bagclock.tables;

import bagclock.platform.Page;
import java.util.List;

/**
 * Every table, and how far it was compared.
 *
 * @param decided how many unconfirmed cells have decided answers lately, in words
 * @param done what was just done; empty for nothing
 * @param lines the cells that decided and wait for a comparison
 */
public record TablesPage(String title, String done, String decided, List<Waiting> waiting, List<Line> lines)
        implements Page {
    /** A cell that decided answers lately. */
    public record Waiting(String name, String href) {}

    /** One table. */
    public record Line(
            String name,
            String href,
            String printed,
            String cells,
            String seen,
            String memory,
            String confirmed,
            String corrected) {}

    @Override
    public String template() {
        return "tables/tables.jte";
    }

    @Override
    public String frontDoor() {
        return "tables";
    }
}
